package org.cupwright.app.cli.log;

import org.cupwright.app.cli.command.CommandGroup;
import picocli.CommandLine.Command;

/** The logbook. */
@Command(
        name = "log",
        description = "The logbook: what was done and seen.",
        subcommands = {
            LogAddCommand.class,
            LogKindsCommand.class,
            LogListCommand.class,
            LogCorrectCommand.class,
            LogWithdrawCommand.class,
            LogSeenCommand.class,
            LogPhotoCommand.class,
            LogExportCommand.class,
            LogImportCommand.class,
            LogTakeCommand.class
        })
public final class LogCommand extends CommandGroup {
    LogCommand() {
        super("log takes one of: add, kinds, list, correct, withdraw, seen, photo, export, import, take.");
    }
}
