package org.cupwright.app.desk.log;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Course;
import org.cupwright.cupchange.CareWork.Maintained;
import org.cupwright.cupchange.CareWork.Upkeep;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.holelocation.FastestSpeed;
import org.cupwright.units.GreenSpeed;

/**
 * The logbook as it counts on a day: everything up to the day's end, corrections taken in.
 *
 * @param day the day
 * @param zone the zone whose calendar days are the course's days
 * @param facts in the order in which they happened
 */
public record DayLog(LocalDate day, ZoneId zone, List<Fact> facts) {
    public static DayLog of(FactStore store, Course course, LocalDate day) {
        ZoneId zone = course.frame().zone();
        Instant end = day.plusDays(1).atStartOfDay(zone).toInstant().minusNanos(1);
        return new DayLog(day, zone, Logbook.of(store.all(course.id())).upTo(end));
    }

    /**
     * The day's speed as it was read, with what rolling and a second mowing after the reading add; empty when nobody read it. Of
     * several readings the last counts.
     */
    public Optional<FastestSpeed> speedRead() {
        List<Fact> today = today();
        for (int i = today.size() - 1; i >= 0; i--) {
            if (today.get(i).payload() instanceof SpeedRead read) {
                GreenSpeed speed = read.speed();
                List<Fact> later = today.subList(i + 1, today.size());
                return Optional.of(new FastestSpeed(
                        Optional.of(speed), 0, worked(later, Upkeep.ROLLED), worked(later, Upkeep.MOWN_DOUBLE)));
            }
        }
        return Optional.empty();
    }

    private List<Fact> today() {
        Instant midnight = day.atStartOfDay(zone).toInstant();
        return facts.stream()
                .dropWhile(fact -> fact.happenedAt().isBefore(midnight))
                .toList();
    }

    private static boolean worked(List<Fact> facts, Upkeep work) {
        return facts.stream()
                .anyMatch(fact ->
                        fact.hole().isEmpty() && fact.payload() instanceof Maintained done && done.work() == work);
    }
}
