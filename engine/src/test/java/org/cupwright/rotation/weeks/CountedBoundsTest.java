package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/** Bounds worked out by hand. */
class CountedBoundsTest {
    /** A hole that stays asks for its care on the day it is cut, and lies off the even thirds on every day. */
    @Test
    void whatAHoleCostsIsBoundedOnTheDayItIsCut_whatADayCostsEveryDay() {
        List<Candidate> care = List.of(
                MadeGreens.candidate(15, 5, Verdict.CAUTION, Optional.of(DifficultyClass.MEDIUM), true, 3),
                MadeGreens.candidate(25, 5, Verdict.CAUTION, Optional.of(DifficultyClass.MEDIUM), true, 3));
        List<GreenDay> days = new ArrayList<>();
        for (int day = 0; day < 4; day++) {
            LocalDate date = MadeWeeks.FIRST.plusDays(day);
            days.add(new GreenDay(GroundOnDay.clear(date), Wishes.none(), day % 3 == 0));
        }
        GreenWeeks[] two = IntStream.rangeClosed(1, 2)
                .mapToObj(hole -> new GreenWeeks(Integer.toString(hole), care, List.of(), Optional.empty(), days))
                .toArray(GreenWeeks[]::new);
        WeeksModel model = new WeeksModel(MadeWeeks.request(4, MadeWeeks.rests(1, 1), two), Policy.defaults());
        WeeksBounds bounds = new CountedBounds(model).of(3);
        assertThat(bounds.holesSetAside()).isEqualTo(3);
        assertThat(bounds.terms().get(Term.CARE))
                .as("two greens, cut on days 0 and 3")
                .isEqualTo(4);
        assertThat(bounds.thirdsOff())
                .as("two in front, of which one is too many")
                .isEqualTo(4);
    }
}
