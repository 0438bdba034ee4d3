package org.cupwright.app.cli.plan;

import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.WeatherText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.PositionJson;
import org.cupwright.app.answers.json.WeatherJson;
import org.cupwright.app.cli.command.JudgementText;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.plan.ExplainHole;
import org.cupwright.app.desk.plan.ExplainHole.Planned;
import org.cupwright.app.desk.plan.ExplainHole.Told;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.Basis;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.ConcessionStep;
import org.cupwright.holelocation.Judgement;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Why a hole was where it was, as a page and as JSON. */
final class ExplainPrint {
    private final Task task;
    private final Texts texts;

    ExplainPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void print(ExplainHole.Answer answer) {
        double pace = answer.told().policy().get(PlacePolicy.PACE_METRES);
        if (task.options().json()) {
            task.print(Json.document(json(answer, new PositionJson(texts, pace))));
        } else {
            page(answer, new JudgementText(texts, pace)).forEach(task::print);
        }
    }

    private List<String> page(ExplainHole.Answer answer, JudgementText judgements) {
        Told told = answer.told();
        String key = told.planned().isPresent() ? "explain.title" : "explain.title.unplanned";
        List<String> lines = new ArrayList<>();
        lines.add(texts.say(
                key,
                told.hole().id(),
                told.day().course().name(),
                texts.day(told.day().date())));
        lines.add("");
        told.metresOffPlan().ifPresent(metres -> lines.add(texts.say("explain.planned")));
        told.planned()
                .ifPresentOrElse(
                        planned -> lines.addAll(judgements.full(planned.hole().position())),
                        () -> lines.add(texts.say("explain.noPlan")));
        lines.addAll(done(told));
        answer.really().ifPresent(really -> {
            lines.add("");
            lines.add(texts.say("explain.really"));
            lines.addAll(judgements.full(really));
            if (told.stayed()) {
                lines.addAll(Layout.wrapped("", texts.say("explain.ownHole")));
            }
        });
        told.planned().ifPresent(planned -> lines.addAll(why(planned.hole(), judgements)));
        lines.add("");
        lines.addAll(basis(told));
        return lines;
    }

    private List<String> why(StoredHole hole, JudgementText judgements) {
        List<String> lines = new ArrayList<>();
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
        return lines;
    }

    private List<String> basis(Told told) {
        DayText days = new DayText(texts);
        List<String> lines = new ArrayList<>();
        told.planned()
                .ifPresentOrElse(
                        planned -> {
                            Basis basis = planned.plan().basis();
                            lines.add(days.speed(basis.speedFeet(), basis.rain()) + " · "
                                    + texts.say("state."
                                            + EnumNames.lowerCamel(
                                                    planned.plan().state())));
                            lines.addAll(Layout.wrapped(
                                    "",
                                    texts.say(
                                            "explain.basis",
                                            basis.engineVersion(),
                                            basis.policyVersion(),
                                            Long.toString(basis.seed()))));
                        },
                        () -> lines.add(days.speed(told.day())));
        lines.addAll(Layout.wrapped("", new WeatherText(texts).basis(told.weather())));
        return lines;
    }

    /** What the logbook says: the day's entries, and how far from the plan that was. */
    private List<String> done(Told told) {
        FactText facts = new FactText(texts, told.day().course(), told.policy());
        List<String> lines = new ArrayList<>();
        if (!told.done().isEmpty()) {
            lines.add("");
            lines.add(texts.say("explain.done"));
            told.done().forEach(fact -> lines.addAll(entry(facts, fact)));
            told.planned()
                    .ifPresent(planned -> lines.add(texts.say(
                            told.metresOffPlan().isPresent() ? "explain.offPlan" : "explain.asPlanned",
                            texts.length(told.metresOffPlan().orElse(0.0)))));
        } else if (told.planned().isPresent()) {
            lines.add("");
            lines.add(texts.say("explain.nothingDone"));
        }
        boolean wanted = told.done().stream().noneMatch(fact -> !(fact.payload() instanceof LeftInOldHole));
        if (wanted && (told.planned().isEmpty() || !told.done().isEmpty())) {
            told.before().ifPresent(before -> {
                lines.add(texts.say("explain.before"));
                lines.addAll(entry(facts, before));
            });
        }
        return lines;
    }

    private static List<String> entry(FactText facts, Fact fact) {
        String head = "  " + facts.moment(fact) + "  ";
        List<String> text = new ArrayList<>(
                Layout.wrapped(" ".repeat(head.length()), facts.says(fact) + " (" + fact.person() + ")"));
        text.set(0, head + text.get(0).strip());
        return text;
    }

    private List<String> item(Message reason) {
        List<String> text = new ArrayList<>(Layout.wrapped("    ", texts.say(reason)));
        text.set(0, "  – " + text.get(0).strip());
        return text;
    }

    private ObjectNode json(ExplainHole.Answer answer, PositionJson json) {
        Told told = answer.told();
        ObjectNode node = Json.object();
        node.put("course", told.day().course().id());
        node.put("hole", told.hole().id());
        node.put("date", told.day().date().toString());
        Optional<StoredPlan> plan = told.planned().map(Planned::plan);
        node.set("state", Json.text(plan.map(known -> EnumNames.lowerCamel(known.state()))));
        judged(node, told.planned().map(planned -> planned.hole().position()), json);
        Optional<StoredHole> hole = told.planned().map(Planned::hole);
        node.set(
                "reasons",
                Json.texts(hole.map(StoredHole::reasons).orElse(List.of()).stream()
                        .map(texts::say)
                        .toList()));
        node.set(
                "alternative",
                hole.flatMap(StoredHole::alternative)
                        .map(other -> json(other, json))
                        .orElse(null));
        node.set("cut", cut(told).orElse(null));
        node.set("entries", entries(told));
        node.set(
                "really",
                answer.really()
                        .map(really -> judged(Json.object(), Optional.of(really), json))
                        .orElse(null));
        node.set(
                "speedFeet",
                Json.number(plan.map(known -> known.basis().speedFeet())
                        .orElse(told.day().fastest().feet())));
        node.put(
                "rain",
                plan.map(known -> known.basis().rain()).orElse(told.day().rain()));
        node.put("seed", plan.map(known -> known.basis().seed()).orElse(null));
        node.put(
                "policyVersion",
                plan.map(known -> known.basis().policyVersion()).orElse(null));
        node.set("engineVersion", Json.text(plan.map(known -> known.basis().engineVersion())));
        node.set("weatherBasis", WeatherJson.json(told.weather()));
        return node;
    }

    /** A position with every rule; all of it null where there is none. */
    private static ObjectNode judged(ObjectNode node, Optional<JudgedPosition> position, PositionJson json) {
        Optional<Judgement> judgement = position.map(JudgedPosition::judgement);
        node.set("position", position.map(json::position).orElse(null));
        node.set("verdict", Json.text(judgement.map(json::verdict)));
        node.set("restsOn", Json.text(judgement.map(json::restsOn)));
        node.set("word", judgement.map(json::word).orElse(null));
        node.set("rules", judgement.map(json::rules).orElse(null));
        node.set(
                "difficulty",
                judgement.map(known -> json.difficulty(known.difficulty())).orElse(null));
        node.set("setAside", judgement.map(json::setAside).orElse(null));
        return node;
    }

    private static ArrayNode entries(Told told) {
        List<Fact> shown = told.done().isEmpty() && told.planned().isEmpty()
                ? told.before().stream().toList()
                : told.done();
        return Json.array(shown.stream()
                .map(fact -> (ObjectNode) JsonMapper.shared().readTree(FactJson.write(fact)))
                .toList());
    }

    /** The day's last word on the hole. */
    private static Optional<ObjectNode> cut(Told told) {
        return told.done().stream().reduce((earlier, later) -> later).map(last -> {
            ObjectNode node = Json.object();
            ZonedDateTime when =
                    last.happenedAt().atZone(told.day().course().frame().zone());
            node.put("time", when.toLocalTime().truncatedTo(ChronoUnit.MINUTES).toString());
            node.put("person", last.person());
            boolean left = last.payload() instanceof LeftInOldHole;
            node.set(
                    "at",
                    told.at().filter(place -> !left).map(ExplainPrint::json).orElse(null));
            return node;
        });
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
