package org.cupwright.app.cli.plan;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.json.AssessJson;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.JudgementPrint;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.green.AssessPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.green.Ground;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.holelocation.judging.GreenJudgement.Shares;
import org.cupwright.holelocation.judging.SlopeSpread;
import org.cupwright.policy.EnumNames;

/** A judged position or green as a page and as JSON. */
final class AssessPrint {
    private final Task task;
    private final Texts texts;

    AssessPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void position(AssessPosition.Answer answer) {
        double pace = answer.day().policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(new AssessJson(answer.day(), texts).position(answer)));
        } else {
            List<String> lines = new ArrayList<>();
            lines.add(heading(answer.day(), answer.hole()));
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
        Ground ground = green.green().ground();
        List<String> lines = new ArrayList<>();
        lines.add(heading(answer.day(), green.green().hole()));
        lines.add(texts.say("assess.area", texts.area(green.areaSquareMetres())) + " · "
                + texts.say("restsOn." + EnumNames.lowerCamel(ground.restsOn())));
        lines.add(shares(green.shares()));
        green.slopePercent().ifPresent(slopes -> lines.add(slopes(slopes)));
        if (Double.isFinite(ground.surveySigmaMetres())) {
            lines.add(texts.say("assess.sigma", texts.length(ground.surveySigmaMetres())));
        }
        lines.addAll(setAside(green));
        lines.add("");
        lines.addAll(best(answer, judgements));
        return lines;
    }

    private List<String> setAside(GreenJudgement green) {
        List<String> lines = new ArrayList<>();
        for (ConcessionStep step : green.concessions()) {
            lines.add(texts.say("concession", ruleName(step.concession().rule()), texts.area(step.areaGained())));
        }
        return lines;
    }

    private List<String> best(AssessGreen.Answer answer, JudgementPrint judgements) {
        List<String> lines = new ArrayList<>();
        if (answer.best().isEmpty()) {
            String why = String.join(
                    ", ",
                    answer.judgement().failing().stream().map(this::ruleName).toList());
            lines.addAll(Layout.wrapped("", texts.say("assess.nothing", why)));
            return lines;
        }
        lines.add(texts.say("assess.best"));
        answer.best().forEach(position -> lines.add("  " + judgements.row(position)));
        return lines;
    }

    private String ruleName(RuleId rule) {
        return texts.say("rule." + rule.id());
    }

    private String shares(Shares shares) {
        List<String> parts = new ArrayList<>();
        addShare(parts, shares.pass(), "verdict.pass");
        addShare(parts, shares.caution(), "verdict.caution");
        addShare(parts, shares.fail(), "verdict.fail");
        addShare(parts, shares.notSurveyed(), "verdict.notSurveyed");
        return String.join(" · ", parts);
    }

    private void addShare(List<String> parts, double share, String key) {
        if (share > 0) {
            parts.add(texts.say(key) + " " + texts.number(100 * share, share < 0.0095 ? 1 : 0) + " %");
        }
    }

    private String slopes(SlopeSpread slopes) {
        return texts.say(
                "assess.slopes", texts.slope(slopes.p5()), texts.slope(slopes.median()), texts.slope(slopes.p95()));
    }

    private String heading(CourseDay day, Hole hole) {
        return texts.say("assess.title", hole.id(), day.course().name(), texts.day(day.date())) + " · "
                + new DayText(texts).speed(day);
    }
}
