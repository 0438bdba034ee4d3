package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.SharedGreen;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.shortage.Shortage;
import org.cupwright.rotation.shortage.Shortage.Easing;
import org.cupwright.rotation.shortage.Shortage.Step;
import org.junit.jupiter.api.Test;

/** What would help a green that has too little ground, and two holes that are short of it together. */
class EasingsTest {
    private static final long SOME_WORK = 60_000;

    /** So many good spots in rows, six metres apart. */
    private static List<Candidate> rows(int spots) {
        return IntStream.range(0, spots)
                .mapToObj(i -> MadeGreens.good(6 * (i % 4) + 4, 6 * (i / 4) + 4, DifficultyClass.MEDIUM))
                .toList();
    }

    private static List<Shortage> shortages(WeeksRequest request) {
        return new WeeksPlanner(Policy.defaults())
                .plan(request, SOME_WORK, SearchWatch.patient())
                .shortages();
    }

    /** Two spots take turns; so many days after a hole was left its ground is wanted again, and rests three weeks. */
    private static List<Step> steps(int... daysAfter) {
        List<LocalDate> dates = new ArrayList<>(MadeWeeks.days(2));
        for (int days : daysAfter) {
            dates.add(dates.get(dates.size() - 1).plusDays(days));
        }
        List<Candidate> two = rows(2);
        List<GreenDay> days = IntStream.range(0, dates.size())
                .mapToObj(i -> MadeWeeks.only(
                        new GreenDay(GroundOnDay.clear(dates.get(i)), Wishes.none()), two, two.get(i % 2)))
                .toList();
        GreenWeeks green = new GreenWeeks("1", two, List.of(), Optional.empty(), days);
        List<Shortage> shortages =
                shortages(new WeeksRequest(dates, List.of(green), List.of(), MadeWeeks.rests(21, 1), Set.of(), 1));
        assertThat(shortages)
                .singleElement()
                .satisfies(shortage -> assertThat(shortage.planned()).isEqualTo(daysAfter.length));
        return shortages.get(0).steps().stream()
                .filter(step -> step.easing() == Easing.REST_DAYS)
                .toList();
    }

    @Test
    void shorterRestsAreNamedUntilOneIsShortEnough() {
        assertThat(steps(10, 18, 18))
                .containsExactly(new Step(Easing.REST_DAYS, 14, 1), new Step(Easing.REST_DAYS, 7, 0));
        assertThat(steps(16, 18, 18)).containsExactly(new Step(Easing.REST_DAYS, 14, 0));
    }

    /** Ten holes of five days want ten of eight spots, though each of the two would have enough. */
    private static WeeksRequest shared() {
        return new WeeksRequest(
                MadeWeeks.days(5),
                List.of(MadeWeeks.green("9", 5, rows(8)), MadeWeeks.green("18", 5, rows(8))),
                List.of(new SharedGreen("9", "18")),
                MadeWeeks.rests(10, 1),
                Set.of(),
                1);
    }

    @Test
    void twoHolesOnOneGreenAreShortOfItOnce_andWhatWouldHelpEitherAloneDoesNot() {
        List<Shortage> shortages = shortages(shared());
        assertThat(shortages).singleElement().satisfies(shortage -> {
            assertThat(shortage.holes()).containsExactly("9", "18");
            assertThat(shortage.wanted()).isEqualTo(10);
            assertThat(shortage.atLeast()).isEqualTo(2);
            assertThat(shortage.planned()).isEqualTo(2);
            assertThat(shortage.steps()).isEmpty();
        });
    }

    /** Nearer to each other than an old hole may be, the day's two holes do not count as too near. */
    @Test
    void holesOfADayCountAsTooNearOnlyWhereTheCourseKeepsThemSoFarApart() {
        Policy near = Policy.defaults().with(RotationPolicy.SHARED_GREEN_NEVER_NEARER_METRES, 2.7);
        Policy asFar = Policy.defaults().with(RotationPolicy.SHARED_GREEN_NEVER_NEARER_METRES, 2.74);
        assertThat(new WeeksModel(shared(), Policy.defaults()).keepsSharedApart())
                .isTrue();
        assertThat(new WeeksModel(shared(), asFar).keepsSharedApart()).isTrue();
        assertThat(new WeeksModel(shared(), near).keepsSharedApart()).isFalse();
    }
}
