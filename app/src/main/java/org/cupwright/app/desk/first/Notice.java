package org.cupwright.app.desk.first;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;

/**
 * One thing to know before going out.
 *
 * @param kind what it is about
 * @param hole the hole at which it stands; empty where it concerns the whole round
 * @param says the sentence
 * @param place where on the green it is, where it is at one place
 */
public record Notice(Kind kind, Optional<String> hole, Message says, Optional<MapPoint> place) {
    /** What a notice is about, the gravest first. */
    public enum Kind {
        /** A green was sprayed and its label keeps people off it for a while yet. */
        REENTRY,
        /** Frost is on the greens. */
        FROST,
        /** Somebody saw something that cannot wait, and nobody has seen to it. */
        ODD_NOW,
        /** Greens with diseased ground come last. */
        DISEASE,
        /** A word from whoever was there before. */
        NOTE,
        /** What to do in a thunderstorm: a rule that always holds. */
        LIGHTNING,
        /** The hole is played to a temporary green. */
        TEMPORARY,
        /** The spot is to be used with care, or a rule was set aside for it. */
        CARE,
        /** Two holes of one green are nearer to each other than wanted. */
        TWO_HOLES,
        /** Ground of the green is closed. */
        CLOSED,
        /** An older plug is high, low or damaged. */
        PLUG;

        /** Whether it stands at its hole; the others stand before everything else. */
        public boolean atItsHole() {
            return compareTo(LIGHTNING) > 0;
        }
    }

    static Notice before(Kind kind, Message says) {
        return new Notice(kind, Optional.empty(), says, Optional.empty());
    }

    static Notice at(String hole, Kind kind, Message says) {
        return new Notice(kind, Optional.of(hole), says, Optional.empty());
    }
}
