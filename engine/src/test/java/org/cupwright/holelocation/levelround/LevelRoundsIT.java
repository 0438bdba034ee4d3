package org.cupwright.holelocation.levelround;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.Third;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/**
 * Level rounds on invented greens with surveys like airborne ones (25 mm, 8 points/m²) on which 10 to 50 % of the
 * ground is undecided. Limits are our own choice.
 *
 * <p>Decided, for every way of choosing the spots: the rule of level ground has an answer at a spot of the
 * quarter-metre lattice, by itself, that holds over two standard errors; newly decided: it had none before the
 * readings.
 */
class LevelRoundsIT {
    private static final int SPOTS = 6;

    /** Greens of the kind, drawn until there are so many. */
    private static List<MadeRound> greens(long seed, int count) {
        SplittableRandom seeds = new SplittableRandom(seed);
        List<MadeRound> greens = new ArrayList<>();
        while (greens.size() < count) {
            long[] more = seeds.longs(4).toArray();
            List<MadeRound> drawn = IntStream.range(0, more.length)
                    .parallel()
                    .mapToObj(i -> new MadeRound(more[i]))
                    .toList();
            drawn.stream()
                    .filter(green -> green.undecidedShare() >= 0.1 && green.undecidedShare() <= 0.5)
                    .limit(count - greens.size())
                    .forEach(greens::add);
        }
        return greens;
    }

    private static List<MapPoint> places(LevelRound round) {
        return round.spots().stream().map(RoundSpot::at).toList();
    }

    @Test
    void sixReadingsDecideMoreThanSixOnAGridAndThanTheGridMovedToUndecidedGround() {
        int count = Suite.count("level rounds", 100, 6);
        double[] sums = new double[4];
        for (MadeRound green : greens(3000 + Suite.seed(), count)) {
            LevelRound round = green.open(SPOTS);
            List<MapPoint> grid = green.regularGrid(SPOTS);
            sums[0] += green.newlyDecidedSquareMetres(green.read(places(round)));
            sums[1] += green.newlyDecidedSquareMetres(green.read(grid));
            sums[2] += green.newlyDecidedSquareMetres(green.read(green.moved(grid)));
            sums[3] += round.expectedSquareMetres();
        }
        String label = String.format(
                Locale.ROOT,
                "newly decided by six readings, m²: ours %.2f (expected %.2f), grid %.2f, moved grid %.2f; seed %d",
                sums[0] / count,
                sums[3] / count,
                sums[1] / count,
                sums[2] / count,
                Suite.seed());
        System.out.println(label);
        assertThat(sums[0] / sums[1]).as(label).isGreaterThanOrEqualTo(2.0);
        assertThat(sums[0] / sums[2]).as(label).isGreaterThanOrEqualTo(1.3);
        assertThat(sums[3] / sums[0]).as(label).isBetween(0.7, 1.4);
    }

    /**
     * On four greens in five every third that truly has a good position has one that is known to be level afterwards.
     */
    @Test
    void aRoundForThePlanDecidesAGoodPositionInEachThird() {
        int count = Suite.count("level rounds for a plan", 100, 6);
        int served = 0;
        int inNeed = 0;
        int helped = 0;
        for (MadeRound green : greens(4000 + Suite.seed(), count)) {
            Set<Third> good = green.thirdsWithGood();
            boolean known =
                    green.thirdsKnown(green.read(places(green.plan(SPOTS)))).containsAll(good);
            boolean knownBefore = green.thirdsKnown(green.survey).containsAll(good);
            served += known ? 1 : 0;
            inNeed += knownBefore ? 0 : 1;
            helped += known && !knownBefore ? 1 : 0;
        }
        String label = served + " of " + count + " greens; of " + inNeed + " in need of it " + helped + "; seed "
                + Suite.seed();
        System.out.println("a good position known in each third that has one: " + label);
        assertThat(served).as(label).isGreaterThanOrEqualTo((int) Math.ceil(0.8 * count));
    }

    /** What a reading is said to take off another spot's covariance is what it does take off once it is in. */
    @Test
    void effectsOfAReadingAreThoseItHas() {
        MadeRound green = greens(11, 1).get(0);
        MapPoint place = green.open(1).spots().get(0).at();
        MapPoint beside = new MapPoint(place.east() + 0.5, place.north() - 0.25);
        PlaneFit own = green.survey.planeAt(place).orElseThrow();
        GradientSpread inverse = new GradientSpread(own.varianceEast(), own.covariance(), own.varianceNorth())
                .plus(new GradientSpread(1e-6, 0, 1e-6))
                .inverse();
        GradientSpread taken =
                Tie.of(green.survey.readingEffects().at(place).with(beside)).taken(inverse);
        PlaneFit before = green.survey.planeAt(beside).orElseThrow();
        SurveyedGround after = green.read(List.of(place));

        // a twentieth: covariances between the fit's nodes are interpolated
        double less =
                before.varianceEast() - after.planeAt(beside).orElseThrow().varianceEast();
        assertThat(taken.east2()).as("%s", green).isCloseTo(less, within(0.05 * before.varianceEast()));
    }

    @Test
    void aRoundIsAWalkOfDifferentSpotsThatBeginsInFront() {
        MadeRound green = greens(5, 1).get(0);
        LevelRound round = green.open(8);

        assertThat(round.spots()).hasSize(8);
        assertThat(round.spots()).allSatisfy(spot -> {
            assertThat(spot.place()).isPresent();
            assertThat(green.green.hole().green().contains(spot.at())).isTrue();
            assertThat(green.decided(green.survey, spot.at())).isFalse();
        });
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j < i; j++) {
                assertThat(places(round).get(i).distanceMetres(places(round).get(j)))
                        .isGreaterThanOrEqualTo(0.5);
            }
        }
        assertThat(round.expectedShare()).isBetween(0.01, 1.0);
        assertThatThrownBy(() -> green.open(9)).hasMessageContaining("9 readings");
    }
}
