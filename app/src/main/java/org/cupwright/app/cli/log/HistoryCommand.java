package org.cupwright.app.cli.log;

import org.cupwright.app.cli.command.CommandGroup;
import picocli.CommandLine.Command;

/** Old notebooks. */
@Command(
        name = "history",
        description = "Takes an old notebook of hole locations into the logbook.",
        subcommands = {HistoryImportCommand.class})
public final class HistoryCommand extends CommandGroup {
    HistoryCommand() {
        super("history takes: import FILE.");
    }
}
