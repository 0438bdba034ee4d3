package org.cupwright.app.answers.json;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.level.LevelReadingKept;
import org.cupwright.app.desk.level.LevelReadingList;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.PlaneFit;
import org.cupwright.units.Heading;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Level readings as scripts read them. */
public final class LevelJson {
    private final Texts texts;

    public LevelJson(Texts texts) {
        this.texts = texts;
    }

    public ObjectNode kept(LevelReadingKept kept) {
        ObjectNode node = reading(kept.day(), kept.hole(), kept.reading());
        node.set("replaced", known(kept.replaced().map(LevelReading::plane)));
        node.set("before", known(kept.before()));
        node.set("now", known(kept.now()));
        return node;
    }

    public ObjectNode list(LevelReadingList list) {
        List<ObjectNode> readings = new ArrayList<>();
        for (LevelReadingList.OfGreen green : list.greens()) {
            for (int i = 0; i < green.readings().size(); i++) {
                ObjectNode reading =
                        reading(list.day(), green.hole(), green.readings().get(i));
                reading.put("number", i + 1);
                reading.set("without", known(green.without().get(i)));
                readings.add(reading);
            }
        }
        ObjectNode node = Json.object();
        node.put("course", list.day().course().id());
        node.set("readings", Json.array(readings));
        return node;
    }

    public ObjectNode reading(CourseDay day, Hole hole, LevelReading reading) {
        PositionJson positions = new PositionJson(texts, day.policy().get(PlacePolicy.PACE_METRES));
        GreenPlaces places = new GreenPlaces(day.course(), day.policy());
        ObjectNode node = Json.object();
        node.put("course", day.course().id());
        node.put("hole", hole.id());
        node.set("position", positions.position(places.find(hole.id(), reading.place()), reading.place()));
        node.set("reading", known(Optional.of(reading.plane())));
        node.set("person", Json.text(reading.person()));
        node.set("readOn", Json.text(reading.readOn().map(LocalDate::toString)));
        return node;
    }

    private static JsonNode known(Optional<PlaneFit> plane) {
        return plane.map(LevelJson::slope).orElseGet(Json::nothing);
    }

    private static JsonNode slope(PlaneFit plane) {
        ObjectNode node = Json.object();
        node.set("slopePercent", Json.number(plane.slopePercent()));
        node.set(
                "downhillDegrees",
                Json.number(plane.downhill().map(Heading::degrees).orElse(Double.NaN)));
        node.set("standardErrorPercent", Json.number(100 * plane.slopeStandardError()));
        return node;
    }
}
