package org.cupwright.democourse;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.SpotCheck;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.PlugWork.BallMark;
import org.cupwright.cupchange.PlugWork.BallMarksMended;
import org.cupwright.cupchange.PlugWork.PlugCare;
import org.cupwright.cupchange.PlugWork.PlugFrom;
import org.cupwright.cupchange.PlugWork.PlugLook;
import org.cupwright.cupchange.PlugWork.PlugSeen;
import org.cupwright.cupchange.PlugWork.PlugSet;
import org.cupwright.cupchange.PlugWork.PlugTended;

/** What was seen of the season's plugs and done to them, ball marks, and the monthly checks with a ruler. */
final class SeasonPlugs {
    /** Looked at about a week after they were set, on some greens each Monday. */
    private static final int LOOKED_AT_BACK = 8;

    private final DemoCourse demo;
    private final SeasonLog log;
    private final Random random;

    /** Where the holes were, by hole, oldest first. */
    private final Map<String, List<MapPoint>> holes = new HashMap<>();

    private SeasonPlugs(DemoCourse demo, SeasonLog log) {
        this.demo = demo;
        this.log = log;
        this.random = new Random(demo.seed() * 31 + 2);
    }

    /** Goes through the season with the changes of the cup that the log holds already. */
    static void write(DemoCourse demo, SeasonLog log) {
        SeasonPlugs plugs = new SeasonPlugs(demo, log);
        Map<LocalDate, List<Fact>> changes = new HashMap<>();
        for (Fact fact : Logbook.of(log.facts()).facts()) {
            if (fact.payload() instanceof CupChanged) {
                LocalDate day = LocalDate.ofInstant(
                        fact.happenedAt(), demo.course().frame().zone());
                changes.computeIfAbsent(day, none -> new ArrayList<>()).add(fact);
            }
        }
        for (LocalDate day : DemoSeason.days()) {
            changes.getOrDefault(day, List.of()).forEach(plugs::add);
            plugs.day(day);
        }
    }

    private void add(Fact change) {
        holes.computeIfAbsent(change.hole().orElseThrow(), none -> new ArrayList<>())
                .add(((CupChanged) change.payload()).cutAt());
    }

    private void day(LocalDate day) {
        if (day.getDayOfWeek() == DayOfWeek.MONDAY) {
            looks(day);
        }
        if (day.getDayOfWeek() == DayOfWeek.FRIDAY) {
            marks(day);
        }
        if (day.getDayOfMonth() == 2) {
            ruler(day);
        }
    }

    private void looks(LocalDate day) {
        for (Hole hole : demo.course().holes()) {
            List<MapPoint> places = holes.getOrDefault(hole.id(), List.of());
            if (places.size() > LOOKED_AT_BACK && random.nextInt(4) == 0) {
                MapPoint plug = places.get(places.size() - LOOKED_AT_BACK);
                look(day, hole.id(), plug, SeasonLog.changerOf(hole.id()));
            }
        }
    }

    private void look(LocalDate day, String hole, MapPoint plug, String person) {
        PlugLook look = switch (random.nextInt(10)) {
            case 0 -> PlugLook.LOW;
            case 1 -> PlugLook.HIGH;
            case 2 -> PlugLook.DAMAGED;
            case 3, 4, 5 -> PlugLook.LEVEL;
            default -> PlugLook.KNIT;
        };
        LocalTime time = LocalTime.of(9, 10).plusMinutes(4L * Integer.parseInt(hole));
        log.at(day, time, person, hole, new PlugSeen(plug, look));
        PlugCare care = look == PlugLook.DAMAGED ? PlugCare.REPLACED_FROM_NURSERY : PlugCare.LIFTED;
        if (look == PlugLook.LOW || look == PlugLook.HIGH || look == PlugLook.DAMAGED) {
            log.at(day, time.plusMinutes(3), person, hole, new PlugTended(plug, care, Optional.empty()));
            log.at(day, time.plusMinutes(4), person, hole, new PlugSeen(plug, PlugLook.LEVEL));
        }
    }

    /** Ball marks are mended where most approach shots land; the worst of them get a plug. */
    private void marks(LocalDate day) {
        for (Hole hole : demo.course().holes()) {
            boolean parThree = hole.par().orElse(4) == 3;
            if (parThree || random.nextInt(5) == 0) {
                LocalTime time = LocalTime.of(10, 0).plusMinutes(5L * Integer.parseInt(hole.id()));
                String person = SeasonLog.changerOf(hole.id());
                log.at(day, time, person, hole.id(), new BallMarksMended(3 + random.nextInt(parThree ? 14 : 7)));
                if (random.nextInt(12) == 0) {
                    plugged(day, time, hole, person);
                }
            }
        }
    }

    private void plugged(LocalDate day, LocalTime time, Hole hole, String person) {
        MapPoint middle = hole.green().centroid();
        MapPoint at = new MapPoint(
                Math.rint(100 * middle.east() + random.nextInt(800) - 400) / 100,
                Math.rint(100 * middle.north() + random.nextInt(800) - 400) / 100);
        log.at(day, time.plusMinutes(1), person, hole.id(), new BallMark(at));
        log.at(day, time.plusMinutes(3), person, hole.id(), new PlugSet(at, PlugFrom.NURSERY, true));
    }

    /** Six greens a month; a plug of the second cutter stands a little higher. */
    private void ruler(LocalDate day) {
        for (int i = 0; i < 6; i++) {
            int hole = 1 + (3 * i + day.getMonthValue()) % 18;
            double high = hole > 9 ? 1.5 : 0;
            log.at(
                    day,
                    LocalTime.of(11, 0).plusMinutes(10L * i),
                    SeasonLog.HEAD,
                    Integer.toString(hole),
                    new SpotCheck(
                            OptionalDouble.of(104 + random.nextInt(7)),
                            OptionalDouble.of(25 + random.nextInt(4)),
                            OptionalDouble.of(high + random.nextInt(4) - 1.5)));
        }
    }
}
