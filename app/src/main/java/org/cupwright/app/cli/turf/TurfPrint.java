package org.cupwright.app.cli.turf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.PlaceText;
import org.cupwright.app.answers.TurfText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.TurfJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Fact;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckItem.Reason;
import org.cupwright.turf.today.RestingHole;
import org.cupwright.turf.today.WateringItem;

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
        if (task.options().json()) {
            task.print(Json.document(new TurfJson(report.day(), texts).of(report)));
            return;
        }
        TurfText words = new TurfText(texts, report);
        PlaceText places =
                new PlaceText(texts, report.day().course(), report.day().policy());
        task.print(words.title());
        words.conditions().forEach(task::print);
        section("odd", odd(report, words));
        Function<WateringItem, String> watering = item -> row(places, item.hole(), item.plug(), words.watering(item));
        section("morning", report.morning().stream().map(watering));
        section("afternoon", report.afternoon().stream().map(watering));
        section("recheck", recheck(report, words, places));
        section("signals", report.signals().stream().map(signal -> "  – " + texts.say(signal.says())));
        section(
                "charts",
                report.charts().entrySet().stream().map(chart -> "  " + words.chart(chart.getKey(), chart.getValue())));
        section("resting", byHole(report.wearRest(), RestingHole::hole, words::resting));
    }

    private void section(String name, Stream<String> rows) {
        List<String> lines = rows.toList();
        if (!lines.isEmpty()) {
            task.print("");
            task.print(texts.say("turf." + name));
            lines.forEach(task::print);
        }
    }

    private Stream<String> odd(TurfReport report, TurfText words) {
        FactText facts = new FactText(texts, report.day().course(), report.day().policy());
        List<String> rows = new ArrayList<>();
        for (OddThings.Thing thing : report.odd()) {
            Fact fact = thing.fact();
            String head = Layout.left(facts.hole(fact), HOLE) + facts.moment(fact) + "  " + facts.id(fact) + "  ";
            rows.addAll(Layout.hanging(head, words.odd(thing)));
        }
        if (!rows.isEmpty()) {
            rows.add("     " + texts.say("turf.odd.seen"));
        }
        return rows.stream();
    }

    /** Plugs with a fault one by one; of the others how many on each green, since a list of hundreds is not read. */
    private static Stream<String> recheck(TurfReport report, TurfText words, PlaceText places) {
        Map<Boolean, List<RecheckItem>> byFault = report.recheck().stream()
                .collect(Collectors.partitioningBy(
                        item -> item.reason() != Reason.LOOK_FIRST && item.reason() != Reason.NEVER_SEEN));
        return Stream.concat(
                byFault.get(true).stream().map(item -> row(places, item.hole(), item.plug(), words.recheck(item))),
                byHole(byFault.get(false), RecheckItem::hole, words::unseen));
    }

    /** A row for each hole about all that is on its green. */
    private static <T> Stream<String> byHole(List<T> items, Function<T, String> hole, Function<List<T>, String> says) {
        return items.stream()
                .collect(Collectors.groupingBy(hole, LinkedHashMap::new, Collectors.toList()))
                .entrySet()
                .stream()
                .map(green -> Layout.left(green.getKey(), HOLE) + says.apply(green.getValue()));
    }

    private static String row(PlaceText places, String hole, Plug plug, String says) {
        return Layout.left(hole, HOLE) + Layout.left(places.at(hole, plug.at()), PLACE) + says;
    }
}
