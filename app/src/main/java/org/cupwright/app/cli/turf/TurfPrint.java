package org.cupwright.app.cli.turf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.WeatherText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.TurfJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.signal.IndividualsChart;
import org.cupwright.turf.signal.TurfSignal;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckItem.Reason;
import org.cupwright.turf.today.RestingHole;
import org.cupwright.turf.today.WateringItem;
import org.cupwright.turf.water.WaterLoss;
import org.cupwright.turf.water.WaterStatus;

/** The turf of a day as a page. */
final class TurfPrint {
    private static final int HOLE = 5;
    private static final int PLACE = 39;

    private final Task task;
    private final Texts texts;

    TurfPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void print(TurfReport report) {
        double pace = report.day().policy().get(PlacePolicy.PACE_METRES);
        GreenPlaces places = new GreenPlaces(report.day().course(), report.day().policy());
        if (task.options().json()) {
            task.print(Json.document(new TurfJson(texts, places, pace).of(report)));
        } else {
            new Page(report, places, new PositionText(texts, pace)).lines().forEach(task::print);
        }
    }

    /** One report being set out. */
    private final class Page {
        private final TurfReport report;
        private final GreenPlaces places;
        private final PositionText positions;
        private final List<String> lines = new ArrayList<>();

        Page(TurfReport report, GreenPlaces places, PositionText positions) {
            this.report = report;
            this.places = places;
            this.positions = positions;
        }

        List<String> lines() {
            lines.add(texts.say(
                    "turf.title",
                    report.day().course().name(),
                    texts.day(report.day().date())));
            weather();
            cautions();
            section("turf.odd", odd());
            section(
                    "turf.morning",
                    report.morning().stream().map(this::watering).toList());
            section(
                    "turf.afternoon",
                    report.afternoon().stream().map(this::watering).toList());
            section("turf.recheck", recheck());
            section("turf.signals", report.signals().stream().map(this::signal).toList());
            section(
                    "turf.charts",
                    report.charts().entrySet().stream()
                            .map(chart -> chart(chart.getKey(), chart.getValue()))
                            .toList());
            section("turf.resting", resting());
            return lines;
        }

        private void weather() {
            String rests = texts.say("turf.weather." + EnumNames.lowerCamel(report.weather()));
            lines.add(texts.say("turf.growth", texts.number(report.growth(), 2), rests));
            lines.add(new WeatherText(texts).basis(report.basis()));
            report.water()
                    .ifPresentOrElse(water -> lines.addAll(water(water)), () -> lines.add(texts.say("turf.noWater")));
        }

        private List<String> water(WaterStatus water) {
            List<String> told = new ArrayList<>();
            water.loss()
                    .ifPresent(
                            loss -> told.add(texts.say("turf.loss", millimetres(loss.etoMillimetres()), method(loss))));
            String least = millimetres(water.deficitAtLeastMillimetres());
            String most = millimetres(water.deficitAtMostMillimetres());
            told.add(
                    water.deficitMillimetres().isPresent()
                            ? texts.say("turf.deficit", most)
                            : texts.say("turf.deficitBetween", least, most, water.unknownDays()));
            if (water.filledDays() > 0) {
                told.add(texts.say("turf.filled", water.filledDays()));
            }
            return told;
        }

        private void cautions() {
            if (report.frost()) {
                lines.add(texts.say("turf.frost"));
            }
            report.reentry()
                    .forEach((hole, from) -> lines.add(texts.say(
                            "turf.reentry",
                            hole,
                            texts.moment(from, report.day().course().frame().zone()))));
        }

        private List<String> odd() {
            FactText facts =
                    new FactText(texts, report.day().course(), report.day().policy());
            List<String> rows = new ArrayList<>();
            for (OddThings.Thing thing : report.odd()) {
                String severity = texts.say("log.choice.severity."
                        + EnumNames.lowerCamel(thing.odd().severity()));
                String photo = thing.odd().photo().isPresent() ? " " + texts.say("turf.odd.photo") : "";
                String head = Layout.left(facts.hole(thing.fact()), HOLE) + facts.moment(thing.fact()) + "  "
                        + facts.id(thing.fact()) + "  ";
                List<String> said = Layout.wrapped(
                        " ".repeat(head.length()),
                        severity + ": " + thing.odd().text() + " ("
                                + thing.fact().person() + ")" + photo);
                rows.add(head + said.get(0).strip());
                rows.addAll(said.subList(1, said.size()));
            }
            if (!rows.isEmpty()) {
                rows.add("     " + texts.say("turf.odd.seen"));
            }
            return rows;
        }

        private void section(String key, List<String> rows) {
            if (!rows.isEmpty()) {
                lines.add("");
                lines.add(texts.say(key));
                lines.addAll(rows);
            }
        }

        private String watering(WateringItem item) {
            String done = item.done() ? " " + texts.say("turf.done") : "";
            return row(item.hole(), item.plug().at())
                    + texts.say("turf.setOn", texts.day(item.plug().setOn())) + " · "
                    + texts.say("turf.watering." + EnumNames.lowerCamel(item.reason())) + done;
        }

        private String recheck(RecheckItem item) {
            String wash = item.washAfter() ? " " + texts.say("turf.wash") : "";
            return row(item.hole(), item.plug().at())
                    + texts.say("turf.setOn", texts.day(item.plug().setOn())) + " · "
                    + texts.say("turf.recheck." + EnumNames.lowerCamel(item.reason())) + wash;
        }

        /** Plugs with a fault one by one; of the others how many on each green, since a list of hundreds is not read. */
        private List<String> recheck() {
            List<String> rows = new ArrayList<>();
            Map<String, List<RecheckItem>> others = new LinkedHashMap<>();
            for (RecheckItem item : report.recheck()) {
                if (item.reason() == Reason.LOOK_FIRST || item.reason() == Reason.NEVER_SEEN) {
                    others.computeIfAbsent(item.hole(), hole -> new ArrayList<>())
                            .add(item);
                } else {
                    rows.add(recheck(item));
                }
            }
            others.forEach((hole, items) -> rows.add(Layout.left(hole, HOLE) + counted(items)));
            return rows;
        }

        private String counted(List<RecheckItem> items) {
            List<RecheckItem> due = items.stream()
                    .filter(item -> item.reason() == Reason.LOOK_FIRST)
                    .toList();
            List<String> parts = new ArrayList<>();
            if (!due.isEmpty()) {
                LocalDate oldest = due.stream()
                        .map(item -> item.plug().setOn())
                        .min(LocalDate::compareTo)
                        .orElseThrow();
                parts.add(texts.say("turf.recheck.due", due.size(), texts.day(oldest)));
            }
            if (due.size() < items.size()) {
                parts.add(texts.say("turf.recheck.unseen", items.size() - due.size()));
            }
            return String.join(" · ", parts);
        }

        private List<String> resting() {
            Map<String, List<RestingHole>> byHole = new LinkedHashMap<>();
            report.wearRest()
                    .forEach(resting -> byHole.computeIfAbsent(resting.hole(), hole -> new ArrayList<>())
                            .add(resting));
            List<String> rows = new ArrayList<>();
            byHole.forEach((hole, holes) -> {
                LocalDate last = holes.stream()
                        .map(resting -> resting.rests().lastDay())
                        .max(LocalDate::compareTo)
                        .orElseThrow();
                rows.add(Layout.left(hole, HOLE) + texts.say("turf.restsUntil", holes.size(), texts.day(last)));
            });
            return rows;
        }

        private String row(String hole, MapPoint at) {
            return Layout.left(hole, HOLE) + Layout.left(positions.of(places.find(hole, at), at), PLACE);
        }

        private String signal(TurfSignal signal) {
            return "  – " + texts.say(signal.says());
        }

        private String chart(Measured.What what, IndividualsChart chart) {
            return "  "
                    + texts.say(
                            "turf.chart",
                            texts.say("measure." + EnumNames.lowerCamel(what)),
                            chart.values().size(),
                            millimetres(chart.mean()),
                            millimetres(chart.lowerLimit()),
                            millimetres(chart.upperLimit()),
                            chart.outside().size());
        }

        private String method(WaterLoss loss) {
            return texts.say("turf.method." + EnumNames.lowerCamel(loss.method()));
        }

        private String millimetres(double value) {
            return texts.number(value, 1);
        }
    }
}
