package org.cupwright.app.cli.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.FindingGroups;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.PositionJson;
import org.cupwright.app.answers.json.WeatherJson;
import org.cupwright.app.cli.command.JudgementText;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.counting.Parts;
import tools.jackson.databind.node.ObjectNode;

/** A day's plan as a table and as JSON. */
final class PlanPrint {
    /** Reasons that the row itself says already. */
    private static final Set<String> IN_THE_ROW = Set.of(
            "rotation.reason.third",
            "rotation.reason.thirdFree",
            "rotation.reason.room",
            "rotation.reason.difficulty",
            "rotation.reason.difficultyUnknown",
            "rotation.reason.yesterdayUnknown",
            "rotation.reason.noLineOfPlay");

    private final Task task;
    private final Texts texts;

    PlanPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void print(PlanDay.Answer answer) {
        double pace = answer.day().policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(json(answer, new PositionJson(texts, pace))));
        } else {
            page(answer, new JudgementText(texts, pace)).forEach(task::print);
        }
    }

    private List<String> page(PlanDay.Answer answer, JudgementText judgements) {
        StoredPlan plan = answer.plan();
        List<String> lines = new ArrayList<>();
        lines.add(texts.say("plan.title", answer.day().course().name(), texts.day(plan.date()))
                + " · " + new DayText(texts).speed(answer.day()) + " · "
                + texts.say("state." + EnumNames.lowerCamel(plan.state())));
        spread(plan).ifPresent(lines::add);
        lines.add("");
        for (StoredHole hole : plan.holes()) {
            lines.add(Layout.left(hole.hole(), 5) + judgements.row(hole.position()));
            lines.addAll(why(hole));
        }
        lines.addAll(findings(plan));
        return lines;
    }

    private Optional<String> spread(StoredPlan plan) {
        List<String> parts = new ArrayList<>();
        parts.add(parts(plan.totals().thirds(), "third.front", "third.middle", "third.back"));
        parts.add(parts(plan.totals().laterals(), "lateral.left", "lateral.centre", "lateral.right"));
        parts.add(parts(plan.totals().difficulties(), "difficulty.easier", "difficulty.medium", "difficulty.harder"));
        parts.removeIf(String::isEmpty);
        return parts.isEmpty() ? Optional.empty() : Optional.of(String.join("   ", parts));
    }

    private String parts(Parts parts, String first, String second, String third) {
        if (parts.total() == 0) {
            return "";
        }
        return texts.say(first) + " " + parts.first() + " · " + texts.say(second) + " " + parts.second() + " · "
                + texts.say(third) + " " + parts.third();
    }

    /** One line: as many of the most telling reasons as fit, those of the row left out. */
    private List<String> why(StoredHole hole) {
        String indent = "     ";
        StringBuilder line = new StringBuilder();
        for (Message reason : hole.reasons()) {
            String said = texts.say(reason);
            int length = indent.length() + line.length() + said.length();
            if (!IN_THE_ROW.contains(reason.key()) && (line.isEmpty() || length < Layout.WIDTH)) {
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
        for (String finding : new FindingGroups(texts).said(plan.findings())) {
            List<String> text = Layout.wrapped("    ", finding);
            lines.add("  – " + text.get(0).strip());
            lines.addAll(text.subList(1, text.size()));
        }
        return lines;
    }

    private ObjectNode json(PlanDay.Answer answer, PositionJson json) {
        StoredPlan plan = answer.plan();
        ObjectNode node = Json.object();
        node.put("course", plan.courseId());
        node.put("seed", plan.basis().seed());
        ObjectNode day = Json.object();
        day.put("date", plan.date().toString());
        day.put("state", EnumNames.lowerCamel(plan.state()));
        day.set("speedFeet", Json.number(plan.basis().speedFeet()));
        day.put("rain", plan.basis().rain());
        day.set("weatherBasis", WeatherJson.json(answer.weather()));
        day.set(
                "holes",
                Json.array(plan.holes().stream().map(hole -> json(hole, json)).toList()));
        day.set("totals", totals(plan));
        day.set("findings", Json.texts(plan.findings().stream().map(texts::say).toList()));
        node.set("days", Json.array(List.of(day)));
        node.set("terms", numbers(plan.terms()));
        node.set("bounds", numbers(plan.bounds()));
        return node;
    }

    private ObjectNode json(StoredHole hole, PositionJson json) {
        ObjectNode node = Json.object();
        node.put("hole", hole.hole());
        node.set("position", json.position(hole.position()));
        node.put("verdict", json.verdict(hole.position().judgement()));
        node.put("restsOn", json.restsOn(hole.position().judgement()));
        node.set("word", json.word(hole.position().judgement()));
        node.set("difficulty", json.difficulty(hole.position().judgement().difficulty()));
        node.set("setAside", json.setAside(hole.position().judgement()));
        node.set("reasons", Json.texts(hole.reasons().stream().map(texts::say).toList()));
        return node;
    }

    private static ObjectNode totals(StoredPlan plan) {
        ObjectNode node = Json.object();
        node.put("holes", plan.totals().holes());
        node.set("thirds", parts(plan.totals().thirds(), List.of("front", "middle", "back")));
        node.set("laterals", parts(plan.totals().laterals(), List.of("left", "centre", "right")));
        node.set("difficulties", parts(plan.totals().difficulties(), List.of("easier", "medium", "harder")));
        return node;
    }

    private static ObjectNode parts(Parts parts, List<String> names) {
        ObjectNode node = Json.object();
        for (int i = 0; i < names.size(); i++) {
            node.put(names.get(i), parts.count(i));
        }
        return node;
    }

    private static ObjectNode numbers(Map<String, Double> values) {
        ObjectNode node = Json.object();
        values.forEach((name, value) -> node.set(name, Json.number(value)));
        return node;
    }
}
