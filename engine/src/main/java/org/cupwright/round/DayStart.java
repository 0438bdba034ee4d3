package org.cupwright.round;

import java.time.LocalTime;
import java.util.List;
import org.cupwright.policy.Policy;

/**
 * How the play of a day begins.
 *
 * @param type from which tees
 * @param firstGroups when the first groups go, by the course's clock: one time, or with split nines one for each nine
 *     in round order, the last of them for all after it; none where nobody has said
 * @param frostMinutes how much later they go because of frost
 */
public record DayStart(StartType type, List<LocalTime> firstGroups, int frostMinutes) {
    public DayStart {
        firstGroups = List.copyOf(firstGroups);
    }

    /** As the course's settings have it. */
    public static DayStart usual(Policy policy) {
        return RoundPolicy.usual(policy);
    }

    /** Whether there is anything to tell of it: a round from the first tee at no time is told by nothing. */
    public boolean tells() {
        return type != StartType.FIRST_TEE || !firstGroups.isEmpty() || frostMinutes > 0;
    }

    /** When the first group of a nine goes that day, in minutes after midnight; 0 where nobody has said. */
    int minute(int nine) {
        if (firstGroups.isEmpty()) {
            return 0;
        }
        int which = type == StartType.SPLIT_NINES ? Math.min(nine, firstGroups.size() - 1) : 0;
        return firstGroups.get(which).toSecondOfDay() / 60 + frostMinutes;
    }
}
