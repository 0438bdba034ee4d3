package org.cupwright.cupchange;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.message.Message.Day;

/** What may be used of a green, and whether it is in play. */
public sealed interface GroundNote extends Payload {
    /** How a piece of ground may be used. */
    enum GroundUse {
        CLOSED,
        LIGHT_USE,
        /** Kept for a coming event. */
        SAVED,
        /** Whatever was marked there before no longer counts. */
        FREE
    }

    /** Why a piece of ground is marked. */
    enum GroundReason {
        WEAR,
        REPAIR,
        NEW_TURF,
        /** Plugs from here must not go to clean ground. */
        DISEASE,
        WET,
        EVENT,
        OTHER
    }

    /**
     * Ground was marked, or freed again.
     *
     * @param from the first day it counts
     * @param until the last day it counts; empty while nobody has ended it; freed ground has none
     */
    record GroundMarked(GroundUse use, Area area, GroundReason reason, LocalDate from, Optional<LocalDate> until)
            implements GroundNote {
        public GroundMarked {
            if (until.isPresent() && (use == GroundUse.FREE || until.get().isBefore(from))) {
                throw use == GroundUse.FREE
                        ? new ImpossibleFact("freedUntil", new Day(until.get()))
                        : new ImpossibleFact("endsBeforeItBegins", new Day(from), new Day(until.get()));
            }
        }

        @Override
        public boolean needsHole() {
            return true;
        }
    }

    /** The temporary green came into play, or went out of it. */
    record TemporaryGreen(boolean inPlay) implements GroundNote {
        @Override
        public boolean needsHole() {
            return true;
        }
    }

    /** Frost was seen on the greens, or has gone. */
    record Frost(boolean onGreens) implements GroundNote {
        @Override
        public boolean needsHole() {
            return false;
        }
    }
}
