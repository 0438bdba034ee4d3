package org.cupwright.rotation;

import static org.cupwright.policy.SettingType.byHole;
import static org.cupwright.policy.SettingType.date;
import static org.cupwright.policy.SettingType.ranking;
import static org.cupwright.policy.SettingType.weekdays;
import static org.cupwright.policy.SettingType.wholeNumber;
import static org.cupwright.policy.SettingType.words;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.Third;
import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;
import org.cupwright.policy.Slice;

/** What the course may decide about when holes are changed; what is said of a green goes before the course's. */
public final class SchemePolicy {
    private static final Slice SLICE = new Slice("rotation");

    private static final SettingType<List<String>> AREAS = words(PersonsOpinion.AREA_PATTERN, "areas");

    public static final Setting<Set<DayOfWeek>> CHANGE_DAYS = SLICE.setting(
                    "changeDays", weekdays(), "", EnumSet.allOf(DayOfWeek.class))
            .ours("every day, until the course names its days");

    public static final Setting<SortedMap<String, Set<DayOfWeek>>> CHANGE_DAYS_OF_GREENS = SLICE.setting(
                    "changeDaysOfGreens", byHole(weekdays()), "", new TreeMap<>())
            .ours("every green as the course");

    public static final Setting<Integer> HOLE_MOST_DAYS = SLICE.setting("holeMostDays", wholeNumber(1, 28), "days", 7)
            .ours("by then its edge is worn; a week without a change-day is longer than any course plans");

    /** Thirds of single greens that may have a hole; see {@link RotationPolicy#THIRDS_ALLOWED}. */
    public static final Setting<SortedMap<String, List<Third>>> THIRDS_OF_GREENS = SLICE.setting(
                    "thirdsOfGreens", byHole(ranking(Third.class).notEmpty()), "", new TreeMap<>())
            .ours("every green as the course");

    public static final Setting<SortedMap<String, List<String>>> AREAS_OF_GREENS = SLICE.setting(
                    "areasOfGreens", byHole(AREAS.notEmpty()), "", new TreeMap<>())
            .ours("anywhere on a green, until the course names the areas it uses");

    public static final Setting<List<String>> CYCLE =
            SLICE.setting("cycle", AREAS, "", List.of()).ours("none, until the course has one");

    public static final Setting<SortedMap<String, List<String>>> CYCLE_OF_GREENS = SLICE.setting(
                    "cycleOfGreens", byHole(AREAS.notEmpty()), "", new TreeMap<>())
            .ours("every green as the course");

    public static final Setting<LocalDate> CYCLE_FROM = SLICE.setting("cycleFrom", date(), "", LocalDate.of(2026, 1, 1))
            .ours("the first day of a year, until the course names the day its cycle begins");

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
