package org.cupwright.holelocation.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Random;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Green;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.MadeSurface;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.IndependentChecker;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

/** Whole greens of invented form against brute force, and properties that hold on every green. */
class GreenJudgeAgainstReferenceIT {
    private static final double SLOPE_ERROR = 0.002;

    private record Made(Green green, MadeSurface truth, DayConditions day, long seed) {
        static Made of(long seed) {
            Random random = new Random(seed);
            double east = 7 + 2 * random.nextDouble();
            double north = 7 + 3 * random.nextDouble();
            Outline outline = Shapes.polygon(
                    -east, -north + 2, -east + 2, -north, east - 1, -north, east, 0, east - 2, north, -east, north - 1);
            Hazard bunker =
                    new Hazard(Hazard.Kind.BUNKER, Shapes.area(east + 1, -3, east + 5, -3, east + 5, 2, east + 1, 2));
            MadeSurface surface = MadeSurface.gentle(seed, 10);
            Hole hole = Hole.of("1", outline).withHazards(List.of(bunker));
            DayConditions day = Days.dry(
                    10,
                    Days.restingHole(8 * random.nextDouble() - 4, 8 * random.nextDouble() - 4, 2),
                    Days.restingHole(8 * random.nextDouble() - 4, 8 * random.nextDouble() - 4, 5),
                    Days.plug(2 * random.nextDouble(), 2 * random.nextDouble()));
            ModelGround ground =
                    ModelGround.exact(surface).withSlopeError(SLOPE_ERROR).withBendError(0.3);
            return new Made(new Green(hole, ground), surface, day, seed);
        }

        GreenJudge judge() {
            return new GreenJudge(green, day, Policy.defaults());
        }

        GreenJudge judgeAt(double speedFeet) {
            DayConditions faster = new DayConditions(new GreenSpeed(speedFeet), false, false, day.ground());
            return new GreenJudge(green, faster, Policy.defaults());
        }

        MapPoint cellInside(double edgeMetres, Random random) {
            while (true) {
                MapPoint spot = cell(random);
                if (green.hole().green().distanceToEdgeMetres(spot) >= edgeMetres) {
                    return spot;
                }
            }
        }

        MapPoint cell(Random random) {
            GreenLattice lattice = GreenLattice.over(green.hole().green(), 0);
            while (true) {
                MapPoint spot = lattice.spot(random.nextInt(lattice.size()));
                if (green.hole().green().contains(spot)) {
                    return spot;
                }
            }
        }
    }

    @Test
    void noRuleIsBrokenInSilenceAndNothingFailsWithoutAReason() {
        int greens = Suite.count("judged greens against brute force", 60, 4);
        int goodSpots = 0;
        int failingSpots = 0;
        for (int i = 0; i < greens; i++) {
            Made made = Made.of(1000 * Suite.seed() + i);
            GreenJudge judge = made.judge();
            IndependentChecker checker = new IndependentChecker(made.green, made.truth, made.day, SLOPE_ERROR);
            Random random = new Random(made.seed);
            for (int k = 0; k < 40; k++) {
                Judgement found = judge.judge(made.cell(random));
                failingSpots += found.verdict() == Verdict.FAIL ? 1 : 0;
                assertThat(checker.brokenInSilence(found))
                        .as("seed %d", made.seed)
                        .isEmpty();
                assertThat(checker.failsWithoutReason(found))
                        .as("seed %d: %s", made.seed, found)
                        .isFalse();
            }
            List<Judgement> good = judge.judgeGreen().candidates();
            goodSpots += good.size();
            for (int k = 0; k < Math.min(40, good.size()); k++) {
                Judgement found = good.get(random.nextInt(good.size()));
                assertThat(checker.brokenInSilence(found))
                        .as("seed %d", made.seed)
                        .isEmpty();
            }
            for (Judgement best : judge.judgeGreen().best()) {
                assertThat(checker.brokenInSilence(best))
                        .as("seed %d", made.seed)
                        .isEmpty();
            }
        }
        // the suite means something only if it met both
        assertThat(goodSpots).isGreaterThan(100);
        assertThat(failingSpots).isGreaterThan(20);
    }

    @Test
    void onePositionIsJudgedAsItsCellOfTheGreen() {
        int greens = Suite.count("positions against their green", 60, 3);
        for (int i = 0; i < greens; i++) {
            Made made = Made.of(2000 * Suite.seed() + i);
            GreenJudge judge = made.judge();
            Random random = new Random(made.seed);
            GreenLattice lattice = judge.judgeGreen().lattice();
            for (int k = 0; k < 60; k++) {
                MapPoint spot = made.cell(random);
                Judgement found = judge.judge(spot);
                assertThat(judge.judgeGreen().findVerdict(lattice.nearest(spot)))
                        .as("seed %d at %s", made.seed, spot)
                        .contains(found.verdict());
                // measured afresh a millionth beside the lattice, it is the same spot
                Judgement beside = judge.judge(new MapPoint(spot.east() + 1e-6, spot.north()));
                assertThat(beside.rule(RuleId.LEVEL).value().orElseThrow())
                        .isCloseTo(found.rule(RuleId.LEVEL).value().orElseThrow(), offset(1e-3));
            }
        }
    }

    /**
     * Away from the edge: uphill of a hole a slower green lets the ball roll farther, so beside the edge it can leave
     * the green where on a faster one it would not. Two metres are twice the longest such leave with the ground about
     * the spot.
     */
    @Test
    void aFasterGreenIsNeverMoreLevelOrEasierToHold() {
        int greens = Suite.count("faster greens", 40, 2);
        for (int i = 0; i < greens; i++) {
            Made made = Made.of(3000 * Suite.seed() + i);
            GreenJudge slow = made.judgeAt(8);
            GreenJudge quick = made.judgeAt(10);
            GreenJudge fast = made.judgeAt(13);
            Random random = new Random(made.seed);
            for (int k = 0; k < 100; k++) {
                MapPoint spot = made.cellInside(2, random);
                for (RuleId rule : List.of(RuleId.LEVEL, RuleId.HOLDABLE)) {
                    Outcome atSlow = slow.judge(spot).rule(rule).outcome();
                    Outcome atQuick = quick.judge(spot).rule(rule).outcome();
                    Outcome atFast = fast.judge(spot).rule(rule).outcome();
                    assertThat(List.of(atSlow, atQuick, atFast))
                            .as("seed %d, %s at %s", made.seed, rule, spot)
                            .isSorted();
                }
            }
        }
    }

    @Test
    void sharesAndCountsAddUp() {
        int greens = Suite.count("sums over greens", 40, 2);
        for (int i = 0; i < greens; i++) {
            Made made = Made.of(4000 * Suite.seed() + i);
            GreenJudgement green = made.judge().judgeGreen();
            GreenJudgement.Shares shares = green.shares();
            assertThat(shares.pass() + shares.caution() + shares.fail() + shares.notSurveyed())
                    .isCloseTo(1, offset(1e-12));
            int cells = 0;
            for (int cell = 0; cell < green.lattice().size(); cell++) {
                cells += green.findVerdict(cell).isPresent() ? 1 : 0;
            }
            // a cell is a sixteenth of a square metre
            assertThat(cells / 16.0).isCloseTo(green.areaSquareMetres(), withPercentage(2));
            for (RuleId rule : RuleId.values()) {
                int counted = 0;
                for (Outcome outcome : Outcome.values()) {
                    counted += green.count(rule, outcome);
                }
                assertThat(counted).as("seed %d, %s", made.seed, rule).isEqualTo(cells);
            }
        }
    }
}
