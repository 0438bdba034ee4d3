package org.cupwright.app.desk.log;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;

/** What the logbook says of a day already, as far as it counts. */
public final class DayEntries {
    private final List<Fact> facts;

    private DayEntries(List<Fact> facts) {
        this.facts = facts;
    }

    public static DayEntries of(Stores stores, Course course, LocalDate day) {
        return new DayEntries(DayLog.of(stores.facts(), course, day).facts());
    }

    /** What is said of a hole's change that day. */
    public Optional<Fact> cutOrLeft(String hole) {
        return facts.stream()
                .filter(fact -> fact.hole().equals(Optional.of(hole)) && isChange(fact.payload()))
                .reduce((earlier, later) -> later);
    }

    /** The last moment between two, both included, at which something happened. */
    public Optional<Instant> last(Instant from, Instant to) {
        return facts.stream()
                .map(Fact::happenedAt)
                .filter(moment -> !moment.isBefore(from) && !moment.isAfter(to))
                .max(Instant::compareTo);
    }

    /** Refuses a second change of a hole on one day, unless the person is sure. */
    public void ask(Payload payload, Optional<Hole> hole, boolean sure) {
        if (!sure && isChange(payload)) {
            hole.flatMap(known -> cutOrLeft(known.id())).ifPresent(before -> {
                throw LogProblems.again(before);
            });
        }
    }

    public static boolean isChange(Payload payload) {
        return payload instanceof CupChanged || payload instanceof CutSomewhere || payload instanceof LeftInOldHole;
    }
}
