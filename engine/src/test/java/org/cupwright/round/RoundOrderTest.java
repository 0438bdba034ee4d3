package org.cupwright.round;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.Loop;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Orders and times on invented courses, by hand: 14 minutes a hole, ready 10 minutes before. */
class RoundOrderTest {
    private static final Policy POLICY = Policy.defaults();

    private static List<String> numbered(int from, int to) {
        return IntStream.rangeClosed(from, to).mapToObj(Integer::toString).toList();
    }

    /** A course whose hole of place i has the green of place i modulo {@code greens}. */
    private static Course course(int holes, int greens, Loop... loops) {
        List<Hole> made = IntStream.range(0, holes)
                .mapToObj(i -> Hole.of(
                        Integer.toString(i + 1), Shapes.rectangle(100 * (i % greens), 0, 100 * (i % greens) + 20, 30)))
                .toList();
        return new Course("made-up", "Invented", new CourseFrame(25832, ZoneOffset.UTC), made, List.of(loops));
    }

    private static RoundOrder order(Course course, StartType type, int frostMinutes, String... times) {
        List<LocalTime> first = List.of(times).stream().map(LocalTime::parse).toList();
        return RoundOrder.of(course, new DayStart(type, first, frostMinutes), POLICY);
    }

    private static String cutBy(RoundOrder order, String hole) {
        return order.findCutBy(hole).map(LocalTime::toString).orElse("");
    }

    private static List<String> holes(RoundOrder order) {
        return order.parts().stream().flatMap(part -> part.holes().stream()).toList();
    }

    @Test
    void fromTheFirstTeeHolesAreCutAsTheyArePlayed() {
        RoundOrder order = order(course(18, 18), StartType.FIRST_TEE, 0, "07:00");
        assertThat(holes(order)).isEqualTo(numbered(1, 18));
        assertThat(cutBy(order, "1")).isEqualTo("06:50");
        assertThat(cutBy(order, "2")).isEqualTo("07:04");
        assertThat(cutBy(order, "10")).isEqualTo("08:56"); // 9 × 14 = 126 minutes after 06:50
        assertThat(cutBy(order, "18")).isEqualTo("10:48"); // 17 × 14 = 238
    }

    @Test
    void fromTwoTeesBothNinesAreCutSideBySide() {
        RoundOrder order = order(course(18, 18), StartType.TWO_TEES, 0, "07:00");
        assertThat(holes(order))
                .startsWith("1", "10", "2", "11", "3", "12")
                .endsWith("9", "18")
                .hasSize(18);
        assertThat(cutBy(order, "1")).isEqualTo("06:50");
        assertThat(cutBy(order, "10")).isEqualTo("06:50");
        assertThat(cutBy(order, "9")).isEqualTo("08:42"); // 8 × 14 = 112
        assertThat(cutBy(order, "18")).isEqualTo("08:42");
    }

    @Test
    void ofAnOddNumberTheFirstHalfHasOneMore() {
        RoundOrder order = order(course(13, 13), StartType.TWO_TEES, 0, "07:00");
        assertThat(holes(order)).containsExactly("1", "8", "2", "9", "3", "10", "4", "11", "5", "12", "6", "13", "7");
        assertThat(cutBy(order, "8")).isEqualTo("06:50");
        assertThat(cutBy(order, "7")).isEqualTo("08:14"); // 6 × 14 = 84
        assertThat(holes(order(course(1, 1), StartType.TWO_TEES, 0))).containsExactly("1");
        assertThat(holes(order(course(9, 9), StartType.TWO_TEES, 0)))
                .containsExactly("1", "6", "2", "7", "3", "8", "4", "9", "5");
    }

    @Test
    void withAShotgunAllIsReadyByTheStart() {
        RoundOrder order = order(course(18, 18), StartType.SHOTGUN, 0, "09:00");
        assertThat(holes(order)).isEqualTo(numbered(1, 18));
        assertThat(order.cutBy().values()).containsOnly(LocalTime.of(8, 50)).hasSize(18);
    }

    @Test
    void everyNineHasItsOwnTime() {
        RoundOrder order = order(course(27, 27), StartType.SPLIT_NINES, 0, "07:30", "07:00");
        assertThat(cutBy(order, "1")).isEqualTo("07:20");
        assertThat(cutBy(order, "10")).isEqualTo("06:50");
        assertThat(cutBy(order, "19"))
                .as("the last time is that of all after it")
                .isEqualTo("06:50");
        // 10 06:50, 11 07:04, 12 07:18, 1 07:20, 13 07:32, 2 07:34
        assertThat(holes(order)).startsWith("10", "11", "12", "1", "13", "2");
        assertThat(holes(order).subList(18, 27)).isEqualTo(numbered(19, 27));
    }

    @Test
    void anEighteenIsSplitIntoItsNinesAndANineIsNot() {
        RoundOrder eighteen = order(course(18, 18), StartType.SPLIT_NINES, 0, "07:00", "09:30");
        assertThat(holes(eighteen)).isEqualTo(numbered(1, 18)); // 9 at 08:42, 10 at 09:20
        assertThat(cutBy(eighteen, "9")).isEqualTo("08:42");
        assertThat(cutBy(eighteen, "10")).isEqualTo("09:20");
        RoundOrder nine = order(course(9, 9), StartType.SPLIT_NINES, 0, "07:00", "09:30");
        assertThat(holes(nine)).isEqualTo(numbered(1, 9));
        assertThat(cutBy(nine, "9")).isEqualTo("08:42");
    }

    /** Nine greens that are played twice: once with nine names, or with eighteen, each hole by when it is played. */
    @Test
    void aNineHoleCourseThatIsPlayedTwice() {
        RoundOrder nineNames = order(course(9, 9), StartType.FIRST_TEE, 0, "07:00");
        assertThat(nineNames.cutBy()).hasSize(9);
        assertThat(cutBy(nineNames, "9")).isEqualTo("08:42");
        RoundOrder eighteenNames = order(course(18, 9), StartType.FIRST_TEE, 0, "07:00");
        assertThat(eighteenNames.parts()).extracting(Loop::holes).containsExactly(numbered(1, 9), numbered(10, 18));
        assertThat(cutBy(eighteenNames, "10")).isEqualTo("08:56");
        assertThat(cutBy(order(course(18, 9), StartType.TWO_TEES, 0, "07:00"), "10"))
                .isEqualTo("06:50");
    }

    @Test
    void frostShiftsAllTimesAndNoOrder() {
        RoundOrder order = order(course(18, 18), StartType.TWO_TEES, 45, "07:00");
        assertThat(cutBy(order, "1")).isEqualTo("07:35");
        assertThat(cutBy(order, "18")).isEqualTo("09:27");
        assertThat(holes(order)).startsWith("1", "10", "2");
    }

    @Test
    void withoutATimeThereIsAnOrderAlone() {
        RoundOrder order = order(course(18, 18), StartType.TWO_TEES, 45);
        assertThat(order.cutBy()).isEmpty();
        assertThat(holes(order)).startsWith("1", "10", "2");
    }

    /** Thirty-six holes are two rounds, each with its first tee; a round is in order whichever part was named. */
    @Test
    void everyRoundHasAFirstTee() {
        RoundOrder two = order(course(36, 36), StartType.FIRST_TEE, 0, "07:00");
        assertThat(cutBy(two, "19")).isEqualTo("06:50");
        assertThat(holes(two)).isEqualTo(numbered(1, 36));
        Loop named = new Loop("Meadow", numbered(10, 18), false);
        RoundOrder order = order(course(18, 18, named), StartType.FIRST_TEE, 0, "07:00");
        assertThat(cutBy(order, "1")).isEqualTo("06:50");
        assertThat(cutBy(order, "10")).isEqualTo("08:56");
        assertThat(order.parts().get(0)).as("lists stay as they were").isEqualTo(named);
    }

    @Test
    void practiceGreensAreLastAndHaveNoTime() {
        Loop practice = new Loop("By the barn", List.of("19", "20"), true);
        RoundOrder order = order(course(20, 20, practice), StartType.TWO_TEES, 0, "07:00");
        assertThat(order.parts()).hasSize(2).endsWith(practice);
        assertThat(order.findCutBy("19")).isEmpty();
    }

    @Test
    void aTimeGoesOverMidnightWithoutBreaking() {
        assertThat(cutBy(order(course(18, 18), StartType.FIRST_TEE, 0, "00:05"), "1"))
                .isEqualTo("23:55");
        RoundOrder late = order(course(18, 18), StartType.FIRST_TEE, 0, "22:00");
        assertThat(cutBy(late, "18")).isEqualTo("01:48");
        assertThat(holes(late)).isEqualTo(numbered(1, 18));
    }

    @Test
    void theUsualStartIsTheSettings() {
        Policy set = POLICY.with(RoundPolicy.START, StartType.SHOTGUN).with(RoundPolicy.FIRST_GROUP, List.of("8:30"));
        assertThat(DayStart.usual(set)).isEqualTo(new DayStart(StartType.SHOTGUN, List.of(LocalTime.of(8, 30)), 0));
        assertThat(DayStart.usual(set).tells()).isTrue();
        assertThat(DayStart.usual(POLICY).tells()).isFalse();
        assertThat(RoundPolicy.FIRST_GROUP.type().read("24:00")).isEmpty();
        assertThat(RoundPolicy.FIRST_GROUP.type().read("7:5")).isEmpty();
    }
}
