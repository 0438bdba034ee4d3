package org.cupwright.app.cli.level;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The level: where to lay it, and what it read. */
@Command(name = "level", description = "Says where to lay the level next, and keeps what it read.")
public final class LevelCommand implements Runnable {
    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    /** The command with all it can do. */
    public static CommandLine with(Surroundings surroundings) {
        CommandLine line = new CommandLine(new LevelCommand());
        line.addSubcommand(new LevelRoundCommand(surroundings));
        line.addSubcommand(new LevelAddCommand(surroundings));
        line.addSubcommand(new LevelListCommand(surroundings));
        line.addSubcommand(new LevelRemoveCommand(surroundings));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "level takes: round, add, list or remove. Files come in by import --levels.");
    }

    CupwrightCommand options() {
        return options;
    }
}
