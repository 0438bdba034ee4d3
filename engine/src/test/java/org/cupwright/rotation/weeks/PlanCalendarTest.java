package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;
import org.junit.jupiter.api.Test;

/** Days by number and date: a plan of the 3rd, 4th, 6th and 7th of May, ground resting four days, plugs showing two. */
class PlanCalendarTest {
    private static final PlanCalendar CALENDAR =
            new PlanCalendar(List.of(may(3), may(4), may(6), may(7)), MadeWeeks.rests(4, 2));

    private static LocalDate may(int day) {
        return LocalDate.of(2027, 5, day);
    }

    @Test
    void theLastDayThatIsNotAfterADate() {
        assertThat(CALENDAR.lastUntil(may(2))).isEqualTo(-1);
        assertThat(CALENDAR.lastUntil(may(3))).isZero();
        assertThat(CALENDAR.lastUntil(may(5))).isEqualTo(1);
        assertThat(CALENDAR.lastUntil(may(6))).isEqualTo(2);
        assertThat(CALENDAR.lastUntil(may(30))).isEqualTo(3);
    }

    @Test
    void aHoleIsLeftOnTheNextDayOfThePlanOrTheDayAfterIt() {
        assertThat(CALENDAR.leftOn(0)).isEqualTo(may(4));
        assertThat(CALENDAR.leftOn(1)).isEqualTo(may(6));
        assertThat(CALENDAR.leftOn(3)).isEqualTo(may(8));
    }

    /** Left on the 3rd its ground rests to the 6th, and its plug shows to the 4th. */
    @Test
    void restAndPlugCountFromTheDayOnWhichAHoleIsLeft() {
        assertThat(CALENDAR.restsUntil(may(3))).isEqualTo(2);
        assertThat(CALENDAR.plugShowsUntil(may(3))).isEqualTo(1);
        assertThat(CALENDAR.restsUntil(may(1))).isEqualTo(1);
        assertThat(CALENDAR.plugShowsUntil(may(1))).isEqualTo(-1);
    }

    /** Of four days from the 3rd four are left on it, three on the 4th, one on the 6th and none on the 7th. */
    @Test
    void theShareOfItsRestThatAHoleHasBeforeIt() {
        assertThat(CALENDAR.restLeft(may(3), 0)).isEqualTo(1);
        assertThat(CALENDAR.restLeft(may(3), 1)).isCloseTo(0.75, within(1e-12));
        assertThat(CALENDAR.restLeft(may(3), 2)).isCloseTo(0.25, within(1e-12));
        assertThat(CALENDAR.restLeft(may(3), 3)).isZero();
        assertThat(CALENDAR.restLeft(may(6), 0)).as("before it was left").isEqualTo(1);
    }

    /** Left on the 1st its ground rests to the 4th: the 6th is the second day after it, the 7th the third. */
    @Test
    void howSoonAfterItsForeseenRestADayIs() {
        assertThat(CALENDAR.soonAfterRestUntil(may(1))).isEqualTo(3);
        assertThat(CALENDAR.soonAfterRest(may(1), 1)).as("on its last day").isZero();
        assertThat(CALENDAR.soonAfterRest(may(1), 2)).isCloseTo(2 / 3.0, within(1e-12));
        assertThat(CALENDAR.soonAfterRest(may(1), 3)).isCloseTo(1 / 3.0, within(1e-12));
        assertThat(CALENDAR.soonAfterRest(may(3), 3)).as("the day after it").isEqualTo(1);
        LocalDate april = may(1).minusDays(2);
        assertThat(CALENDAR.soonAfterRest(april, 0)).as("known to have ended").isZero();
        assertThat(CALENDAR.soonAfterRestUntil(april)).isEqualTo(-1);
        PlanCalendar restless = new PlanCalendar(List.of(may(3), may(4), may(6), may(7)), MadeWeeks.rests(0, 2));
        assertThat(restless.soonAfterRest(may(4), 1)).as("there is no rest").isZero();
        assertThat(restless.soonAfterRestUntil(may(4))).isZero();
    }

    @Test
    void eachDayIsAskedAboutOnce() {
        List<LocalDate> asked = new ArrayList<>();
        RestDays rests = new RestDays(
                        left -> {
                            asked.add(left);
                            return left.plusDays(3);
                        },
                        left -> {
                            asked.add(left);
                            return left.plusDays(1);
                        })
                .remembered();
        for (int i = 0; i < 3; i++) {
            assertThat(rests.restsUntil(may(3))).isEqualTo(may(6));
            assertThat(rests.plugShowsUntil(may(4))).isEqualTo(may(5));
        }
        assertThat(asked).containsExactly(may(3), may(4));
    }

    @Test
    void aHoleWasPlayedToUntilTheDayBeforeItWasLeftOrTheOneDayItWasCut() {
        assertThat(past(1, Optional.of(may(3))).lastDay(may(9))).isEqualTo(may(2));
        assertThat(past(1, Optional.of(may(1))).lastDay(may(9))).isEqualTo(may(1));
        assertThat(past(1, Optional.of(may(2))).lastDay(may(9))).isEqualTo(may(1));
        assertThat(past(1, Optional.empty()).lastDay(may(9))).isEqualTo(may(8));
    }

    private static PastHole past(int cut, Optional<LocalDate> left) {
        return new PastHole(new MapPoint(cut, 0), may(cut), left);
    }

    private static GreenWeeks green(Optional<Third> third, PastHole... past) {
        return new GreenWeeks("1", List.of(), List.of(past), third, MadeWeeks.clear(1));
    }

    @Test
    void theLastHoleIsYesterdaysAndInUseUnlessItWasLeft() {
        PastHole older = past(1, Optional.of(may(2)));
        PastHole left = past(2, Optional.of(may(3)));
        PastHole inUse = past(2, Optional.empty());
        assertThat(green(Optional.empty()).inUse()).isEmpty();
        assertThat(green(Optional.empty()).yesterday()).isEmpty();
        assertThat(green(Optional.empty(), older, left).inUse()).isEmpty();
        assertThat(green(Optional.empty(), older, left).yesterday()).contains(left.at());
        assertThat(green(Optional.empty(), older, inUse).inUse()).contains(inUse);
        assertThat(green(Optional.of(Third.FRONT), older, inUse).inUse()).isEmpty();
        assertThat(green(Optional.of(Third.FRONT), older, inUse).yesterday()).isEmpty();
    }

    /** Of seven days the third begins a stay of two, the fifth one of three; the first goes on from before the plan. */
    @Test
    void staysBeginEndAndAreCutAndLeft() {
        PlanCalendar week = new PlanCalendar(MadeWeeks.days(7), MadeWeeks.rests(4, 2));
        LocalDate first = MadeWeeks.FIRST;
        Stays own = new Stays(week, new int[] {0, 0, 2, 2, 4, 4, 4}, Optional.empty());
        assertThat(own.end(0)).isEqualTo(2);
        assertThat(own.end(3)).isEqualTo(4);
        assertThat(own.end(4)).isEqualTo(7);
        assertThat(own.begins(2)).isTrue();
        assertThat(own.begins(3)).isFalse();
        assertThat(own.cut(0)).isTrue();
        assertThat(own.cut(1)).isFalse();
        assertThat(own.cut(4)).isTrue();
        assertThat(own.cutOn(1)).isEqualTo(first);
        assertThat(own.cutOn(5)).isEqualTo(first.plusDays(4));
        assertThat(own.leftOn(0)).isEqualTo(first.plusDays(2));
        assertThat(own.leftOn(5)).isEqualTo(first.plusDays(7));
        assertThat(own.inherited()).isFalse();
        Stays older = new Stays(week, new int[] {0, 0, 2, 2, 4, 4, 4}, Optional.of(first.minusDays(3)));
        assertThat(older.cut(0)).isFalse();
        assertThat(older.cut(2)).isTrue();
        assertThat(older.cutOn(1)).isEqualTo(first.minusDays(3));
        assertThat(older.cutOn(2)).isEqualTo(first.plusDays(2));
        assertThat(older.inherited()).isTrue();
    }
}
