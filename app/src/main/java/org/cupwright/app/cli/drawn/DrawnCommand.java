package org.cupwright.app.cli.drawn;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Ground that people drew or named as good or bad. */
@Command(
        name = "drawn",
        description = "Keeps what people say of the ground: good ground, bad ground, and spots where holes usually go.")
public final class DrawnCommand implements Runnable {
    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    /** The command with all it can do. */
    public static CommandLine with(Surroundings surroundings) {
        CommandLine line = new CommandLine(new DrawnCommand());
        line.addSubcommand(new DrawnAddCommand(surroundings));
        line.addSubcommand(new DrawnListCommand(surroundings));
        line.addSubcommand(new DrawnRemoveCommand(surroundings));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "drawn takes: add, list or remove. Files come in by import --drawn.");
    }

    CupwrightCommand options() {
        return options;
    }
}
