package org.cupwright.app.desk.round;

import java.time.LocalTime;
import java.util.List;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;
import org.cupwright.round.DayStart;
import org.cupwright.round.RoundPolicy;

/** How play begins, as it is typed. */
final class TypedStart {
    /** Our choice: later than that nobody waits for the frost. */
    private static final int MOST_FROST_MINUTES = 480;

    private TypedStart() {}

    /** What is not said stays as it was before. */
    static DayStart of(RoundWish wish, DayStart before) {
        List<LocalTime> times = wish.firstGroups().map(TypedStart::times).orElse(before.firstGroups());
        int frost = wish.frostMinutes().orElse(before.frostMinutes());
        if (frost < 0 || frost > MOST_FROST_MINUTES) {
            throw Problem.of("frostMinutes", "frost", frost, new Count(MOST_FROST_MINUTES));
        }
        return new DayStart(wish.start().orElse(before.type()), times, frost);
    }

    private static List<LocalTime> times(String typed) {
        return RoundPolicy.FIRST_GROUP
                .type()
                .read(typed.replace(',', ' '))
                .orElseThrow(() -> Problem.of(
                        Message.of("problem.firstGroup", new Message.Name(typed)),
                        "first",
                        typed,
                        Message.of("try.firstGroup")))
                .stream()
                .map(RoundPolicy::time)
                .toList();
    }
}
