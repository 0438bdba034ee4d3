package org.cupwright.app.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.AskedDay;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Failures;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.drawn.DrawnCommand;
import org.cupwright.app.cli.level.LevelCommand;
import org.cupwright.app.cli.log.CutCommand;
import org.cupwright.app.cli.log.CutterStopCommand;
import org.cupwright.app.cli.log.HistoryCommand;
import org.cupwright.app.cli.log.LogCommand;
import org.cupwright.app.cli.people.PeopleCommand;
import org.cupwright.app.cli.plan.AssessCommand;
import org.cupwright.app.cli.plan.ChangeCommand;
import org.cupwright.app.cli.plan.DemoCommand;
import org.cupwright.app.cli.plan.ExplainCommand;
import org.cupwright.app.cli.plan.MorningCommand;
import org.cupwright.app.cli.plan.PlanCommand;
import org.cupwright.app.cli.plan.PublishCommand;
import org.cupwright.app.cli.plan.RollCommand;
import org.cupwright.app.cli.plan.RoundCommand;
import org.cupwright.app.cli.plan.SheetsCommand;
import org.cupwright.app.cli.serve.ServeCommand;
import org.cupwright.app.cli.survey.FindingsCommand;
import org.cupwright.app.cli.survey.ImportCommand;
import org.cupwright.app.cli.survey.SurveyCommand;
import org.cupwright.app.cli.training.TrainingCommand;
import org.cupwright.app.cli.turf.TurfCommand;
import org.cupwright.app.cli.turf.WeatherCommand;
import org.cupwright.app.cli.upkeep.BackupCommand;
import org.cupwright.app.cli.upkeep.CheckCommand;
import org.cupwright.app.cli.upkeep.PolicyCommand;
import org.cupwright.app.cli.upkeep.RestoreCommand;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;

/**
 * Runs one command line.
 *
 * <p>Exit statuses: 0 done · 1 a problem the person can mend · 2 wrong usage · 3 a defect of ours.
 */
public record Cli(Surroundings surroundings) {
    /** In the order in which the help lists them. */
    private static final List<Class<?>> COMMANDS = List.of(
            DemoCommand.class,
            ServeCommand.class,
            MorningCommand.class,
            CutCommand.class,
            ImportCommand.class,
            AssessCommand.class,
            RollCommand.class,
            PlanCommand.class,
            ChangeCommand.class,
            PublishCommand.class,
            RoundCommand.class,
            SheetsCommand.class,
            ExplainCommand.class,
            TurfCommand.class,
            CutterStopCommand.class,
            PolicyCommand.class,
            FindingsCommand.class,
            SurveyCommand.class,
            LevelCommand.class,
            DrawnCommand.class,
            LogCommand.class,
            HistoryCommand.class,
            WeatherCommand.class,
            PeopleCommand.class,
            TrainingCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            CheckCommand.class);

    public int run(String... arguments) {
        Surroundings plain = surroundings.withoutControls();
        try (CupwrightCommand options = new CupwrightCommand(plain)) {
            return run(
                    options,
                    new Failures(plain, options, Arrays.asList(arguments).contains("--json")),
                    arguments);
        } finally {
            surroundings.out().flush();
        }
    }

    private int run(CupwrightCommand options, Failures failures, String... arguments) {
        CommandLine line = new CommandLine(options);
        COMMANDS.forEach(line::addSubcommand);
        line.setOut(new PrintWriter(surroundings.out(), true, StandardCharsets.UTF_8));
        line.setErr(new PrintWriter(surroundings.err(), true, StandardCharsets.UTF_8));
        line.setExpandAtFiles(false); // a file's name may begin with @
        line.setCaseInsensitiveEnumValuesAllowed(true);
        // one for both: Java 17 breaks down when it archives two alike (JDK 17.0.15, dynamic archive)
        ITypeConverter<Double> number = Arguments::number;
        line.registerConverter(Double.class, number);
        line.registerConverter(double.class, number);
        line.registerConverter(AskedDay.class, AskedDay::of);
        line.setParameterExceptionHandler((wrong, given) -> failures.usage(wrong));
        line.setExecutionExceptionHandler((failure, command, parsed) -> failures.execution(failure));
        try {
            return line.execute(arguments);
        } catch (Error broken) { // out of memory or stack: a defect like any other, and told the same way
            return failures.defect(broken);
        }
    }
}
