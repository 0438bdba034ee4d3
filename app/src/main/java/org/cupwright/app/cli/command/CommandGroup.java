package org.cupwright.app.cli.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command that does nothing but hold others. */
public abstract class CommandGroup implements Runnable {
    private final String takes;

    @Spec
    private CommandSpec spec;

    /** @param takes what is said to whoever names none of the others */
    protected CommandGroup(String takes) {
        this.takes = takes;
    }

    @Override
    public final void run() {
        throw new ParameterException(spec.commandLine(), takes);
    }
}
