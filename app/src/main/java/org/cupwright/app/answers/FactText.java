package org.cupwright.app.answers;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.Fact;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.Policy;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Entries of the logbook in words. */
public final class FactText {
    private static final int ID_SHOWN = 8;
    private static final Set<String> USUAL = Set.of("foundBy paces", "way onePiece", "soil none");
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm");

    private final Texts texts;
    private final Course course;
    private final Policy policy;
    private final ZoneId zone;

    public FactText(Texts texts, Course course, Policy policy) {
        this.texts = texts;
        this.course = course;
        this.policy = policy;
        this.zone = course.frame().zone();
    }

    public String moment(Fact fact) {
        return MOMENT.format(fact.happenedAt().atZone(zone));
    }

    public String id(Fact fact) {
        return fact.id().toString().substring(0, ID_SHOWN);
    }

    public String hole(Fact fact) {
        return fact.hole().orElse("–");
    }

    /** What an entry says: its kind, then its parts. */
    public String says(Fact fact) {
        List<String> said = new ArrayList<>();
        said.add(texts.say("log.kind." + fact.payload().kind()));
        ObjectNode payload = (ObjectNode) JsonMapper.shared().readTree(FactJson.writePayload(fact.payload()));
        payload.remove("kind");
        if (fact.payload() instanceof CupChanged changed) {
            payload.remove("planned");
            if (changed.planned().equals(Optional.of(changed.cutAt()))) {
                said.add(texts.say("log.asPlanned"));
            }
        }
        payload.properties().forEach(part -> part(fact, part).ifPresent(said::add));
        return String.join(" · ", said);
    }

    /** A part in words; nothing for what goes without saying. */
    private Optional<String> part(Fact fact, Map.Entry<String, JsonNode> part) {
        JsonNode value = part.getValue();
        if (value.isBoolean() && !value.asBoolean() && !texts.knows("log.not." + part.getKey())) {
            return Optional.empty();
        }
        if (value.isBoolean()) {
            return Optional.of(texts.say((value.asBoolean() ? "log.is." : "log.not.") + part.getKey()));
        }
        if ((value.isArray() && value.isEmpty()) || isUsual(part)) {
            return Optional.empty();
        }
        return Optional.of(texts.say("log.part." + part.getKey(), shown(fact, part.getKey(), value)));
    }

    private static boolean isUsual(Map.Entry<String, JsonNode> part) {
        String value = part.getValue().isString() ? part.getValue().asString() : "";
        return USUAL.contains(part.getKey() + " " + value);
    }

    private String shown(Fact fact, String name, JsonNode value) {
        if (value.isObject() && value.has("east")) {
            return place(fact, value);
        }
        if (value.isObject()) {
            return value.has("centre")
                    ? texts.say(
                            "log.around",
                            texts.length(value.get("radiusMetres").asDouble()),
                            place(fact, value.get("centre")))
                    : texts.say("log.drawn", value.get("corners").size());
        }
        if (value.isArray()) {
            List<String> items = new ArrayList<>();
            for (Iterator<JsonNode> each = value.iterator(); each.hasNext(); ) {
                items.add(each.next().asString());
            }
            return String.join(", ", items);
        }
        if (value.isNumber()) {
            double number = value.asDouble();
            return texts.number(number, number == Math.rint(number) ? 0 : 1);
        }
        return word(name, value.asString());
    }

    private String word(String part, String value) {
        if (value.matches("[0-9]{4}-[0-9]{2}-[0-9]{2}")) {
            return texts.day(LocalDate.parse(value));
        }
        if (part.equals("reentryFrom")) {
            return MOMENT.format(Instant.parse(value).atZone(zone));
        }
        if (part.equals("entry")) {
            return value.substring(0, ID_SHOWN);
        }
        if (part.equals("photo")) {
            return texts.say("log.photo");
        }
        String key = "log.choice." + part + "." + value;
        return texts.knows(key) ? texts.say(key) : value;
    }

    private String place(Fact fact, JsonNode point) {
        MapPoint at =
                new MapPoint(point.get("east").asDouble(), point.get("north").asDouble());
        PositionText places = new PositionText(texts, policy.get(PlacePolicy.PACE_METRES));
        return fact.hole()
                .flatMap(course::find)
                .filter(hole -> hole.green().contains(at))
                .flatMap(hole -> GreenFrame.of(hole, policy.get(PlacePolicy.ON_CONVENTION)))
                .map(frame -> places.of(frame.place(at)))
                .orElseGet(() -> places.coordinates(at));
    }
}
