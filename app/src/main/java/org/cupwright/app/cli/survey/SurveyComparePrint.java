package org.cupwright.app.cli.survey;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.SurveyChangeText;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.resurvey.CompareSurveys;
import org.cupwright.app.desk.resurvey.GreenChange;
import org.cupwright.app.texts.Texts;

/** What changed between two surveys, as a page. */
final class SurveyComparePrint {
    private final SurveyChangeText words;
    private final CompareSurveys.Answer answer;

    SurveyComparePrint(Texts texts, CompareSurveys.Answer answer) {
        this.words = new SurveyChangeText(texts, answer);
        this.answer = answer;
    }

    List<String> page() {
        List<String> lines = new ArrayList<>();
        lines.add(words.title());
        for (GreenChange green : answer.greens()) {
            lines.add("");
            lines.add(words.green(green));
            words.changes(green).forEach(line -> lines.addAll(Layout.hanging(4, "  ", line)));
        }
        if (!answer.notCompared().isEmpty()) {
            lines.add("");
            words.notCompared().forEach(line -> lines.addAll(Layout.wrapped("", line)));
        }
        return lines;
    }
}
