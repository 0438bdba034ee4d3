package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/**
 * What lies on a green day by day, worked out by hand: ground rests five days from the day a hole is left, plugs show
 * two.
 */
class PlannedGroundTest {
    private static final Candidate FIRST_STAY = MadeGreens.good(5, 5, DifficultyClass.MEDIUM);
    private static final Candidate SECOND_STAY = MadeGreens.good(25, 25, DifficultyClass.MEDIUM);
    private static final MapPoint LEFT_BEFORE = new MapPoint(5, 25);
    private static final MapPoint IN_USE = new MapPoint(25, 5);

    private static LocalDate day(int number) {
        return MadeWeeks.FIRST.plusDays(number);
    }

    private static GroundItem hole(MapPoint at, int lastDay, int restsUntil) {
        return new GroundItem(Kind.OLD_HOLE, at.toPoint(), Optional.of(day(lastDay)), Optional.of(day(restsUntil)));
    }

    private static GroundItem leftToday(MapPoint at, int lastDay) {
        return new GroundItem(Kind.OLD_HOLE, at.toPoint(), Optional.of(day(lastDay)), Optional.empty());
    }

    private static GroundItem plug(MapPoint at, int set) {
        return new GroundItem(Kind.PLUG, at.toPoint(), Optional.of(day(set)), Optional.of(day(set + 1)));
    }

    /** Changed on the first and on the third of four days. */
    private static PlannedGround planned() {
        List<GreenDay> days = new ArrayList<>();
        for (int day = 0; day < 4; day++) {
            days.add(new GreenDay(GroundOnDay.clear(day(day)), Wishes.none(), day % 2 == 0));
        }
        List<PastHole> past = List.of(
                new PastHole(LEFT_BEFORE, day(-4), Optional.of(day(-2))),
                new PastHole(IN_USE, day(-2), Optional.empty()));
        GreenWeeks green = new GreenWeeks("1", List.of(FIRST_STAY, SECOND_STAY), past, Optional.empty(), days);
        RestDays rests = MadeWeeks.rests(5, 2);
        WeeksModel model = new WeeksModel(MadeWeeks.request(4, rests, green), Policy.defaults());
        Choices choices = new Choices(model);
        choices.put(0, 0, 0);
        choices.put(0, 2, 1);
        return new PlannedGround(model, rests, choices);
    }

    @Test
    void theHoleInUseIsLeftOnTheFirstDay() {
        assertThat(planned().on(0, 0).items())
                .containsExactlyInAnyOrder(hole(LEFT_BEFORE, -3, 2), leftToday(IN_USE, -1));
    }

    /** A hole that stays is none of the old ones; plugs of holes left before the plan lie on its ground anyway. */
    @Test
    void aHoleThatStaysIsNotAmongTheOldOnes() {
        assertThat(planned().on(0, 1).items())
                .containsExactlyInAnyOrder(hole(LEFT_BEFORE, -3, 2), hole(IN_USE, -1, 4), plug(IN_USE, 0));
    }

    @Test
    void aHoleThatIsLeftTodayHasNoPlugYet_andOneTomorrow() {
        assertThat(planned().on(0, 2).items())
                .containsExactlyInAnyOrder(
                        hole(LEFT_BEFORE, -3, 2), hole(IN_USE, -1, 4), plug(IN_USE, 0), leftToday(FIRST_STAY.at(), 1));
        assertThat(planned().on(0, 3).items())
                .containsExactlyInAnyOrder(
                        hole(LEFT_BEFORE, -3, 2),
                        hole(IN_USE, -1, 4),
                        plug(IN_USE, 0),
                        hole(FIRST_STAY.at(), 1, 6),
                        plug(FIRST_STAY.at(), 2));
    }
}
