package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.CupWork.HoleMovedInPlay;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.cupchange.GroundNote.GroundMarked;
import org.cupwright.cupchange.GroundNote.TemporaryGreen;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PlugWork;

/**
 * What each kind of entry does to the green that it names.
 *
 * <p>A table, not a chain of questions: a chain is compiled as one piece with all that it calls, and again whenever an
 * entry of a new kind comes, which took a quarter of the time of reading a long logbook (measured by benchmarks/run
 * TenYearLogbook).
 */
final class GreenSteps {
    private static final Map<Class<?>, GreenStep<? extends Payload>> STEPS = new HashMap<>();

    static {
        put(CupChanged.class, (green, cup, day) -> green.cut(cup.cutAt(), day));
        put(CutSomewhere.class, GreenState::cutSomewhere);
        put(HoleMovedInPlay.class, (green, moved, day) -> green.cut(moved.movedTo(), day));
        put(GroundMarked.class, GreenState::marked);
        put(TemporaryGreen.class, (green, temporary, day) -> green.temporary(temporary.inPlay(), day));
        put(SpeedRead.class, (green, read, day) -> green.read(read.speed().feet()));
        putAll(PlugWork.class, GreenState::worked);
        putAll(CareWork.class, GreenState::cared);
    }

    private GreenSteps() {}

    /** A green after an entry of a day. */
    interface GreenStep<P extends Payload> {
        GreenState after(GreenState green, P payload, LocalDate day);
    }

    private static <P extends Payload> void put(Class<P> kind, GreenStep<P> step) {
        STEPS.put(kind, step);
    }

    private static <P extends Payload> void putAll(Class<P> family, GreenStep<P> step) {
        for (Class<?> kind : family.getPermittedSubclasses()) {
            STEPS.put(kind, step);
        }
    }

    /** Empty when the entry does nothing to a green. */
    @SuppressWarnings("unchecked") // a step is put there under the class of what it takes
    static Optional<GreenStep<Payload>> find(Payload payload) {
        return Optional.ofNullable((GreenStep<Payload>) STEPS.get(payload.getClass()));
    }
}
