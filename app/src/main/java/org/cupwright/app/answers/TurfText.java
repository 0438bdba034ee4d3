package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.turf.TurfReport;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RecheckItem.Reason;
import org.cupwright.turf.today.WateringItem;
import org.cupwright.turf.weather.WeatherSource;

/**
 * What the turf asks for on a morning, on one screen: what has to be known first stands first. All that is known is
 * told by {@link TurfInFull}.
 */
public final class TurfText {
    private static final int HOLE_WIDTH = 5;
    private static final int PLACE_WIDTH = 39;

    private final Texts texts;
    private final TurfReport report;
    private final int named;
    private final int rows;
    private final Lines lines;

    private TurfText(Texts texts, TurfReport report, int named, int rows) {
        this.texts = texts;
        this.report = report;
        this.named = named;
        this.rows = rows;
        this.lines = new Lines(texts);
    }

    /**
     * The gravest first. What has to be known first is told whole; of the rest there are texts of less and less, for a
     * door to take the first that it has room for.
     *
     * <p>At most so many odd things, plugs or cutters are named one by one, and so many rows of places worth a look:
     * our choice. How many more there are is said.
     */
    public static Stream<Lines> shorterAndShorter(Texts texts, TurfReport report) {
        return Stream.concat(
                        IntStream.rangeClosed(0, 4).mapToObj(less -> new TurfText(texts, report, 4, 7 - less)),
                        IntStream.rangeClosed(1, 4).mapToObj(less -> new TurfText(texts, report, 4 - less, 4 - less)))
                .map(TurfText::lines);
    }

    private Lines lines() {
        CourseDay day = report.day();
        lines.say("turf.title", day.course().name(), texts.day(day.date()));
        new FirstText(texts, day).before(report.first().before(), lines);
        section("odd", report.odd(), odd -> new OddText(texts, day).rows(odd, lines));
        section(
                "signals",
                report.signals(),
                signals -> signals.forEach(signal -> lines.wrapped("  – ", texts.say(signal.says()))));
        section("faults", of(RecheckItem.Reason::isFault), this::faults);
        watering("turf.water.morning", report.morning());
        watering("turf.water.afternoon", report.afternoon());
        new PlugsWorthALook(texts, report).rows(of(reason -> reason == Reason.LOOK_FIRST), rows, lines);
        notEntered();
        return lines.say("turf.rest");
    }

    private <T> void section(String name, List<T> items, Consumer<List<T>> rows) {
        if (!items.isEmpty() && named == 0) {
            lines.line(texts.say("turf." + name) + " " + items.size());
        } else if (!items.isEmpty()) {
            lines.say("turf." + name);
            rows.accept(items.subList(0, Math.min(named, items.size())));
            if (items.size() > named) {
                lines.line("     " + texts.say("turf.more", items.size() - named));
            }
        }
    }

    private List<RecheckItem> of(Predicate<Reason> wanted) {
        return report.recheck().stream()
                .filter(item -> wanted.test(item.reason()))
                .toList();
    }

    private void faults(List<RecheckItem> items) {
        PlaceText places =
                new PlaceText(texts, report.day().course(), report.day().policy());
        for (RecheckItem item : items) {
            String place = places.at(item.hole(), item.plug().at());
            lines.wrapped(
                    List.of(Line.left(item.hole(), HOLE_WIDTH), Line.left(place, PLACE_WIDTH)),
                    texts.say("turf.recheck." + EnumNames.lowerCamel(item.reason())));
        }
    }

    /** On which greens the plugs of the last days want water that they have not had. */
    private void watering(String key, List<WateringItem> items) {
        List<WateringItem> wanted = items.stream().filter(item -> !item.done()).toList();
        if (wanted.isEmpty()) {
            return;
        }
        boolean unknown = wanted.stream().anyMatch(item -> item.reason() == WateringItem.Reason.WATER_UNKNOWN);
        String says = texts.say(
                key,
                report.day().policy().get(TurfPolicy.WATERING_DAYS),
                greens(wanted.stream().map(WateringItem::hole).distinct().toList()));
        lines.wrapped("", unknown ? says + " " + texts.say("turf.water.unknown") : says);
    }

    /** The greens by name; where most are meant, those that are not. */
    private String greens(List<String> wanted) {
        List<String> others = report.day().course().holes().stream()
                .map(Hole::id)
                .filter(hole -> !wanted.contains(hole))
                .toList();
        if (others.isEmpty()) {
            return texts.say("turf.water.all");
        }
        return others.size() < wanted.size()
                ? texts.say("turf.water.allBut", String.join(", ", others))
                : texts.say("turf.water.greens", String.join(", ", wanted));
    }

    /** One line, as nothing on this screen hangs on it alone. */
    private void notEntered() {
        List<String> missing = new ArrayList<>();
        int weather = report.basis().all() - report.basis().days(WeatherSource.OBSERVED);
        if (weather > 0) {
            missing.add(
                    texts.say("turf.missing.weather", weather, report.basis().all()));
        }
        report.water()
                .filter(water -> water.unknownDays() > 0)
                .ifPresent(water -> missing.add(texts.say("turf.missing.water", water.unknownDays())));
        int unseen = of(reason -> reason == Reason.NEVER_SEEN).size();
        if (unseen > 0) {
            missing.add(texts.say("turf.missing.looks", unseen));
        }
        if (!missing.isEmpty()) {
            lines.say("turf.missing", String.join(" · ", missing));
        }
    }
}
