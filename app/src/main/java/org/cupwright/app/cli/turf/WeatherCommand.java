package org.cupwright.app.cli.turf;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** Weather from elsewhere. */
@Command(
        name = "weather",
        description = "Takes weather and forecasts into the logbook, and shows what is known of each day.")
public final class WeatherCommand implements Runnable {
    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    /** The command with all it can do. */
    public static CommandLine with(Surroundings surroundings) {
        CommandLine line = new CommandLine(new WeatherCommand());
        line.addSubcommand(new WeatherImportCommand(surroundings));
        line.addSubcommand(new WeatherListCommand(surroundings));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "weather takes: import FILE, or list.");
    }

    CupwrightCommand options() {
        return options;
    }
}
