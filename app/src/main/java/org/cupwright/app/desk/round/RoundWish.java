package org.cupwright.app.desk.round;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.cupwright.round.StartType;

/**
 * What somebody wants of a day's round, as it was typed.
 *
 * @param start from which tees the first groups go; empty: as it was
 * @param firstGroups when they go, {@code 07:00}, with commas between; empty: as it was
 * @param frostMinutes how much later because of frost; empty: as it was
 * @param give who is to have which holes
 * @param nobody holes that nobody is to have
 */
public record RoundWish(
        Optional<StartType> start,
        Optional<String> firstGroups,
        OptionalInt frostMinutes,
        List<Give> give,
        List<String> nobody) {
    public RoundWish {
        give = List.copyOf(give);
        nobody = List.copyOf(nobody);
    }

    /** {@code 1-9} for one person. */
    public record Give(String person, String holes) {}

    boolean isOfStart() {
        return start.isPresent() || firstGroups.isPresent() || frostMinutes.isPresent();
    }

    boolean isOfPeople() {
        return !give.isEmpty() || !nobody.isEmpty();
    }
}
