package org.cupwright.app.cli.survey;

import org.cupwright.app.cli.command.CommandGroup;
import picocli.CommandLine.Command;

/** The surveys of the greens: which are kept, and what changed between two. */
@Command(
        name = "survey",
        description = "Lists the surveys kept of each green, and says what changed between two.",
        subcommands = {SurveyListCommand.class, SurveyCompareCommand.class})
public final class SurveyCommand extends CommandGroup {
    SurveyCommand() {
        super("survey takes: list or compare. Surveys come in by import --elevation.");
    }
}
