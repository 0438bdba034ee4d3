package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Area;
import org.junit.jupiter.api.Test;

/** The course's own order of areas, to the day. */
class AreaCycleTest {
    private static final LocalDate MONDAY = LocalDate.of(2027, 5, 3);
    private static final Set<DayOfWeek> EVEN = EnumSet.of(DayOfWeek.TUESDAY, DayOfWeek.THURSDAY, DayOfWeek.SATURDAY);

    private static final Policy POLICY = Policy.defaults()
            .with(RotationPolicy.SCHEME, Scheme.SET_CYCLE)
            .with(SchemePolicy.CHANGE_DAYS, EnumSet.of(DayOfWeek.MONDAY, DayOfWeek.WEDNESDAY, DayOfWeek.FRIDAY))
            .with(SchemePolicy.CHANGE_DAYS_OF_GREENS, new TreeMap<>(Map.of("3", EVEN)))
            .with(SchemePolicy.CYCLE, List.of("1", "2", "3", "4"))
            .with(
                    SchemePolicy.CYCLE_OF_GREENS,
                    new TreeMap<>(Map.of("2", List.of("3", "1", "4", "2"), "4", List.of("A", "B", "C"))))
            .with(SchemePolicy.CYCLE_FROM, MONDAY);

    private static String number(Policy policy, String hole, LocalDate day) {
        return new AreaCycle(policy, hole, List.of()).number(day).orElse("–");
    }

    /**
     * Worked by hand: greens 1, 2 and 4 are changed on Monday, Wednesday and Friday, green 3 on Tuesday, Thursday and
     * Saturday; 2 and 4 have orders of their own.
     */
    @Test
    void fourteenDaysOfFourGreensAreAsWorkedByHand() {
        String[][] table = {
            // Mo   Tu   We   Th   Fr   Sa   Su   Mo   Tu   We   Th   Fr   Sa   Su
            {"1", "1", "2", "2", "3", "3", "3", "4", "4", "1", "1", "2", "2", "2"},
            {"3", "3", "1", "1", "4", "4", "4", "2", "2", "3", "3", "1", "1", "1"},
            {"1", "2", "2", "3", "3", "4", "4", "4", "1", "1", "2", "2", "3", "3"},
            {"A", "A", "B", "B", "C", "C", "C", "A", "A", "B", "B", "C", "C", "C"},
        };
        for (int green = 0; green < table.length; green++) {
            for (int day = 0; day < table[green].length; day++) {
                assertThat(number(POLICY, Integer.toString(green + 1), MONDAY.plusDays(day)))
                        .as("green %s, day %s", green + 1, day)
                        .isEqualTo(table[green][day]);
            }
        }
    }

    /** Sunday and Saturday before are still the change of Friday, which is one back from the first area. */
    @Test
    void beforeItsFirstDayACycleIsCountedBackwards() {
        assertThat(number(POLICY, "1", MONDAY.minusDays(1))).isEqualTo("4");
        assertThat(number(POLICY, "1", MONDAY.minusDays(3))).isEqualTo("4");
        assertThat(number(POLICY, "1", MONDAY.minusDays(4))).isEqualTo("3");
    }

    @Test
    void otherSchemesAndCoursesWithoutAnOrderHaveNoAreaOfTheDay() {
        Policy free = POLICY.with(RotationPolicy.SCHEME, Scheme.FREE);
        assertThat(number(free, "1", MONDAY)).isEqualTo("–");
        assertThat(number(POLICY.with(SchemePolicy.CYCLE, List.of()), "1", MONDAY))
                .isEqualTo("–");
        assertThat(number(POLICY.with(RotationPolicy.SCHEME, Scheme.AREA_ONLY), "1", MONDAY))
                .isEqualTo("1");
    }

    @Test
    void aGreenMayHaveItsHolesInSomeOfItsAreasAlone() {
        Area one = new Area("1", new MapPoint(5, 5).toPoint().buffer(3));
        Area two = new Area("2", new MapPoint(15, 5).toPoint().buffer(3));
        Policy some =
                Policy.defaults().with(SchemePolicy.AREAS_OF_GREENS, new TreeMap<>(Map.of("7", List.of("2", "9"))));
        List<Area> areas = new AreaCycle(some, "7", List.of(one, two)).areas(MONDAY);
        assertThat(areas).extracting(Area::number).containsExactly("2", "9");
        assertThat(areas.get(0).holds(new MapPoint(15, 6))).isTrue();
        assertThat(areas.get(1).holds(new MapPoint(15, 6))).isFalse(); // not drawn, so nowhere
        assertThat(new AreaCycle(some, "8", List.of(one)).areas(MONDAY)).isEmpty();
        assertThat(Optional.of(one).filter(area -> area.holds(new MapPoint(8, 5))))
                .isPresent(); // its rim
    }
}
