package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Holes changed at random, as hot and as cold as it gets. */
class TemperingTest {
    /** In thousandths of a point: nothing dearer is ever taken. */
    private static final double FROZEN = 1e-3;

    /** More than any hole costs. */
    private static final double MELTING = 1e7;

    private static final long SOME_WORK = 20_000;

    private static Tempering tempering(WeeksModel model, Choices choices, Tempering.Offer offer, int... greens) {
        return new Tempering(model, choices, new SplittableRandom(Suite.seed()), greens, offer);
    }

    private static Tempering.Offer all(WeeksModel model) {
        return (green, day) -> model.table(green).offered(day);
    }

    @Test
    void withNextToNoHeatItEndsWhereNoHoleOfAGreenIsCheaperElsewhere() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("frozen greens", 300, 30);
        for (int i = 0; i < count; i++) {
            WeeksRequest request = MadeWeeks.odd(random, 3, 1, 8);
            WeeksModel model = new WeeksModel(request, Policy.defaults());
            Choices choices = new Choices(model);
            Chosen.fill(choices, model, random);
            double before = Chosen.slow(request, model, choices, 200).points();
            tempering(model, choices, all(model), 0).run(FROZEN, FROZEN, SOME_WORK, () -> true);
            double after = Chosen.slow(request, model, choices, 200).points();
            assertThat(after).as("case %s", i).isLessThan(before + 0.05);
            for (int day = 0; day < 3; day++) {
                for (int spot : model.table(0).offered(day)) {
                    int back = choices.chosen(0, day);
                    choices.put(0, day, spot);
                    assertThat(Chosen.slow(request, model, choices, 200).points())
                            .as("case %s", i)
                            .isGreaterThan(after - 0.05);
                    choices.put(0, day, back);
                }
            }
        }
    }

    /** What the plan costs whenever a move is drawn. */
    private record Watched(List<Long> work, List<Long> total) {
        Watched() {
            this(new ArrayList<>(), new ArrayList<>());
        }

        int[] offered(WeeksModel model, Choices choices, int green, int day) {
            work.add(choices.work());
            total.add(choices.total());
            return model.table(green).offered(day);
        }

        /** How often a dearer plan was taken, of the work from a share of all of it to another. */
        long dearer(double from, double to) {
            long first = work.get(0);
            double all = (double) work.get(work.size() - 1) - first;
            long dearer = 0;
            for (int i = 1; i < total.size(); i++) {
                double share = (work.get(i) - first) / all;
                dearer += share >= from && share <= to && total.get(i) > total.get(i - 1) ? 1 : 0;
            }
            return dearer;
        }
    }

    private static WeeksModel threeGreens() {
        return new WeeksModel(MadeWeeks.unshared(MadeWeeks.odd(new Random(3), 4, 3, 8)), Policy.defaults());
    }

    @Test
    void howeverHotItIsTheBestPlanItCameByIsLeft() {
        WeeksModel model = threeGreens();
        Choices choices = new Choices(model);
        Chosen.fill(choices, model, new Random(Suite.seed()));
        Watched watched = new Watched();
        tempering(model, choices, (green, day) -> watched.offered(model, choices, green, day), 0, 1, 2)
                .run(MELTING, MELTING, SOME_WORK, () -> true);
        long best = watched.total().stream().mapToLong(total -> total).min().orElseThrow();
        assertThat(best).isLessThan(watched.total().get(0));
        assertThat(choices.total()).isLessThanOrEqualTo(best);
    }

    /** Whatever was worked before. */
    @Test
    void dearerPlansAreTakenOftenAtFirstAndHardlyEverInTheEnd() {
        WeeksModel model = threeGreens();
        Choices choices = new Choices(model);
        Chosen.fill(choices, model, new Random(Suite.seed()));
        tempering(model, choices, all(model), 0, 1, 2).run(FROZEN, FROZEN, SOME_WORK, () -> true);
        Watched watched = new Watched();
        tempering(model, choices, (green, day) -> watched.offered(model, choices, green, day), 0, 1, 2)
                .run(MELTING, FROZEN, SOME_WORK, () -> true);
        assertThat(watched.dearer(0, 0.2)).isGreaterThan(50);
        assertThat(watched.dearer(0.8, 1)).isZero();
    }

    /** In front and in the middle one hole each; the second green is as good on either, the first is not. */
    private static WeeksModel twoGreens() {
        Candidate front = MadeGreens.good(15, 5, DifficultyClass.MEDIUM);
        Candidate middle = MadeGreens.good(15, 15, DifficultyClass.MEDIUM);
        Candidate care = MadeGreens.candidate(15, 5, Verdict.CAUTION, Optional.of(DifficultyClass.MEDIUM), true, 3);
        return new WeeksModel(
                MadeWeeks.request(
                        1,
                        MadeWeeks.rests(1, 1),
                        MadeWeeks.green("1", 1, List.of(care, middle)),
                        MadeWeeks.green("2", 1, List.of(front, middle))),
                Policy.defaults());
    }

    /** The first in front, the second in the middle: to move either alone leaves thirds uneven. */
    private static Choices uneven(WeeksModel model) {
        Choices choices = new Choices(model);
        choices.put(0, 0, 0);
        choices.put(1, 0, 1);
        return choices;
    }

    @Test
    void twoGreensChangePlacesWhereEitherAloneWouldBeDearer() {
        WeeksModel model = twoGreens();
        Choices choices = uneven(model);
        long before = choices.total();
        assertThat(choices.change(0, 0, 1)).isPositive();
        assertThat(choices.change(1, 0, 0)).isPositive();
        tempering(model, choices, all(model), 0).run(FROZEN, FROZEN, SOME_WORK, () -> true);
        assertThat(choices.chosen(0, 0)).isEqualTo(1);
        assertThat(choices.chosen(1, 0)).isZero();
        assertThat(choices.total()).isEqualTo(before - 45_000);
    }

    @Test
    void aGreenThatOffersNothingStaysAsItIs() {
        WeeksModel model = twoGreens();
        for (int none = 0; none < 2; none++) {
            int closed = none;
            Choices choices = uneven(model);
            tempering(
                            model,
                            choices,
                            (green, day) ->
                                    green == closed ? new int[0] : all(model).spots(green, day),
                            0,
                            1)
                    .run(MELTING, FROZEN, SOME_WORK, () -> true);
            assertThat(choices.chosen(closed, 0)).isEqualTo(closed);
        }
    }

    @Test
    void whereItMayNotWorkNothingIsPriced() {
        WeeksModel model = twoGreens();
        Choices choices = uneven(model);
        long before = choices.work();
        tempering(model, choices, all(model), 0, 1).run(MELTING, FROZEN, 0, () -> true);
        tempering(model, choices, all(model), 0, 1).run(MELTING, FROZEN, SOME_WORK, () -> false);
        assertThat(choices.work()).isEqualTo(before);
    }

    /** An exchange asks for the spots of two greens: of three moves one. Alone on its course a green has nobody. */
    @Test
    void everyThirdMoveIsAnExchange() {
        WeeksModel model = new WeeksModel(
                MadeWeeks.request(1, MadeWeeks.rests(1, 1), MadeWeeks.green("1", 1, MadeWeeks.lattice(4))),
                Policy.defaults());
        Choices choices = new Choices(model);
        choices.put(0, 0, 0);
        AtomicInteger heats = new AtomicInteger();
        AtomicInteger offers = new AtomicInteger();
        Tempering.Offer counted = (green, day) -> {
            offers.incrementAndGet();
            return model.table(green).offered(day);
        };
        tempering(model, choices, counted, 0).run(MELTING, MELTING, Long.MAX_VALUE, () -> heats.incrementAndGet() <= 8);
        double moves = 8 * 256.0;
        assertThat(offers.get() / moves - 1).isBetween(0.29, 0.38);
    }
}
