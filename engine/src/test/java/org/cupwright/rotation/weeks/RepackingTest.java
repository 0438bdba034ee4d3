package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** One green planned anew on spots that lie apart, begun with a hole in the same place every day. */
class RepackingTest {
    private static final double REST_METRES = 2.74;

    private final Random random = new Random(Suite.seed());

    /** Without any work after the packing: what is seen is how the green was packed. */
    private static void pack(WeeksModel model, Choices choices, boolean aboutPast) {
        new Repacking(model, choices, new SplittableRandom(Suite.seed())).run(0, aboutPast, 1, 1, 0, () -> true);
    }

    private static WeeksModel model(int rest, GreenWeeks green) {
        return new WeeksModel(
                MadeWeeks.request(green.days().size(), MadeWeeks.rests(rest, 1), green), Policy.defaults());
    }

    /** Every day the hole is at the first spot that the day offers, as dear as can be. */
    private static Choices everyDayTheSame(WeeksModel model) {
        Choices choices = new Choices(model);
        for (int day = 0; day < model.dayCount(); day++) {
            if (model.table(0).open(day)) {
                choices.put(0, day, model.table(0).offered(day)[0]);
            }
        }
        return choices;
    }

    /** All over a green, with more or less room. */
    private List<Candidate> spots(double apart) {
        return MadeWeeks.lattice(apart).stream()
                .map(spot -> MadeGreens.candidate(
                        spot.at().east(), spot.at().north(), Verdict.PASS, spot.rank(), true, 2 * random.nextDouble()))
                .toList();
    }

    private static void assertApart(WeeksModel model, List<Integer> spots) {
        for (int one : spots) {
            for (int other : spots) {
                double metres =
                        model.table(0).at(one).distanceMetres(model.table(0).at(other));
                assertThat(one == other || metres >= REST_METRES).isTrue();
            }
        }
    }

    /** A rest of one day alone would let holes lie anywhere after it. */
    @Test
    void itsHolesLieApart_orInTheSamePlaceAgain() {
        for (int i = 0; i < 5; i++) {
            WeeksModel model = model(1, MadeWeeks.green("1", 12, spots(1.5)));
            Choices choices = everyDayTheSame(model);
            long before = choices.total();
            pack(model, choices, i % 2 == 0);
            assertThat(choices.total()).isLessThan(before);
            assertApart(model, Chosen.spots(choices, model, 0));
        }
    }

    /** Where all spots lie apart any may be chosen: each day in turn the one that costs least with what is there. */
    @Test
    void dayByDayTheCheapestIsTaken() {
        GreenWeeks green = MadeWeeks.green("1", 4, spots(4));
        WeeksRequest request = MadeWeeks.request(4, MadeWeeks.rests(3, 1), green);
        WeeksModel model = new WeeksModel(request, Policy.defaults());
        Choices packed = everyDayTheSame(model);
        pack(model, packed, false);
        Choices slow = new Choices(model);
        for (int day = 0; day < 4; day++) {
            int best = GreenTable.NONE;
            double least = Double.POSITIVE_INFINITY;
            for (int spot : model.table(0).offered(day)) {
                slow.put(0, day, spot);
                double points = Chosen.slow(request, model, slow, 200).points();
                best = points < least ? spot : best;
                least = Math.min(least, points);
            }
            slow.put(0, day, best);
        }
        assertThat(Chosen.slow(request, model, packed, 200).points())
                .isCloseTo(Chosen.slow(request, model, slow, 200).points(), within(0.05));
    }

    @Test
    void whatItLeavesIsNoDearer_andElseAsItWas() {
        int count = Suite.count("greens packed anew", 300, 40);
        int kept = 0;
        for (int i = 0; i < count; i++) {
            WeeksRequest request = MadeWeeks.odd(random, 3, 2, 6);
            WeeksModel model = new WeeksModel(request, Policy.defaults());
            Choices choices = new Choices(model);
            Chosen.fill(choices, model, random);
            new Tempering(
                            model,
                            choices,
                            new SplittableRandom(i),
                            new int[] {0, 1},
                            (green, day) -> model.table(green).offered(day))
                    .run(1, 1, i % 2 * 2000L, () -> true);
            int[][] before = choices.copy();
            double points = Chosen.slow(request, model, choices, 200).points();
            pack(model, choices, random.nextBoolean());
            double packed = Chosen.slow(request, model, choices, 200).points();
            assertThat(packed).as("case %s", i).isLessThan(points + 0.05);
            assertThat(Chosen.spots(choices, model, 1)).containsExactlyElementsOf(listOf(before[1]));
            if (packed > points - 1e-9) {
                assertThat(Chosen.spots(choices, model, 0)).containsExactlyElementsOf(listOf(before[0]));
                kept++;
            }
        }
        assertThat(kept).isBetween(1, count - 1);
    }

    private static List<Integer> listOf(int[] spots) {
        return Arrays.stream(spots).boxed().toList();
    }

    private static Candidate good(double east, double north) {
        return MadeGreens.good(east, north, DifficultyClass.MEDIUM);
    }

    /** Old holes a metre apart, each beside a spot; on the last day nothing else is offered but those two. */
    private static int besideWhich() {
        Candidate newer = doubtful(5, 5);
        Candidate older = good(6, 5);
        List<Candidate> all = List.of(good(25, 5), good(25, 25), good(5, 25), newer, older);
        List<GreenDay> days = new ArrayList<>(MadeWeeks.clear(6));
        days.set(5, MadeWeeks.only(days.get(5), all, newer, older));
        List<PastHole> past = List.of(
                new PastHole(
                        new MapPoint(6.1, 5), MadeWeeks.FIRST.minusDays(2), Optional.of(MadeWeeks.FIRST.minusDays(1))),
                new PastHole(new MapPoint(5.1, 5), MadeWeeks.FIRST.minusDays(1), Optional.empty()));
        WeeksModel model = new WeeksModel(
                MadeWeeks.request(6, MadeWeeks.rests(3, 1), new GreenWeeks("1", all, past, Optional.empty(), days)),
                Policy.defaults());
        Choices choices = everyDayTheSame(model);
        pack(model, choices, true);
        assertApart(model, Chosen.spots(choices, model, 0));
        return choices.chosen(0, 5);
    }

    private static Candidate doubtful(double east, double north) {
        Candidate good = good(east, north);
        return new Candidate(
                MadeGreens.judgement(east, north, Verdict.CAUTION, Optional.of(DifficultyClass.MEDIUM), 4),
                good.place(),
                good.goodWithinMetres(),
                false);
    }

    /** The newest first: the spot beside it is kept, and with it the better one beside the older hole left out. */
    @Test
    void itIsPackedAboutTheHolesThatRest_theNewestFirst() {
        assertThat(besideWhich()).isEqualTo(3);
    }

    @Test
    void easedGroundIsTakenWhereRestedGroundIsShort_andNotElse() {
        assertThat(easedHoles(6)).isZero();
        assertThat(easedHoles(4)).isEqualTo(2);
    }

    /** Of six days with ten days of rest, and two eased spots beside those that keep to the rules. */
    private static long easedHoles(int strict) {
        List<Candidate> all = new ArrayList<>();
        for (int i = 0; i < strict; i++) {
            all.add(good(4 + 7 * (i % 3), 4 + 7 * (i / 3)));
        }
        List<Candidate> eased = List.of(
                MadeGreens.eased(good(4, 26), Set.of(RuleId.HOLLOW)),
                MadeGreens.eased(good(26, 26), Set.of(RuleId.HOLLOW)));
        WeeksModel model = model(10, new GreenWeeks("1", all, eased, List.of(), Optional.empty(), MadeWeeks.clear(6)));
        Choices choices = everyDayTheSame(model);
        pack(model, choices, false);
        return Chosen.spots(choices, model, 0).stream()
                .filter(model.table(0)::eased)
                .count();
    }

    /** Where a hole is fixed it is, and where the green is closed it has none, whatever is packed. */
    @Test
    void fixedHolesAndClosedDaysStayThat() {
        Candidate fixed = good(14.9, 15.1);
        GreenWeeks green = MadeWeeks.green("1", 5, spots(1.5));
        Wishes there = new Wishes(Optional.of(fixed), List.of(), false);
        green = MadeWeeks.with(green, 2, new GreenDay(GroundOnDay.clear(MadeWeeks.FIRST.plusDays(2)), there));
        green = MadeWeeks.with(
                green, 3, new GreenDay(GroundOnDay.clear(MadeWeeks.FIRST.plusDays(3)), Wishes.greenClosed()));
        WeeksModel model = model(3, green);
        Choices choices = everyDayTheSame(model);
        pack(model, choices, false);
        assertThat(model.table(0).at(choices.chosen(0, 2))).isEqualTo(fixed.at());
        assertThat(choices.chosen(0, 3)).isEqualTo(GreenTable.NONE);
        assertThat(choices.chosen(0, 4)).isNotEqualTo(GreenTable.NONE);
    }
}
