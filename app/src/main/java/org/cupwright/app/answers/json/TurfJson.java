package org.cupwright.app.answers.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.growth.ClockEnd;
import org.cupwright.turf.signal.IndividualsChart;
import org.cupwright.turf.signal.TurfSignal;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RestingHole;
import org.cupwright.turf.today.VisiblePlug;
import org.cupwright.turf.today.WateringItem;
import org.cupwright.turf.water.WaterStatus;
import tools.jackson.databind.node.ObjectNode;

/** The turf of a day as scripts read it. */
public final class TurfJson {
    private final Texts texts;
    private final GreenPlaces places;
    private final PositionJson positions;

    public TurfJson(Texts texts, GreenPlaces places, double paceMetres) {
        this.texts = texts;
        this.places = places;
        this.positions = new PositionJson(texts, paceMetres);
    }

    public ObjectNode of(TurfReport report) {
        ObjectNode node = Json.object();
        node.put("course", report.day().course().id());
        node.put("date", report.day().date().toString());
        node.set("growth", Json.number(report.growth()));
        node.put("weather", EnumNames.lowerCamel(report.weather()));
        node.set("weatherBasis", WeatherJson.json(report.basis()));
        node.put("frost", report.frost());
        node.set("odd", Json.array(report.odd().stream().map(TurfJson::odd).toList()));
        node.set(
                "wearRest",
                Json.array(report.wearRest().stream().map(this::resting).toList()));
        node.set("plugs", Json.array(report.plugs().stream().map(this::plug).toList()));
        node.set(
                "watering",
                Json.array(report.morning().stream()
                        .map(item -> watering(item, "morning"))
                        .toList()));
        node.set(
                "wateringAfternoon",
                Json.array(report.afternoon().stream()
                        .map(item -> watering(item, "afternoon"))
                        .toList()));
        node.set(
                "recheck",
                Json.array(report.recheck().stream().map(this::recheck).toList()));
        node.set("water", water(report.water()));
        node.set(
                "signals",
                Json.array(report.signals().stream().map(this::signal).toList()));
        List<ObjectNode> charts =
                report.charts().entrySet().stream().map(TurfJson::chart).toList();
        node.set("charts", Json.array(charts));
        return node;
    }

    private ObjectNode at(String hole, MapPoint point) {
        ObjectNode node = Json.object();
        node.put("hole", hole);
        node.set("position", positions.position(places.find(hole, point), point));
        return node;
    }

    private static ObjectNode odd(OddThings.Thing thing) {
        ObjectNode node = Json.object();
        node.put("id", thing.fact().id().toString());
        node.set("hole", Json.text(thing.fact().hole()));
        node.put("happenedAt", thing.fact().happenedAt().toString());
        node.put("person", thing.fact().person());
        node.put("severity", EnumNames.lowerCamel(thing.odd().severity()));
        node.put("text", thing.odd().text());
        node.set("photo", Json.text(thing.odd().photo()));
        return node;
    }

    private ObjectNode resting(RestingHole resting) {
        ObjectNode node = at(resting.hole(), resting.old().at());
        node.put("cutOn", resting.old().cutOn().toString());
        node.put("leftOn", resting.old().leftOn().toString());
        return clock(node, "restsUntil", resting.rests());
    }

    private ObjectNode plug(VisiblePlug visible) {
        ObjectNode node = at(visible.hole(), visible.plug().at());
        node.put("setOn", visible.plug().setOn().toString());
        node.set("look", Json.text(visible.plug().look().map(EnumNames::lowerCamel)));
        node.put("countsUntil", visible.countsUntil().toString());
        return clock(node, "guessedUntil", visible.guess());
    }

    private static ObjectNode clock(ObjectNode node, String key, ClockEnd end) {
        node.put(key, end.lastDay().toString());
        node.set("meanGrowth", Json.number(end.meanGrowth()));
        node.put("restsOn", EnumNames.lowerCamel(end.restsOn()));
        return node;
    }

    private ObjectNode watering(WateringItem item, String when) {
        ObjectNode node = at(item.hole(), item.plug().at());
        node.put("setOn", item.plug().setOn().toString());
        node.put("when", when);
        node.put("reason", EnumNames.lowerCamel(item.reason()));
        node.put("done", item.done());
        return node;
    }

    private ObjectNode recheck(RecheckItem item) {
        ObjectNode node = at(item.hole(), item.plug().at());
        node.put("setOn", item.plug().setOn().toString());
        node.put("reason", EnumNames.lowerCamel(item.reason()));
        node.put("washAfter", item.washAfter());
        return node;
    }

    private static ObjectNode water(Optional<WaterStatus> status) {
        ObjectNode node = Json.object();
        node.set("etoMillimetres", Json.number(loss(status)));
        node.set(
                "deficitMillimetres",
                Json.number(status.map(WaterStatus::deficitMillimetres)
                        .flatMap(known -> known.isPresent() ? Optional.of(known.getAsDouble()) : Optional.empty())
                        .orElse(Double.NaN)));
        node.set(
                "deficitAtLeastMillimetres",
                Json.number(status.map(WaterStatus::deficitAtLeastMillimetres).orElse(Double.NaN)));
        node.set(
                "deficitAtMostMillimetres",
                Json.number(status.map(WaterStatus::deficitAtMostMillimetres).orElse(Double.NaN)));
        node.set(
                "method",
                Json.text(status.flatMap(WaterStatus::loss).map(loss -> EnumNames.lowerCamel(loss.method()))));
        node.put("filledDays", status.map(WaterStatus::filledDays).orElse(0));
        node.put("unknownDays", status.map(WaterStatus::unknownDays).orElse(0));
        return node;
    }

    private static double loss(Optional<WaterStatus> status) {
        return status.flatMap(WaterStatus::loss)
                .map(loss -> loss.etoMillimetres())
                .orElse(Double.NaN);
    }

    private ObjectNode signal(TurfSignal signal) {
        ObjectNode node = Json.object();
        node.put("kind", EnumNames.lowerCamel(signal.kind()));
        node.put("about", signal.about());
        node.put("says", texts.say(signal.says()));
        return node;
    }

    private static ObjectNode chart(Map.Entry<Measured.What, IndividualsChart> entry) {
        IndividualsChart chart = entry.getValue();
        ObjectNode node = Json.object();
        node.put("what", EnumNames.lowerCamel(entry.getKey()));
        node.set(
                "valuesMillimetres",
                Json.array(chart.values().stream().map(Json::number).toList()));
        node.set("meanMillimetres", Json.number(chart.mean()));
        node.set("lowerLimitMillimetres", Json.number(chart.lowerLimit()));
        node.set("upperLimitMillimetres", Json.number(chart.upperLimit()));
        node.set("upperMoveLimitMillimetres", Json.number(chart.upperMoveLimit()));
        return node;
    }
}
