package org.cupwright.app.cli.command;

import java.util.List;
import java.util.Optional;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import picocli.CommandLine.Option;

/** The answer to what a command asks before it does something. */
public final class YesOption {
    @Option(names = "--yes", description = "Yes to what is asked before anything is kept.")
    private boolean yes;

    public boolean given() {
        return yes;
    }

    /**
     * Whether whoever sits there agrees. Whoever wants JSON is a program, which nobody can ask.
     *
     * @throws Problem when nobody sits there and nothing was said beforehand
     */
    public boolean agreed(Task task, String question) {
        return yes
                || (task.options().json() ? Optional.<Boolean>empty() : task.ask(question))
                        .orElseThrow(() -> nobodyToAsk(question));
    }

    private static Problem nobodyToAsk(String question) {
        return new Problem(
                Message.of("problem.nobodyToAsk", new Message.Name(question)),
                List.of(),
                new Message.Name(""),
                Message.of("try.nobodyToAsk"));
    }
}
