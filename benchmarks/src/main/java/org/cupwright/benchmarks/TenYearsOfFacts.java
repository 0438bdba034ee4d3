package org.cupwright.benchmarks;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.UUID;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.CrewNote;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.RolledByHand;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.cupchange.CupWork.SpotCheck;
import org.cupwright.cupchange.DayReading;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PlugWork;
import org.cupwright.cupchange.PlugWork.BallMarksMended;
import org.cupwright.cupchange.PlugWork.PlugCare;
import org.cupwright.cupchange.PlugWork.PlugLook;
import org.cupwright.cupchange.PlugWork.PlugSeen;
import org.cupwright.cupchange.PlugWork.PlugTended;

/**
 * An invented logbook: eighteen greens, a change a day on each, ten facts more about each change. Nobody keeps so full
 * a logbook; it is meant to be more than enough.
 */
final class TenYearsOfFacts {
    static final LocalDate FIRST = LocalDate.of(2015, 1, 1);
    private static final int GREENS = 18;
    private static final int PLUGS_LOOKED_AT = 4;

    private final String course;
    private final Random random;
    private final List<Fact> facts = new ArrayList<>();
    private Instant now = Instant.EPOCH;

    private TenYearsOfFacts(String course, Random random) {
        this.course = course;
        this.random = random;
    }

    static List<Fact> of(String course, int days, long seed) {
        TenYearsOfFacts made = new TenYearsOfFacts(course, new Random(seed));
        List<List<MapPoint>> were = new ArrayList<>();
        for (int hole = 0; hole < GREENS; hole++) {
            were.add(new ArrayList<>());
        }
        for (int day = 0; day < days; day++) {
            made.now = FIRST.plusDays(day).atTime(5, 0).toInstant(ZoneOffset.UTC);
            made.ofCourse(FIRST.plusDays(day));
            for (int hole = 0; hole < GREENS; hole++) {
                made.ofGreen("" + (hole + 1), were.get(hole));
            }
        }
        return made.facts;
    }

    private void ofGreen(String hole, List<MapPoint> were) {
        MapPoint at = new MapPoint(random.nextInt(30), random.nextInt(30));
        String cutter = "cutter " + random.nextInt(3);
        Soil soil = Soil.values()[random.nextInt(3)];
        add(hole, CupChanged.asPlanned(at).with(cutter, soil, false));
        add(hole, new RolledByHand(at, true));
        add(hole, new BallMarksMended(random.nextInt(20)));
        add(hole, new CareWork.Irrigated(random.nextInt(4)));
        add(hole, new CareWork.Maintained(CareWork.Upkeep.MOWN_SINGLE));
        for (int back = 1; back <= PLUGS_LOOKED_AT && back <= were.size(); back++) {
            add(hole, new PlugSeen(were.get(were.size() - back), PlugLook.LEVEL));
        }
        int old = were.size() - 10; // ten days old: knit
        if (old >= 0) {
            add(hole, new PlugSeen(were.get(old), PlugLook.KNIT));
        }
        if (!were.isEmpty()) {
            add(hole, new PlugTended(were.get(were.size() - 1), PlugCare.WATERED, Optional.empty()));
        }
        were.add(at);
    }

    private void ofCourse(LocalDate day) {
        add("", new DayReading.RoundsPlayed(day.minusDays(1), 60 + random.nextInt(80)));
        add("", new DayReading.SpeedRead(9 + random.nextDouble(), OptionalDouble.empty()));
        add("", weather(day));
        if (day.getDayOfMonth() == 1) {
            add("", new CrewNote.ToolSharpened("cutter 1"));
            add("3", new SpotCheck(OptionalDouble.of(127), OptionalDouble.of(26), OptionalDouble.of(0)));
        }
    }

    /** A year's wave with some chance in it. */
    private Payload weather(LocalDate day) {
        double mean =
                11 - 9 * StrictMath.cos(2 * StrictMath.PI * (day.getDayOfYear() - 20) / 365.25) + random.nextGaussian();
        return new DayReading.WeatherEntered(
                day,
                mean + 5,
                mean - 5,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(2),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(random.nextInt(4) == 0 ? 6 : 0),
                false);
    }

    private void add(String hole, Payload payload) {
        now = now.plus(Duration.ofSeconds(7));
        facts.add(new Fact(
                new UUID(random.nextLong(), random.nextLong()),
                Fact.CURRENT_VERSION,
                now,
                now.plusSeconds(30),
                Optional.empty(),
                "invented person",
                course,
                hole.isEmpty() ? Optional.empty() : Optional.of(hole),
                payload));
    }

    /** What somebody writes down ninety days after it was seen: a look at a plug. */
    static Fact late(String course, Instant when) {
        return new Fact(
                new UUID(1, when.getEpochSecond()),
                Fact.CURRENT_VERSION,
                when,
                when.plus(Duration.ofDays(90)),
                Optional.empty(),
                "invented person",
                course,
                Optional.of("7"),
                new PlugWork.PlugSeen(new MapPoint(1, 1), PlugLook.HIGH));
    }
}
