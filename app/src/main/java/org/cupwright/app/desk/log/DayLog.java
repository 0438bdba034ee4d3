package org.cupwright.app.desk.log;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.FactStore;
import org.cupwright.course.Course;
import org.cupwright.cupchange.CareWork.Maintained;
import org.cupwright.cupchange.CareWork.Upkeep;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.holelocation.FastestSpeed;
import org.cupwright.units.GreenSpeed;

/**
 * What the logbook says of one day, corrections taken in.
 *
 * @param day the day
 * @param zone the zone whose calendar days are the course's days
 * @param facts in the order in which they happened
 */
public record DayLog(LocalDate day, ZoneId zone, List<Fact> facts) {
    private static final LocalTime MORNING = LocalTime.of(5, 0);

    public DayLog {
        facts = List.copyOf(facts);
    }

    public static DayLog of(FactStore store, Course course, LocalDate day) {
        ZoneId zone = course.frame().zone();
        DayLog empty = new DayLog(day, zone, List.of());
        return new DayLog(day, zone, new FactsInEffect(store, course.id()).between(empty.start(), empty.end()));
    }

    /** When that happened of which only the day is known (our choice: cups are changed before play). */
    public static Instant morning(LocalDate day, ZoneId zone) {
        return day.atTime(MORNING).atZone(zone).toInstant();
    }

    /** The moment the day begins. */
    public Instant start() {
        return day.atStartOfDay(zone).toInstant();
    }

    /** The moment the next day begins. */
    public Instant end() {
        return day.plusDays(1).atStartOfDay(zone).toInstant();
    }

    /** The day's reading of the green speed; empty when nobody read it. Of several the last counts. */
    public Optional<Fact> reading() {
        return facts.stream()
                .filter(fact -> fact.payload() instanceof SpeedRead)
                .reduce((earlier, later) -> later);
    }

    /**
     * A reading of the day or of one before it, with what the day's rolling and second mowing after the reading add.
     * What was done before is in the reading already.
     *
     * @param reading a fact that is a reading of the green speed
     */
    public FastestSpeed fastestAfter(Fact reading) {
        GreenSpeed speed = ((SpeedRead) reading.payload()).speed();
        List<Fact> later = facts.subList(facts.indexOf(reading) + 1, facts.size());
        return new FastestSpeed(Optional.of(speed), 0, worked(later, Upkeep.ROLLED), worked(later, Upkeep.MOWN_DOUBLE));
    }

    /** What is said of a hole's change. */
    public Optional<Fact> change(String hole) {
        return facts.stream()
                .filter(fact -> fact.hole().equals(Optional.of(hole)) && isChange(fact.payload()))
                .reduce((earlier, later) -> later);
    }

    public static boolean isChange(Payload payload) {
        return payload instanceof CupChanged || payload instanceof CutSomewhere || payload instanceof LeftInOldHole;
    }

    /** The last moment between two, both included, at which something happened. */
    public Optional<Instant> last(Instant from, Instant to) {
        return facts.stream()
                .map(Fact::happenedAt)
                .filter(moment -> !moment.isBefore(from) && !moment.isAfter(to))
                .max(Instant::compareTo);
    }

    private static boolean worked(List<Fact> facts, Upkeep work) {
        return facts.stream()
                .anyMatch(fact ->
                        fact.hole().isEmpty() && fact.payload() instanceof Maintained done && done.work() == work);
    }
}
