package org.cupwright.app.desk.entry;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.desk.log.FactIds;
import org.cupwright.app.desk.log.MomentOfCorrection;
import org.cupwright.app.storage.FactStore;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/**
 * A hole that was entered as cut, as one of all perhaps, and was left where it was after all: the entry is corrected
 * and not followed by another, as nothing was cut.
 */
record LeftInstead(FactStore store, Fact cut) {
    /** The entry that a fact corrects, if it is such a one. */
    static Optional<Fact> of(Fact fact, DayLog log) {
        return fact.hole().flatMap(log::change).filter(before -> of(fact.payload(), before));
    }

    static boolean of(Payload payload, Fact before) {
        return payload instanceof LeftInOldHole && !(before.payload() instanceof LeftInOldHole);
    }

    /** The correction that says what the fact says; it counts from when the cut was entered. */
    Fact corrected(Fact left) {
        List<Fact> all = FactIds.of(store, cut.course(), cut.id().toString()).all();
        return new Fact(
                left.id(),
                left.version(),
                cut.happenedAt(),
                MomentOfCorrection.on(cut, all, left.recordedAtDevice()),
                left.recordedAtServer(),
                left.person(),
                left.course(),
                left.hole(),
                Correction.to(cut.id(), left.payload()));
    }

    /** A fact as it counts from now on: of a correction what it says, under the entry's own name. */
    static Fact counting(Fact kept) {
        if (!(kept.payload() instanceof Correction correction)) {
            return kept;
        }
        return new Fact(
                correction.of(),
                kept.version(),
                kept.happenedAt(),
                kept.recordedAtDevice(),
                kept.recordedAtServer(),
                kept.person(),
                kept.course(),
                kept.hole(),
                correction.replacement().orElseThrow());
    }

    static Message remark(Fact cut) {
        return Message.of("log.leftInstead", new Name(cut.hole().orElse("")), new Name(cut.person()));
    }
}
