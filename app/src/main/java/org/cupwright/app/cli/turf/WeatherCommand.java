package org.cupwright.app.cli.turf;

import org.cupwright.app.cli.command.CommandGroup;
import picocli.CommandLine.Command;

/** Weather from elsewhere. */
@Command(
        name = "weather",
        description = "Takes weather and forecasts into the logbook, and shows what is known of each day.",
        subcommands = {WeatherImportCommand.class, WeatherListCommand.class})
public final class WeatherCommand extends CommandGroup {
    WeatherCommand() {
        super("weather takes: import FILE, or list.");
    }
}
