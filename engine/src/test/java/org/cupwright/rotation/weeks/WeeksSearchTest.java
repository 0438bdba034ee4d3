package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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
import org.junit.jupiter.api.Test;

/** What the search is made of, each on weeks where nothing else of it finds the plan. */
class WeeksSearchTest {
    private static Choices find(WeeksModel model, long mostWork) {
        return new WeeksSearch(model, 1, mostWork, SearchWatch.patient()).find();
    }

    private static WeeksModel lattices(int greens) {
        GreenWeeks[] made = IntStream.range(0, greens)
                .mapToObj(green -> MadeWeeks.green(Integer.toString(green + 1), 3, MadeWeeks.lattice(4)))
                .toArray(GreenWeeks[]::new);
        return new WeeksModel(MadeWeeks.request(3, MadeWeeks.rests(5, 1), made), Policy.defaults());
    }

    @Test
    void theFirstPlanIsMadeWhateverWorkItTakes_andNothingMoreIsPricedThanMayBe() {
        WeeksModel model = lattices(2);
        long firstPlan = find(model, 0).work();
        assertThat(firstPlan).isPositive();
        assertThat(find(model, firstPlan).work()).isEqualTo(firstPlan);
        assertThat(find(model, firstPlan + 1).work()).isGreaterThan(firstPlan);
    }

    @Test
    void withoutGreensThereIsNothingToFind() {
        assertThat(find(lattices(0), 1000).work()).isZero();
    }

    private static final List<Candidate> THREE = List.of(at(15, 5), at(15, 15), at(15, 25));

    private static Candidate at(double east, double north) {
        return MadeGreens.good(east, north, DifficultyClass.MEDIUM);
    }

    private static Candidate care(Candidate good) {
        return MadeGreens.candidate(
                good.at().east(), good.at().north(), Verdict.CAUTION, good.rank(), true, good.goodWithinMetres());
    }

    /** One of three spots, in front, in the middle and at the back, takes care; on the second day it is closed. */
    private static GreenWeeks oneDay(String hole, Candidate... spots) {
        GreenWeeks green = MadeWeeks.green(hole, 2, List.of(spots));
        return MadeWeeks.with(
                green, 1, new GreenDay(GroundOnDay.clear(MadeWeeks.FIRST.plusDays(1)), Wishes.greenClosed()));
    }

    /**
     * The first green's hole of the second day has one spot only, too near to its front one. Known in time, all three
     * greens change places; two of them alone, or one after another, would take dear care or leave thirds uneven.
     */
    @Test
    void aDayIsChosenAnewAsAWhole() {
        Policy policy = Policy.defaults()
                .with(WeeksPolicy.WEIGHT_EVEN_DAYS, 0.0)
                .with(RotationPolicy.WEIGHT_LATERAL, 0.0)
                .with(RotationPolicy.WEIGHT_LEFT_RIGHT, 0.0)
                .with(RotationPolicy.WEIGHT_DIFFICULTY, 0.0)
                .with(RotationPolicy.WEIGHT_CLOSE_TO_YESTERDAY, 20.0)
                .with(RotationPolicy.WEIGHT_CARE, 290.0);
        Candidate front = THREE.get(0);
        Candidate middle = THREE.get(1);
        Candidate back = THREE.get(2);
        Candidate besideFront = at(20.4, 5);
        List<Candidate> ofFirst = List.of(front, middle, care(back), besideFront);
        GreenWeeks first = MadeWeeks.green("1", 2, ofFirst);
        first = MadeWeeks.with(first, 0, MadeWeeks.only(first.days().get(0), ofFirst, front, middle, ofFirst.get(2)));
        first = MadeWeeks.with(first, 1, MadeWeeks.only(first.days().get(1), ofFirst, besideFront));
        // A little dearer than its spot at the back, so that the first day alone is better the other way.
        Candidate littleRoom = MadeGreens.candidate(15, 5, Verdict.PASS, Optional.of(DifficultyClass.MEDIUM), true, 1);
        WeeksModel model = new WeeksModel(
                MadeWeeks.request(
                        2,
                        MadeWeeks.rests(0, 0),
                        first,
                        oneDay("2", care(front), middle, back),
                        oneDay("3", littleRoom, care(middle), back)),
                policy);
        Choices firstPlan = find(model, 0);
        assertThat(ofDay(firstPlan, model)).containsExactly(front, middle, back);
        Choices found = find(model, 20_000);
        assertThat(ofDay(found, model)).containsExactly(middle, back, littleRoom);
    }

    private static List<Candidate> ofDay(Choices choices, WeeksModel model) {
        return IntStream.range(0, model.greenCount())
                .mapToObj(green -> model.table(green).spot(choices.chosen(green, 0)))
                .toList();
    }

    /** A row of seven, of which every other four lie apart; the three between them are better. */
    @Test
    void whereGroundIsShortItIsPackedAnew() {
        List<Candidate> row = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            Candidate good = at(8 + 1.4 * i, 15);
            row.add(
                    i % 2 == 1
                            ? good
                            : new Candidate(
                                    MadeGreens.judgement(
                                            good.at().east(), good.at().north(), Verdict.CAUTION, good.rank(), 4),
                                    good.place(),
                                    good.goodWithinMetres(),
                                    false));
        }
        Policy policy = Policy.defaults()
                .with(RotationPolicy.WEIGHT_NEAR_YESTERDAY, 0.0)
                .with(RotationPolicy.WEIGHT_CLOSE_TO_YESTERDAY, 0.0);
        WeeksModel model =
                new WeeksModel(MadeWeeks.request(4, MadeWeeks.rests(10, 1), MadeWeeks.green("1", 4, row)), policy);
        RestingHoles resting = new RestingHoles(model);
        assertThat(resting.count(find(model, 0), List.of(0))).isEqualTo(1);
        Choices packed = find(model, 10_000);
        assertThat(resting.count(packed, List.of(0))).isZero();
        assertThat(Chosen.spots(packed, model, 0)).containsExactlyInAnyOrder(0, 2, 4, 6);
    }

    @Test
    void onlyGreensWithHolesOnRestingGroundAreShortOfIt() {
        WeeksModel model = lattices(3);
        Choices choices = new Choices(model);
        for (int day = 0; day < 3; day++) {
            choices.put(0, day, day);
            choices.put(1, day, 0);
            choices.put(2, day, 5 * day);
        }
        assertThat(Arrays.stream(choices.greensWithSetAside()).boxed()).containsExactly(1);
    }
}
