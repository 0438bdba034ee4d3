package org.cupwright.app.cli.log;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Old notebooks. */
@Command(name = "history", description = "Takes an old notebook of hole locations into the logbook.")
public final class HistoryCommand implements Runnable {
    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    /** The command with all it can do. */
    public static CommandLine with(Surroundings surroundings) {
        CommandLine line = new CommandLine(new HistoryCommand());
        line.addSubcommand(new HistoryImportCommand(surroundings));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "history takes: import FILE.");
    }

    CupwrightCommand options() {
        return options;
    }
}
