package org.cupwright.app.cli.survey;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.SurveyText;
import org.cupwright.app.answers.json.SurveyJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.resurvey.ListSurveys;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.JsonNode;

/** The surveys of greens as a page and as JSON. */
final class SurveyListPrint {
    private final Texts texts;
    private final ListSurveys.Answer answer;

    SurveyListPrint(Texts texts, ListSurveys.Answer answer) {
        this.texts = texts;
        this.answer = answer;
    }

    List<String> page() {
        List<String> lines = new ArrayList<>();
        List<String> without = new ArrayList<>();
        for (ListSurveys.OfGreen green : answer.greens()) {
            if (green.versions().isEmpty()) {
                without.add(green.hole().id());
                continue;
            }
            lines.add(texts.say("survey.where.hole", green.hole().id()));
            green.versions().forEach(version -> lines.add("  " + row(version)));
        }
        if (!without.isEmpty()) {
            lines.addAll(Layout.wrapped("", texts.say("survey.list.without", String.join(", ", without))));
        }
        return lines;
    }

    private String row(SurveyVersion version) {
        return texts.say(
                "survey.list.row",
                version.number(),
                texts.moment(version.recordedAt(), answer.day().course().frame().zone()),
                version.points(),
                SurveyText.file(version));
    }

    JsonNode json() {
        return new SurveyJson(texts).list(answer);
    }
}
