package org.cupwright.app.cli.level;

import org.cupwright.app.cli.command.CommandGroup;
import picocli.CommandLine.Command;

/** The level: where to lay it, and what it read. */
@Command(
        name = "level",
        description = "Says where to lay the level next, and keeps what it read.",
        subcommands = {LevelRoundCommand.class, LevelAddCommand.class, LevelListCommand.class, LevelRemoveCommand.class
        })
public final class LevelCommand extends CommandGroup {
    LevelCommand() {
        super("level takes: round, add, list or remove. Files come in by import --levels.");
    }
}
