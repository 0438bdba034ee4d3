package org.cupwright.round;

import static org.cupwright.policy.SettingType.oneOf;
import static org.cupwright.policy.SettingType.wholeNumber;
import static org.cupwright.policy.SettingType.words;

import java.time.LocalTime;
import java.util.List;
import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** How play usually begins on a course, and how long before it a hole is to be ready. */
public final class RoundPolicy {
    private static final Slice SLICE = new Slice("round");

    private static final int LONGEST_HOLE_MINUTES = 30;
    private static final int LONGEST_READY_MINUTES = 120;

    /** A time of day as it is typed. */
    public static final String TIME = "([01]?[0-9]|2[0-3]):[0-5][0-9]";

    public static final Setting<StartType> START = SLICE.setting(
                    "start", oneOf(StartType.class), "", StartType.FIRST_TEE)
            .commonPractice("common practice, no source: most days begin at the first tee");

    public static final Setting<List<String>> FIRST_GROUP = SLICE.setting(
                    "firstGroup", words(TIME, "times"), "", List.of())
            .ours("none, until the course says when its first group goes");

    public static final Setting<Integer> MINUTES_A_HOLE = SLICE.setting(
                    "minutesAHole", wholeNumber(5, LONGEST_HOLE_MINUTES), "minutes", 14)
            .ours("18 holes in a little over four hours; a first group of two is quicker");

    public static final Setting<Integer> READY_MINUTES = SLICE.setting(
                    "readyMinutes", wholeNumber(0, LONGEST_READY_MINUTES), "minutes", 10)
            .ours("time to be off the green and out of sight before anybody stands on its tee");

    private RoundPolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }

    /** How play begins on a day of which nothing else was said. */
    static DayStart usual(Policy policy) {
        List<LocalTime> times =
                policy.get(FIRST_GROUP).stream().map(RoundPolicy::time).toList();
        return new DayStart(policy.get(START), times, 0);
    }

    /** What {@link #TIME} takes. */
    public static LocalTime time(String typed) {
        return LocalTime.parse(typed.length() < "00:00".length() ? "0" + typed : typed);
    }
}
