package org.cupwright.app.storage;

import java.util.List;
import java.util.Optional;
import org.cupwright.round.DayStart;
import org.cupwright.round.StartType;

/**
 * What was said of the round of one day: how play begins, and who cuts which holes.
 *
 * @param person who said it
 * @param start how play begins that day; empty where it begins as usual
 * @param type from which tees it begins, as known at the time
 * @param given who cuts which holes; empty where that is as on the last day that began so
 */
public record DayRound(String person, Optional<DayStart> start, StartType type, Optional<Shares> given) {
    /**
     * Who cuts which holes.
     *
     * @param all in the order in which the people were named; nobody: one person has them all
     */
    public record Shares(List<Share> all) {
        public static final Shares NONE = new Shares(List.of());

        public Shares {
            all = List.copyOf(all);
        }

        /** Who has a hole. */
        public Optional<String> who(String hole) {
            return all.stream()
                    .filter(share -> share.holes().contains(hole))
                    .map(Share::person)
                    .findFirst();
        }
    }

    /**
     * What one person has.
     *
     * @param person who
     * @param holes in the order of the course
     */
    public record Share(String person, List<String> holes) {
        public Share {
            holes = List.copyOf(holes);
        }
    }
}
