package org.cupwright.app.answers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.signal.IndividualsChart;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckItem.Reason;
import org.cupwright.turf.today.RestingHole;
import org.cupwright.turf.today.WateringItem;
import org.cupwright.turf.water.WaterStatus;

/** All that is known of the turf of a day in words, sentence by sentence. */
public final class TurfInFull {
    private static final int HOLE_WIDTH = 5;
    private static final int PLACE_WIDTH = 39;

    private final Texts texts;
    private final TurfReport report;
    private final PlaceText places;
    private final Lines lines;

    public TurfInFull(Texts texts, TurfReport report) {
        this.texts = texts;
        this.report = report;
        this.places = new PlaceText(texts, report.day().course(), report.day().policy());
        this.lines = new Lines(texts);
    }

    /** The day's conditions, then section by section what wants something. */
    public Lines lines() {
        CourseDay day = report.day();
        lines.say("turf.title", day.course().name(), texts.day(day.date()));
        new FirstText(texts, day).before(report.first().before(), lines);
        lines.gap();
        conditions();
        section("odd", report.odd(), odd -> new OddText(texts, day).rows(odd, lines));
        section("morning", report.morning(), this::watering);
        section("afternoon", report.afternoon(), this::watering);
        section("recheck", report.recheck(), this::recheck);
        section(
                "signals",
                report.signals(),
                signals -> signals.forEach(signal -> lines.line("  – " + texts.say(signal.says()))));
        section(
                "charts",
                report.charts().entrySet(),
                charts -> charts.forEach(chart -> lines.line("  " + chart(chart.getKey(), chart.getValue()))));
        section("resting", report.wearRest(), resting -> byHole(resting, RestingHole::hole, this::resting));
        return lines;
    }

    private <T> void section(String name, Collection<T> items, Consumer<Collection<T>> rows) {
        if (!items.isEmpty()) {
            lines.heading("turf." + name);
            rows.accept(items);
        }
    }

    /** Growth, what that rests on, and what the ground lacks of water. */
    private void conditions() {
        String rests = texts.say("turf.weather." + EnumNames.lowerCamel(report.weather()));
        lines.say("turf.growth", texts.number(report.growth(), 2), rests);
        lines.line(new WeatherText(texts).basis(report.basis()));
        report.water().ifPresentOrElse(this::water, () -> lines.say("turf.noWater"));
    }

    private void water(WaterStatus water) {
        water.loss().ifPresent(loss -> {
            String method = texts.say("turf.method." + EnumNames.lowerCamel(loss.method()));
            lines.say("turf.loss", millimetres(loss.etoMillimetres()), method);
        });
        String least = millimetres(water.deficitAtLeastMillimetres());
        String most = millimetres(water.deficitAtMostMillimetres());
        lines.line(
                water.deficitMillimetres().isPresent()
                        ? texts.say("turf.deficit", most)
                        : texts.say("turf.deficitBetween", least, most, water.unknownDays()));
        if (water.filledDays() > 0) {
            lines.say("turf.filled", water.filledDays());
        }
    }

    private void watering(Collection<WateringItem> items) {
        for (WateringItem item : items) {
            String done = item.done() ? " " + texts.say("turf.done") : "";
            plug(item.hole(), item.plug(), texts.say("turf.watering." + EnumNames.lowerCamel(item.reason())) + done);
        }
    }

    /** Plugs with a fault one by one; of the others how many on each green, since a list of hundreds is not read. */
    private void recheck(Collection<RecheckItem> items) {
        Map<Boolean, List<RecheckItem>> byFault = items.stream()
                .collect(Collectors.partitioningBy(item -> item.reason().isFault()));
        for (RecheckItem item : byFault.get(true)) {
            String wash = item.washAfter() ? " " + texts.say("turf.wash") : "";
            plug(item.hole(), item.plug(), texts.say("turf.recheck." + EnumNames.lowerCamel(item.reason())) + wash);
        }
        byHole(byFault.get(false), RecheckItem::hole, this::unseen);
    }

    private void plug(String hole, Plug plug, String says) {
        lines.row(
                List.of(hole(hole), Line.left(places.at(hole, plug.at()), PLACE_WIDTH)),
                texts.say("turf.setOn", texts.day(plug.setOn())) + " · " + says);
    }

    /** A row for each hole about all that is on its green. */
    private <T> void byHole(Collection<T> items, Function<T, String> hole, Function<List<T>, String> says) {
        Lines.alike(items, hole).forEach(on -> lines.row(List.of(hole(hole.apply(on.get(0)))), says.apply(on)));
    }

    private static Line.Cell hole(String hole) {
        return Line.left(hole, HOLE_WIDTH);
    }

    /** How many plugs of a green nobody has looked at. */
    private String unseen(List<RecheckItem> items) {
        List<LocalDate> due = items.stream()
                .filter(item -> item.reason() == Reason.LOOK_FIRST)
                .map(item -> item.plug().setOn())
                .sorted()
                .toList();
        List<String> parts = new ArrayList<>();
        if (!due.isEmpty()) {
            parts.add(texts.say("turf.recheck.due", due.size(), texts.day(due.get(0))));
        }
        if (due.size() < items.size()) {
            parts.add(texts.say("turf.recheck.unseen", items.size() - due.size()));
        }
        return String.join(" · ", parts);
    }

    /** How many old holes of a green rest, and until when. */
    private String resting(List<RestingHole> holes) {
        LocalDate last = holes.stream()
                .map(resting -> resting.rests().lastDay())
                .max(LocalDate::compareTo)
                .orElseThrow();
        return texts.say("turf.restsUntil", holes.size(), texts.day(last));
    }

    private String chart(Measured.What what, IndividualsChart chart) {
        return texts.say(
                "turf.chart",
                texts.say("measure." + EnumNames.lowerCamel(what)),
                chart.values().size(),
                millimetres(chart.mean()),
                millimetres(chart.lowerLimit()),
                millimetres(chart.upperLimit()),
                chart.outside().size());
    }

    private String millimetres(double value) {
        return texts.number(value, 1);
    }
}
