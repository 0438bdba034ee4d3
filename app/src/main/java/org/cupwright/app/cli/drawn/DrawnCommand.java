package org.cupwright.app.cli.drawn;

import org.cupwright.app.cli.command.CommandGroup;
import picocli.CommandLine.Command;

/** Ground that people drew or named as good or bad. */
@Command(
        name = "drawn",
        description = "Keeps what people say of the ground: good ground, bad ground, and spots where holes usually go.",
        subcommands = {DrawnAddCommand.class, DrawnListCommand.class, DrawnRemoveCommand.class})
public final class DrawnCommand extends CommandGroup {
    DrawnCommand() {
        super("drawn takes: add, list or remove. Files come in by import --drawn.");
    }
}
