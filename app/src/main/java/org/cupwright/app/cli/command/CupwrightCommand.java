package org.cupwright.app.cli.command;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.DaySpeed.From;
import org.cupwright.units.UnitSystem;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command of all commands: the options that every one of them takes, before or after its name. */
@Command(
        name = "cupwright",
        description = "Hole locations for the people who change the holes on a golf course's greens.",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = Version.class,
        usageHelpAutoWidth = true,
        sortOptions = false)
public final class CupwrightCommand implements Runnable, AutoCloseable {
    private final Surroundings surroundings;
    private Task task;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "The data folder. Default: .cupwright in your home folder.")
    private Path data;

    @Option(
            names = "--course",
            paramLabel = "ID",
            scope = ScopeType.INHERIT,
            description = "The course. Default: the only course there is.")
    private String course;

    @Option(
            names = "--date",
            paramLabel = "D",
            scope = ScopeType.INHERIT,
            description = "The day: 2026-05-31, yesterday, today or tomorrow. Default: today on the course.")
    private AskedDay date;

    @Option(
            names = "--speed",
            paramLabel = "FEET",
            scope = ScopeType.INHERIT,
            description = "Green speed in feet, the day's fastest. "
                    + " Default: as it was read that day or shortly before, "
                    + "else the setting holelocation.seasonSpeedFeet.")
    private Double speed;

    @Option(
            names = "--rain",
            negatable = true,
            scope = ScopeType.INHERIT,
            description = "Rain is expected during play, or is not. Default: as the forecast of the day has it.")
    private Boolean rain;

    @Option(
            names = "--seed",
            paramLabel = "N",
            scope = ScopeType.INHERIT,
            defaultValue = "1",
            description = "Chooses among equal answers. Default: 1.")
    private long seed;

    @Option(
            names = "--lang",
            paramLabel = "LANG",
            scope = ScopeType.INHERIT,
            description = "Language, en or es. Default: the setting desk.language.")
    private String language;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            scope = ScopeType.INHERIT,
            description = "metric, imperial or paces. Default: the setting desk.units.")
    private UnitSystem units;

    @Option(
            names = "--json",
            scope = ScopeType.INHERIT,
            description = "One JSON document on standard output, also for errors.")
    private boolean json;

    public CupwrightCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    /** The command line as one task, whichever command it gives. */
    Task task() {
        if (task == null) {
            task = new Task(this, surroundings);
        }
        return task;
    }

    @Override
    public void close() {
        if (task != null) {
            task.close();
        }
    }

    /** Without a command there is nothing to do. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command given.");
    }

    Path data(Path home) {
        return Optional.ofNullable(data).orElse(home.resolve(".cupwright"));
    }

    public Optional<String> course() {
        return Optional.ofNullable(course);
    }

    Optional<AskedDay> date() {
        return Optional.ofNullable(date);
    }

    public Optional<DaySpeed> speed() {
        return Optional.ofNullable(speed).map(feet -> DaySpeed.of(feet, From.SAID));
    }

    public Optional<DayRain> rain() {
        return Optional.ofNullable(rain).map(DayRain::said);
    }

    public long seed() {
        return seed;
    }

    Optional<String> language() {
        return Optional.ofNullable(language).map(text -> text.toLowerCase(Locale.ROOT));
    }

    /** The language asked for, or else the course's; empty as long as no command was begun. */
    Optional<String> languageOfFailures() {
        return language().or(() -> Optional.ofNullable(task).flatMap(Task::languageSet));
    }

    Optional<UnitSystem> units() {
        return Optional.ofNullable(units);
    }

    public boolean json() {
        return json;
    }

    CommandSpec spec() {
        return spec;
    }
}
