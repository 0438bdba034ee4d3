package org.cupwright.app.cli.plan;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.PlanText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.cli.command.JudgementPrint;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlacePolicy;

/** A day's plan as a table and as JSON. */
final class PlanPrint {
    private final Task task;
    private final Texts texts;
    private final PlanText words;

    PlanPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
        this.words = new PlanText(texts);
    }

    void print(PlanDay.Answer answer) {
        double pace = answer.day().policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(
                    new PlanJson(answer.day().course(), answer.day().policy(), texts).plan(answer)));
        } else {
            page(answer, new JudgementPrint(texts, pace)).forEach(task::print);
        }
    }

    private List<String> page(PlanDay.Answer answer, JudgementPrint judgements) {
        StoredPlan plan = answer.plan();
        List<String> lines = new ArrayList<>();
        lines.add(words.title(answer.day(), plan));
        words.spread(plan).ifPresent(lines::add);
        lines.add("");
        for (StoredHole hole : plan.holes()) {
            lines.add(Layout.left(hole.hole(), 5) + judgements.row(hole.position()));
            lines.addAll(why(hole));
        }
        lines.addAll(findings(plan));
        return lines;
    }

    /** One line: as many of the most telling reasons as fit, those of the row left out. */
    private List<String> why(StoredHole hole) {
        String indent = "     ";
        StringBuilder line = new StringBuilder();
        for (String said : words.telling(hole)) {
            if (line.isEmpty() || indent.length() + line.length() + said.length() < Layout.WIDTH) {
                line.append(line.isEmpty() ? "" : " ").append(said);
            }
        }
        return line.isEmpty() ? List.of() : List.of(indent + line);
    }

    private List<String> findings(StoredPlan plan) {
        List<String> lines = new ArrayList<>();
        if (!plan.findings().isEmpty()) {
            lines.add("");
            lines.add(texts.say("plan.findings"));
        }
        for (String finding : words.findings(plan.findings())) {
            lines.addAll(Layout.hanging("  – ", finding));
        }
        return lines;
    }
}
