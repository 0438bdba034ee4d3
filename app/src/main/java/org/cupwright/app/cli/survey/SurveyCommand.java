package org.cupwright.app.cli.survey;

import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** The surveys of the greens: which are kept, and what changed between two. */
@Command(name = "survey", description = "Lists the surveys kept of each green, and says what changed between two.")
public final class SurveyCommand implements Runnable {
    @ParentCommand
    private CupwrightCommand options;

    @Spec
    private CommandSpec spec;

    /** The command with all it can do. */
    public static CommandLine with(Surroundings surroundings) {
        CommandLine line = new CommandLine(new SurveyCommand());
        line.addSubcommand(new SurveyListCommand(surroundings));
        line.addSubcommand(new SurveyCompareCommand(surroundings));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "survey takes: list or compare. Surveys come in by import --elevation.");
    }

    CupwrightCommand options() {
        return options;
    }
}
