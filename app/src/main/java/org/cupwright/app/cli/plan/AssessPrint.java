package org.cupwright.app.cli.plan;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.PositionJson;
import org.cupwright.app.cli.command.JudgementText;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.AssessGreen;
import org.cupwright.app.desk.green.AssessPosition;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.green.Ground;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.holelocation.judging.GreenJudgement.Shares;
import org.cupwright.holelocation.judging.SlopeSpread;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.node.ObjectNode;

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
            task.print(Json.document(json(answer, new PositionJson(texts, pace))));
        } else {
            List<String> lines = new ArrayList<>();
            lines.add(heading(answer.day(), answer.hole()));
            lines.add("");
            lines.addAll(new JudgementText(texts, pace).full(answer.position()));
            lines.forEach(task::print);
        }
    }

    private ObjectNode json(AssessPosition.Answer answer, PositionJson json) {
        JudgedPosition position = answer.position();
        ObjectNode node = Json.object();
        node.put("course", answer.day().course().id());
        node.put("hole", answer.hole().id());
        node.set("position", json.position(position));
        node.put("verdict", json.verdict(position.judgement()));
        node.put("restsOn", json.restsOn(position.judgement()));
        node.set("word", json.word(position.judgement()));
        node.set("rules", json.rules(position.judgement()));
        node.set("setAside", json.setAside(position.judgement()));
        node.set("difficulty", json.difficulty(position.judgement().difficulty()));
        addDay(node, answer.day());
        return node;
    }

    void green(AssessGreen.Answer answer) {
        double pace = answer.day().policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(json(answer, new PositionJson(texts, pace))));
        } else {
            page(answer, new JudgementText(texts, pace)).forEach(task::print);
        }
    }

    private List<String> page(AssessGreen.Answer answer, JudgementText judgements) {
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

    private List<String> best(AssessGreen.Answer answer, JudgementText judgements) {
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

    private ObjectNode json(AssessGreen.Answer answer, PositionJson json) {
        GreenJudgement green = answer.judgement();
        ObjectNode node = Json.object();
        node.put("course", answer.day().course().id());
        node.put("hole", green.green().hole().id());
        node.set("areaSquareMetres", Json.number(green.areaSquareMetres()));
        node.set("shares", shareNumbers(green.shares()));
        boolean surveyed = Double.isFinite(green.green().ground().surveySigmaMetres());
        node.set(
                "slopePercent",
                green.slopePercent()
                        .filter(slopes -> surveyed)
                        .map(AssessPrint::slopeNumbers)
                        .orElse(null));
        node.set("surveySigmaMetres", Json.number(green.green().ground().surveySigmaMetres()));
        node.set("rules", spots(green));
        node.set("best", Json.array(answer.best().stream().map(json::judged).toList()));
        node.set(
                "setAside",
                Json.texts(green.concessions().stream()
                        .map(step -> step.concession().rule().id())
                        .distinct()
                        .toList()));
        addDay(node, answer.day());
        return node;
    }

    /** How many of the green's spots each rule answered how. */
    private static ObjectNode spots(GreenJudgement green) {
        ObjectNode rules = Json.object();
        for (RuleId rule : RuleId.values()) {
            ObjectNode counts = rules.putObject(rule.id());
            for (Outcome outcome : Outcome.values()) {
                counts.put(EnumNames.lowerCamel(outcome), green.count(rule, outcome));
            }
        }
        return rules;
    }

    private static ObjectNode shareNumbers(Shares shares) {
        ObjectNode node = Json.object();
        node.set("pass", Json.number(shares.pass()));
        node.set("caution", Json.number(shares.caution()));
        node.set("fail", Json.number(shares.fail()));
        node.set("notSurveyed", Json.number(shares.notSurveyed()));
        return node;
    }

    private static ObjectNode slopeNumbers(SlopeSpread slopes) {
        ObjectNode node = Json.object();
        node.set("p5", Json.number(slopes.p5()));
        node.set("median", Json.number(slopes.median()));
        node.set("p95", Json.number(slopes.p95()));
        return node;
    }

    private static void addDay(ObjectNode node, CourseDay day) {
        node.put("date", day.date().toString());
        node.set("speedFeet", Json.number(day.fastest().feet()));
        node.put("rain", day.rain());
    }

    private String heading(CourseDay day, Hole hole) {
        return texts.say("assess.title", hole.id(), day.course().name(), texts.day(day.date())) + " · "
                + new DayText(texts).speed(day);
    }
}
