package org.cupwright.app.cli.survey;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.SurveyJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.resurvey.ListSurveys;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.node.ObjectNode;

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
                SurveyJson.file(version));
    }

    ObjectNode json() {
        List<ObjectNode> greens = new ArrayList<>();
        for (ListSurveys.OfGreen green : answer.greens()) {
            ObjectNode node = Json.object();
            node.put("hole", green.hole().id());
            node.set(
                    "surveys",
                    Json.array(green.versions().stream().map(SurveyJson::json).toList()));
            greens.add(node);
        }
        ObjectNode node = Json.object();
        node.put("course", answer.day().course().id());
        node.set("greens", Json.array(greens));
        return node;
    }
}
