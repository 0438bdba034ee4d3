package org.cupwright.rotation;

import static org.cupwright.policy.SettingType.byHole;
import static org.cupwright.policy.SettingType.weekdays;
import static org.cupwright.policy.SettingType.wholeNumber;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** What the course may decide about when holes are changed; what is said of a green goes before the course's. */
public final class SchemePolicy {
    private static final Slice SLICE = new Slice("rotation");

    public static final Setting<Set<DayOfWeek>> CHANGE_DAYS = SLICE.setting(
                    "changeDays", weekdays(), "", EnumSet.allOf(DayOfWeek.class))
            .ours("our choice: every day, until the course names its days");

    public static final Setting<SortedMap<String, Set<DayOfWeek>>> CHANGE_DAYS_OF_GREENS = SLICE.setting(
                    "changeDaysOfGreens", byHole(weekdays()), "", new TreeMap<>())
            .ours("our choice: every green as the course");

    public static final Setting<Integer> HOLE_MOST_DAYS = SLICE.setting("holeMostDays", wholeNumber(1, 28), "days", 7)
            .ours("our choice: by then its edge is worn; a week without a change-day is longer than any course plans");

    private SchemePolicy() {}

    /** Whether the hole of a green is to be changed on a day, if nothing else says so. */
    public static boolean changes(Policy policy, String hole, LocalDate day) {
        return policy.get(CHANGE_DAYS_OF_GREENS)
                .getOrDefault(hole, policy.get(CHANGE_DAYS))
                .contains(day.getDayOfWeek());
    }

    /** All of them, for the catalogue. */
    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
