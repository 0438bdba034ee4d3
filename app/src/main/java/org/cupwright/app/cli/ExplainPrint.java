package org.cupwright.app.cli;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.ExplainHole;
import org.cupwright.app.desk.StoredHole;
import org.cupwright.app.desk.StoredPlan;
import org.cupwright.app.desk.StoredPlan.Basis;
import org.cupwright.app.desk.log.HolesCut.HoleCut;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.node.ObjectNode;

/** Why a hole was where it was, as a page and as JSON. */
final class ExplainPrint {
    /** Nobody cuts to a finer measure: our choice. */
    private static final double SAME_PLACE_METRES = 0.1;

    private final Task task;
    private final Texts texts;

    ExplainPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void print(ExplainHole.Answer answer) {
        double pace = answer.policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(json(answer, new PositionJson(texts, pace))));
        } else {
            page(answer, new JudgementText(texts, pace)).forEach(task::print);
        }
    }

    private List<String> page(ExplainHole.Answer answer, JudgementText judgements) {
        StoredPlan plan = answer.plan();
        StoredHole hole = answer.hole();
        Basis basis = plan.basis();
        List<String> lines = new ArrayList<>();
        lines.add(texts.say("explain.title", hole.hole(), answer.course().name(), texts.day(plan.date())));
        lines.add("");
        lines.addAll(judgements.full(hole.position()));
        answer.cut().ifPresent(cut -> {
            lines.add("");
            lines.add(cut(cut, hole.position().judgement().position()));
        });
        lines.add("");
        lines.add(texts.say("explain.why"));
        hole.reasons().forEach(reason -> lines.addAll(item(reason)));
        for (ConcessionStep step : hole.concessions()) {
            String rule = texts.say("rule." + step.concession().rule().id());
            lines.add("  – " + texts.say("concession", rule, texts.area(step.areaGained())));
        }
        hole.alternative().ifPresent(other -> {
            lines.add("");
            lines.add(texts.say("explain.instead", judgements.where(other.position())));
            other.whyNot().forEach(reason -> lines.addAll(item(reason)));
        });
        lines.add("");
        lines.add(new DayText(texts).speed(basis.speedFeet(), basis.rain()) + " · "
                + texts.say("state." + EnumNames.lowerCamel(plan.state())));
        lines.addAll(Layout.wrapped(
                "",
                texts.say("explain.basis", basis.engineVersion(), basis.policyVersion(), Long.toString(basis.seed()))));
        return lines;
    }

    private String cut(HoleCut cut, MapPoint planned) {
        if (cut.at().isEmpty()) {
            return texts.say("explain.cut.left", cut.time(), cut.person());
        }
        double metres = cut.at().get().distanceMetres(planned);
        return metres < SAME_PLACE_METRES
                ? texts.say("explain.cut.asPlanned", cut.time(), cut.person())
                : texts.say("explain.cut.elsewhere", cut.time(), cut.person(), texts.length(metres));
    }

    private List<String> item(Message reason) {
        List<String> text = new ArrayList<>(Layout.wrapped("    ", texts.say(reason)));
        text.set(0, "  – " + text.get(0).strip());
        return text;
    }

    private ObjectNode json(ExplainHole.Answer answer, PositionJson json) {
        StoredPlan plan = answer.plan();
        StoredHole hole = answer.hole();
        ObjectNode node = Json.object();
        node.put("course", plan.courseId());
        node.put("hole", hole.hole());
        node.put("date", plan.date().toString());
        node.put("state", EnumNames.lowerCamel(plan.state()));
        node.set("position", json.position(hole.position()));
        node.put("verdict", json.verdict(hole.position().judgement()));
        node.put("restsOn", json.restsOn(hole.position().judgement()));
        node.set("word", json.word(hole.position().judgement()));
        node.set("rules", json.rules(hole.position().judgement()));
        node.set("difficulty", json.difficulty(hole.position().judgement().difficulty()));
        node.set("setAside", json.setAside(hole.position().judgement()));
        node.set("reasons", Json.texts(hole.reasons().stream().map(texts::say).toList()));
        node.set(
                "alternative",
                hole.alternative().map(other -> json(other, json)).orElse(null));
        node.set("cut", answer.cut().map(ExplainPrint::json).orElse(null));
        node.set("speedFeet", Json.number(plan.basis().speedFeet()));
        node.put("rain", plan.basis().rain());
        node.put("seed", plan.basis().seed());
        node.put("policyVersion", plan.basis().policyVersion());
        node.put("engineVersion", plan.basis().engineVersion());
        return node;
    }

    private static ObjectNode json(HoleCut cut) {
        ObjectNode node = Json.object();
        node.put("time", cut.time().toString());
        node.put("person", cut.person());
        node.set("at", cut.at().map(ExplainPrint::json).orElse(null));
        return node;
    }

    private static ObjectNode json(MapPoint at) {
        ObjectNode node = Json.object();
        node.set("east", Json.number(at.east()));
        node.set("north", Json.number(at.north()));
        return node;
    }

    private ObjectNode json(StoredHole.Other other, PositionJson json) {
        ObjectNode node = json.judged(other.position());
        node.set("whyNot", Json.texts(other.whyNot().stream().map(texts::say).toList()));
        return node;
    }
}
