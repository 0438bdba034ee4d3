package org.cupwright.app.answers.json;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.first.Notice;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.turf.growth.ClockEnd;
import org.cupwright.turf.signal.IndividualsChart;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RestingHole;
import org.cupwright.turf.today.VisiblePlug;
import org.cupwright.turf.today.WateringItem;
import org.cupwright.turf.water.WaterLoss;
import org.cupwright.turf.water.WaterStatus;
import tools.jackson.databind.JsonNode;

/** The turf of a day as scripts read it. */
public final class TurfJson {
    private final PlaceShapes places;
    private final Shapes shapes;

    public TurfJson(CourseDay day, Texts texts) {
        this.places = new PlaceShapes(day.course(), day.policy());
        this.shapes = new Shapes(texts)
                .as(OddThings.Thing.class, TurfJson::odd)
                .as(Notice.class, this::notice)
                .as(RestingHole.class, this::resting)
                .as(VisiblePlug.class, this::plug)
                .as(RecheckItem.class, this::recheck);
    }

    public JsonNode of(TurfReport report) {
        return shapes.tree(new Shape()
                .with("course", report.day().course().id())
                .with("date", report.day().date())
                .with("growth", report.growth())
                .with("weather", report.weather())
                .with("weatherBasis", report.basis())
                .with("frost", report.frost())
                .with("first", report.first().all())
                .with("odd", report.odd())
                .with("wearRest", report.wearRest())
                .with("plugs", report.plugs())
                .with("watering", watering(report.morning(), "morning"))
                .with("wateringAfternoon", watering(report.afternoon(), "afternoon"))
                .with("recheck", report.recheck())
                .with("water", water(report.water()))
                .with("signals", report.signals())
                .with("charts", report.charts().entrySet().stream().map(TurfJson::chart)));
    }

    private Shape at(String hole, MapPoint point) {
        return new Shape().with("hole", hole).with("position", places.at(hole, point));
    }

    private Shape notice(Notice notice) {
        return new Shape()
                .with("kind", notice.kind())
                .with("hole", notice.hole())
                .with("says", notice.says())
                .with("position", notice.place().flatMap(at -> notice.hole().map(hole -> places.at(hole, at))));
    }

    private static Shape odd(OddThings.Thing thing) {
        return new Shape()
                .with("id", thing.fact().id())
                .with("hole", thing.fact().hole())
                .with("happenedAt", thing.fact().happenedAt())
                .with("person", thing.fact().person())
                .with("severity", thing.odd().severity())
                .with("text", thing.odd().text())
                .with("photo", thing.odd().photo());
    }

    private Shape resting(RestingHole resting) {
        return at(resting.hole(), resting.old().at())
                .with("cutOn", resting.old().cutOn())
                .with("leftOn", resting.old().leftOn())
                .with(clock("restsUntil", resting.rests()));
    }

    private Shape plug(VisiblePlug visible) {
        return at(visible.hole(), visible.plug().at())
                .with("setOn", visible.plug().setOn())
                .with("look", visible.plug().look())
                .with("countsUntil", visible.countsUntil())
                .with(clock("guessedUntil", visible.guess()));
    }

    private static Shape clock(String until, ClockEnd end) {
        return new Shape()
                .with(until, end.lastDay())
                .with("meanGrowth", end.meanGrowth())
                .with("restsOn", end.restsOn());
    }

    private Stream<Shape> watering(List<WateringItem> items, String when) {
        return items.stream()
                .map(item -> at(item.hole(), item.plug().at())
                        .with("setOn", item.plug().setOn())
                        .with("when", when)
                        .with("reason", item.reason())
                        .with("done", item.done()));
    }

    private Shape recheck(RecheckItem item) {
        return at(item.hole(), item.plug().at())
                .with("setOn", item.plug().setOn())
                .with("reason", item.reason())
                .with("washAfter", item.washAfter());
    }

    private static Shape water(Optional<WaterStatus> status) {
        Optional<WaterLoss> loss = status.flatMap(WaterStatus::loss);
        return new Shape()
                .with("etoMillimetres", loss.map(WaterLoss::etoMillimetres))
                .with("deficitMillimetres", status.map(WaterStatus::deficitMillimetres))
                .with("deficitAtLeastMillimetres", status.map(WaterStatus::deficitAtLeastMillimetres))
                .with("deficitAtMostMillimetres", status.map(WaterStatus::deficitAtMostMillimetres))
                .with("method", loss.map(WaterLoss::method))
                .with("filledDays", status.map(WaterStatus::filledDays).orElse(0))
                .with("unknownDays", status.map(WaterStatus::unknownDays).orElse(0));
    }

    private static Shape chart(Map.Entry<Measured.What, IndividualsChart> entry) {
        IndividualsChart chart = entry.getValue();
        return new Shape()
                .with("what", entry.getKey())
                .with("valuesMillimetres", chart.values())
                .with("meanMillimetres", chart.mean())
                .with("lowerLimitMillimetres", chart.lowerLimit())
                .with("upperLimitMillimetres", chart.upperLimit())
                .with("upperMoveLimitMillimetres", chart.upperMoveLimit());
    }
}
