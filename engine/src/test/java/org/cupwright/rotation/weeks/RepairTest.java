package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.weeks.Repair.Cell;
import org.junit.jupiter.api.Test;

/** One green whose holes are in each other's way: two of them have to move, or neither. */
class RepairTest {
    private static final Candidate FRONT = good(5, 5);
    private static final Candidate BY_FRONT = good(6, 5);
    private static final Candidate BACK = good(20, 20);
    private static final Candidate BY_BACK = good(21, 20);
    private static final Candidate LEFT = good(5, 25);
    private static final List<Candidate> ALL = List.of(FRONT, BY_FRONT, BACK, BY_BACK, LEFT);

    private static Candidate good(double east, double north) {
        return MadeGreens.good(east, north, DifficultyClass.MEDIUM);
    }

    /** Ten days of rest; a hole stands on every day. */
    private static WeeksModel model(List<GreenDay> days, Candidate... stands) {
        GreenWeeks green = new GreenWeeks("1", ALL, List.of(), Optional.empty(), days);
        WeeksRequest request = MadeWeeks.request(days.size(), MadeWeeks.rests(10, 1), green);
        List<Optional<Stand>> stood = new ArrayList<>();
        for (Candidate stand : stands) {
            stood.add(Optional.of(new Stand(stand, false)));
        }
        ChangeRequest asked = new ChangeRequest(request, Map.of("1", stood));
        return new WeeksModel(request, Policy.defaults(), Standing.of(asked, new boolean[] {true}));
    }

    private static GreenDay clear(int day) {
        return MadeWeeks.clear(day + 1).get(day);
    }

    private static GreenDay only(int day, Candidate... may) {
        return MadeWeeks.only(clear(day), ALL, may);
    }

    private static List<Candidate> mended(WeeksModel model, Choices choices, boolean goesOn) {
        List<Cell> cells = IntStream.range(0, model.dayCount())
                .mapToObj(day -> new Cell(0, day))
                .toList();
        new Repair(model, choices, cells, () -> goesOn).run();
        return Chosen.spots(choices, model, 0).stream()
                .map(spot -> spot == GreenTable.NONE ? null : model.table(0).spot(spot))
                .toList();
    }

    /** Each lies near to where the other stood: one alone cannot go back. */
    @Test
    void twoThatKeepEachOtherFromWhereTheyStoodGoBackTogether() {
        WeeksModel model = model(List.of(clear(0), clear(1)), FRONT, BY_BACK);
        Choices choices = new Choices(model);
        choices.put(0, 0, model.table(0).numberOf(BACK.at()));
        choices.put(0, 1, model.table(0).numberOf(BY_FRONT.at()));
        assertThat(mended(model, choices, true)).containsExactly(FRONT, BY_BACK);
    }

    private static WeeksModel inTrouble() {
        Wishes front = new Wishes(Optional.of(FRONT), List.of(), false);
        GreenDay fixed = new GreenDay(GroundOnDay.clear(MadeWeeks.FIRST), front);
        return model(List.of(fixed, only(1, BY_FRONT, BACK), only(2, BY_BACK, LEFT)), FRONT, BY_FRONT, BY_BACK);
    }

    /** The hole of the second day stands by a fixed one; where else it may be, it is by the third day's. */
    @Test
    void aHoleGoesWhereAnotherMakesWayForIt() {
        WeeksModel model = inTrouble();
        assertThat(mended(model, Repair.standing(model), true)).containsExactly(FRONT, BACK, LEFT);
    }

    @Test
    void whoeverStopsItLeavesHolesThatMayStayWhereTheyStand_andEveryHoleIsSomewhere() {
        WeeksModel model = inTrouble();
        assertThat(mended(model, Repair.standing(model), false)).containsExactly(FRONT, BY_FRONT, BY_BACK);
        WeeksModel open = model(List.of(only(0, BACK, LEFT), only(1, BACK, LEFT)), FRONT, FRONT);
        assertThat(mended(open, Repair.standing(open), false)).doesNotContainNull();
    }
}
