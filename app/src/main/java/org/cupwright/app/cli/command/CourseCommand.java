package org.cupwright.app.cli.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command that does something; what it runs in comes from the command of all commands. */
public abstract class CourseCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    /** Answers the exit status. */
    @Override
    public final Integer call() {
        Task task = ((CupwrightCommand) spec.root().userObject()).task();
        run(task);
        task.tellRemarks();
        return task.status();
    }

    /** Carries the command out. */
    protected abstract void run(Task task);

    protected CommandSpec spec() {
        return spec;
    }

    /** Wrong usage: what is wrong, and the value that is. */
    protected ParameterException wrong(String what, String value) {
        return new Arguments(spec).wrong(what, value);
    }
}
