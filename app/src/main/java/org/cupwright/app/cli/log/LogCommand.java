package org.cupwright.app.cli.log;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The logbook. */
@Command(name = "log", description = "The logbook: what was done and seen.")
public final class LogCommand implements Runnable {
    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    /** The command with all it can do. */
    public static CommandLine with(Surroundings surroundings) {
        CommandLine line = new CommandLine(new LogCommand());
        line.addSubcommand(new LogAddCommand(surroundings));
        line.addSubcommand(new LogKindsCommand(surroundings));
        line.addSubcommand(new LogListCommand(surroundings));
        line.addSubcommand(new LogCorrectCommand(surroundings));
        line.addSubcommand(new LogWithdrawCommand(surroundings));
        line.addSubcommand(new LogSeenCommand(surroundings));
        line.addSubcommand(new LogPhotoCommand(surroundings));
        line.addSubcommand(new LogExportCommand(surroundings));
        line.addSubcommand(new LogImportCommand(surroundings));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(),
                "log takes one of: add, kinds, list, correct, withdraw, seen, photo, export, import.");
    }

    CupwrightCommand options() {
        return options;
    }
}
