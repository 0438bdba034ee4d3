package org.cupwright.app.answers.json;

import java.util.Optional;
import java.util.function.Function;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.resurvey.CompareSurveys;
import org.cupwright.app.desk.resurvey.CompareSurveys.NotCompared;
import org.cupwright.app.desk.resurvey.GoodGround;
import org.cupwright.app.desk.resurvey.GreenChange;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.resurvey.HeightChange;
import org.cupwright.green.resurvey.Resurvey;
import org.cupwright.green.resurvey.SlopeChange;
import org.cupwright.green.resurvey.Volume;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What changed between two surveys, as scripts read it. */
public final class SurveyCompareJson {
    private final CompareSurveys.Answer answer;
    private final PositionJson positions;
    private final GreenPlaces places;

    public SurveyCompareJson(Texts texts, CompareSurveys.Answer answer) {
        this.answer = answer;
        this.positions = new PositionJson(texts, answer.day().policy().get(PlacePolicy.PACE_METRES));
        this.places = new GreenPlaces(answer.day().course(), answer.day().policy());
    }

    public ObjectNode json() {
        ObjectNode node = Json.object();
        node.put("course", answer.day().course().id());
        node.put("date", answer.day().date().toString());
        node.set("speedFeet", Json.number(answer.day().fastest().feet()));
        node.set("greens", Json.array(answer.greens().stream().map(this::green).toList()));
        node.set(
                "notCompared",
                Json.array(answer.notCompared().stream()
                        .map(SurveyCompareJson::notCompared)
                        .toList()));
        return node;
    }

    private static ObjectNode notCompared(NotCompared green) {
        ObjectNode node = Json.object();
        node.put("hole", green.hole().id());
        node.put("why", EnumNames.lowerCamel(green.why()));
        return node;
    }

    private ObjectNode green(GreenChange green) {
        Resurvey report = green.report();
        ObjectNode node = Json.object();
        node.put("hole", green.hole().id());
        node.set("before", SurveyJson.json(green.before()));
        node.set("now", SurveyJson.json(green.now()));
        node.set("comparedSquareMetres", Json.number(report.comparedSquareMetres()));
        node.set("notComparedSquareMetres", Json.number(report.notComparedSquareMetres()));
        node.put("levelsMayDiffer", green.levelsMayDiffer());
        node.set("heights", heights(green.hole(), report));
        node.set("slopes", slopes(green.hole(), report));
        node.set("goodGround", good(green.hole(), green.good()));
        ArrayNode older = node.putArray("olderReadings");
        green.olderReadings().forEach(older::add);
        return node;
    }

    private ObjectNode heights(Hole hole, Resurvey report) {
        ObjectNode node = Json.object();
        node.set("changedSquareMetres", Json.number(report.changedSquareMetres()));
        node.set("fill", volume(report.fill()));
        node.set("cut", volume(report.cut()));
        node.set("net", volume(report.net()));
        node.set("middle", height(hole, report.heights().middle()));
        node.set("greatestRise", height(hole, report.heights().greatestRise()));
        node.set("greatestFall", height(hole, report.heights().greatestFall()));
        return node;
    }

    private static ObjectNode volume(Volume volume) {
        ObjectNode node = Json.object();
        node.set("cubicMetres", Json.number(volume.cubicMetres()));
        node.set("standardErrorCubicMetres", Json.number(volume.standardErrorCubicMetres()));
        return node;
    }

    private JsonNode height(Hole hole, Optional<HeightChange> change) {
        return known(change, found -> {
            ObjectNode node = Json.object();
            node.set("metres", Json.number(found.metres()));
            node.set("standardErrorMetres", Json.number(found.standardErrorMetres()));
            node.set("position", position(hole, found.at()));
            return node;
        });
    }

    private ObjectNode slopes(Hole hole, Resurvey report) {
        ObjectNode node = Json.object();
        node.set("steeperSquareMetres", Json.number(report.steeperSquareMetres()));
        node.set("gentlerSquareMetres", Json.number(report.gentlerSquareMetres()));
        node.set("median", slope(hole, report.medianChange()));
        node.set("p95", slope(hole, report.wideChange()));
        node.set("greatest", slope(hole, report.greatestChange()));
        return node;
    }

    private JsonNode slope(Hole hole, Optional<SlopeChange> change) {
        return known(change, found -> {
            ObjectNode node = Json.object();
            node.set("points", Json.number(found.points()));
            node.set("standardErrorPoints", Json.number(found.standardErrorPoints()));
            node.set("position", position(hole, found.at()));
            return node;
        });
    }

    private ObjectNode good(Hole hole, GoodGround good) {
        ObjectNode node = Json.object();
        node.set("beforeSquareMetres", Json.number(good.beforeSquareMetres()));
        node.set("nowSquareMetres", Json.number(good.nowSquareMetres()));
        node.set("gained", part(hole, good.gained()));
        node.set("lost", part(hole, good.lost()));
        node.set("openNow", part(hole, good.openNow()));
        return node;
    }

    private ObjectNode part(Hole hole, GoodGround.Part part) {
        ObjectNode node = Json.object();
        node.set("squareMetres", Json.number(part.squareMetres()));
        node.set("largestAt", known(part.largest(), at -> position(hole, at)));
        return node;
    }

    private static <T> JsonNode known(Optional<T> value, Function<T, JsonNode> shape) {
        return value.map(shape).orElseGet(Json::nothing);
    }

    private ObjectNode position(Hole hole, MapPoint at) {
        return positions.position(places.find(hole.id(), at), at);
    }
}
