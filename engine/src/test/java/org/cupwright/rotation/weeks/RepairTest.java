package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.weeks.Repair.Cell;
import org.junit.jupiter.api.Test;

/** Holes that are in each other's way: two or three of them have to move, or none. */
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

    private static final Candidate MOVED_FROM = good(5, 15);

    /** In front, in the middle and at the back a spot; one has less room, one takes dear care. */
    private static GreenWeeks ofThree(int hole, int littleRoom, int care) {
        List<Candidate> spots = new ArrayList<>();
        for (int third = 0; third < 3; third++) {
            Verdict verdict = third == care ? Verdict.CAUTION : Verdict.PASS;
            double room = third == littleRoom ? 1 : 3;
            spots.add(
                    MadeGreens.candidate(15, 5 + 10 * third, verdict, Optional.of(DifficultyClass.MEDIUM), true, room));
        }
        GreenWeeks green = MadeWeeks.green(Integer.toString(hole), 1, spots);
        Wishes off = new Wishes(Optional.empty(), List.of(new Wishes.Circle(MOVED_FROM.at(), 1)), false);
        return MadeWeeks.with(green, 0, new GreenDay(GroundOnDay.clear(MadeWeeks.FIRST), off));
    }

    /** Each would have more room a third further back; one alone, or two, would lie unevenly or take care. */
    @Test
    void holesOfADayThatAreMovedAnywayAreChosenTogether() {
        WeeksRequest request =
                MadeWeeks.request(1, MadeWeeks.rests(10, 1), ofThree(1, 0, 2), ofThree(2, 1, 0), ofThree(3, 2, 1));
        List<Optional<Stand>> stood = List.of(Optional.of(new Stand(MOVED_FROM, false)));
        ChangeRequest asked = new ChangeRequest(request, Map.of("1", stood, "2", stood, "3", stood));
        WeeksModel model = new WeeksModel(
                request,
                Policy.defaults().with(RotationPolicy.WEIGHT_CARE, 250.0),
                Standing.of(asked, new boolean[] {true, true, true}));
        Choices choices = new Choices(model);
        List<Cell> cells = new ArrayList<>();
        for (int green = 0; green < 3; green++) {
            choices.put(green, 0, green);
            cells.add(new Cell(green, 0));
        }
        new Repair(model, choices, cells, () -> true).run();
        assertThat(IntStream.range(0, 3).map(green -> choices.chosen(green, 0)).boxed())
                .containsExactly(1, 2, 0);
    }
}
