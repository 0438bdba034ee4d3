package org.cupwright.app.cli.plan;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.GreenText;
import org.cupwright.app.answers.json.AssessJson;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.JudgementPrint;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.green.AssessPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.judging.GreenJudgement;

/** A judged position or green as a page and as JSON. */
final class AssessPrint {
    private final Task task;
    private final Texts texts;
    private final GreenText words;

    AssessPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
        this.words = new GreenText(texts);
    }

    void position(AssessPosition.Answer answer) {
        double pace = answer.day().policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(new AssessJson(answer.day(), texts).position(answer)));
        } else {
            List<String> lines = new ArrayList<>();
            lines.add(words.title(answer.day(), answer.hole()));
            lines.add("");
            lines.addAll(new JudgementPrint(texts, pace).full(answer.position()));
            lines.forEach(task::print);
        }
    }

    void green(AssessGreen.Answer answer) {
        double pace = answer.day().policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(new AssessJson(answer.day(), texts).green(answer)));
        } else {
            page(answer, new JudgementPrint(texts, pace)).forEach(task::print);
        }
    }

    private List<String> page(AssessGreen.Answer answer, JudgementPrint judgements) {
        GreenJudgement green = answer.judgement();
        List<String> lines = new ArrayList<>();
        lines.add(words.title(answer.day(), green.green().hole()));
        lines.addAll(words.says(green));
        lines.add("");
        lines.addAll(best(answer, judgements));
        return lines;
    }

    private List<String> best(AssessGreen.Answer answer, JudgementPrint judgements) {
        List<String> lines = new ArrayList<>();
        if (answer.best().isEmpty()) {
            lines.addAll(Layout.wrapped("", words.nowhere(answer.judgement())));
            return lines;
        }
        lines.add(texts.say("assess.best"));
        answer.best().forEach(position -> lines.add("  " + judgements.row(position)));
        return lines;
    }
}
