package org.cupwright.holelocation.levelround;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Green;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.holelocation.rule.LevelLimits;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/**
 * Rounds over a small invented green near the limit of level ground, against what follows from all its spots looked at
 * one by one and all readings taken in at once.
 */
class OpenRoundTest {
    private static final Policy POLICY = Policy.defaults();
    private static final double READING_ERROR = 0.001;

    private static final Outline OUTLINE = Shapes.rectangle(0.1, 0.1, 4.4, 3.4);

    /** The fit is not what is tested here, so it is made once. */
    private static final SurveyedGround GROUND = fitted();

    private final Green green = new Green(Hole.of("7", OUTLINE), GROUND);
    private final Chances chances = new Chances(LevelLimits.of(Days.dry(10), POLICY));
    private final LevelRounds rounds = new LevelRounds(green, GROUND, Days.dry(10), POLICY);

    /** Rises 2.6 % eastwards with a bend; the rule asks for care from 2.5 % on. */
    private static SurveyedGround fitted() {
        MadeSurface surface = new MadeSurface(0, 0.026, 0, List.of(new MadeSurface.Bump(2, 2, 0.03, 2)), List.of());
        try {
            return SurveyedGround.fit(OUTLINE, new MadeSurvey(surface, -2, -2, 7, 6, 12, 0.012, 4).points(), POLICY);
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException(tooThin);
        }
    }

    /** All spots half a metre apart, from the green's south-west corner of the quarter-metre lattice, (0, 0). */
    private List<OpenSpot> spots() {
        List<OpenSpot> spots = new ArrayList<>();
        for (int row = 0; row <= 7; row++) {
            for (int column = 0; column <= 9; column++) {
                MapPoint at = new MapPoint(0.5 * column, 0.5 * row);
                Optional<PlaneFit> plane = OUTLINE.contains(at) ? GROUND.planeAt(at) : Optional.empty();
                plane.ifPresent(known -> spots.add(OpenSpot.of(at, known, !chances.decided(known))));
            }
        }
        return spots;
    }

    @Test
    void theGroundIsEverySpotOfAHalfMetreLatticeOnTheGreen() {
        OpenGround open = new OpenGround(green, GROUND, chances);
        assertThat(open.spots()).isEqualTo(spots());
        assertThat(open.spots()).hasSize(8 * 6);
        long undecided = spots().stream().filter(OpenSpot::undecided).count();
        assertThat(undecided).isBetween(8L, 47L);
        assertThat(open.undecidedSquareMetres()).isCloseTo(0.25 * undecided, within(1e-12));
        assertThat(rounds.forOpenGround(1).undecidedSquareMetres()).isCloseTo(0.25 * undecided, within(1e-12));
    }

    @Test
    void spotsWithinADistanceAreThose() {
        OpenGround open = new OpenGround(green, GROUND, chances);
        for (MapPoint at :
                List.of(new MapPoint(2, 2), new MapPoint(0.5, 0.5), new MapPoint(9, 2), new MapPoint(4, 3))) {
            List<Integer> near = new ArrayList<>();
            for (int i = 0; i < open.spots().size(); i++) {
                if (open.spot(i).at().distanceMetres(at) <= 1.5) {
                    near.add(i);
                }
            }
            assertThat(open.within(at, 1.5))
                    .as("%s", at)
                    .containsExactly(near.stream().mapToInt(i -> i).toArray());
        }
    }

    @Test
    void theChessboardHasEverySecondSpot() {
        OpenGround open = new OpenGround(green, GROUND, chances);
        for (int i = 0; i < open.spots().size(); i++) {
            MapPoint at = open.spot(i).at();
            boolean white = Math.round(2 * at.east() + 2 * at.north()) % 2 == 0;
            assertThat(open.onChessboard(i)).as("%s", at).isEqualTo(white);
        }
    }

    /** Covariance of the gradients at two spots, the first one's by rows. */
    private double[] covariance(MapPoint one, MapPoint other) {
        return GROUND.readingEffects().at(other).with(one);
    }

    /** What readings at some spots together take off a spot's covariance, all solved at once. */
    private GradientSpread taken(List<OpenSpot> readings, OpenSpot spot) {
        int size = 2 * readings.size();
        RealMatrix between = new Array2DRowRealMatrix(size, size);
        RealMatrix with = new Array2DRowRealMatrix(2, size);
        for (int i = 0; i < readings.size(); i++) {
            OpenSpot one = readings.get(i);
            for (int j = 0; j < readings.size(); j++) {
                GradientSpread own = one.now();
                double[] rows = i == j
                        ? new double[] {own.east2(), own.eastNorth(), own.eastNorth(), own.north2()}
                        : covariance(one.at(), readings.get(j).at());
                put(between, 2 * i, 2 * j, rows);
            }
            for (int k = 0; k < 2; k++) {
                between.addToEntry(2 * i + k, 2 * i + k, READING_ERROR * READING_ERROR);
            }
            boolean reaches = one.at().distanceMetres(spot.at()) <= 3;
            put(with, 0, 2 * i, reaches ? covariance(spot.at(), one.at()) : new double[4]);
        }
        RealMatrix taken = with.multiply(MatrixUtils.inverse(between)).multiply(with.transpose());
        return new GradientSpread(taken.getEntry(0, 0), taken.getEntry(0, 1), taken.getEntry(1, 1));
    }

    private static void put(RealMatrix into, int row, int column, double[] rows) {
        for (int k = 0; k < 4; k++) {
            into.setEntry(row + k / 2, column + k % 2, rows[k]);
        }
    }

    /** Ground that readings at some spots are expected to decide, m². */
    private double expected(List<OpenSpot> readings) {
        double sum = 0;
        GradientSpread nothing = new GradientSpread(0, 0, 0);
        for (OpenSpot spot : spots()) {
            if (spot.undecided()) {
                sum += chances.decided(spot, taken(readings, spot)) - chances.decided(spot, nothing);
            }
        }
        return 0.25 * sum;
    }

    private List<OpenSpot> chosen(LevelRound round) {
        List<MapPoint> places = round.spots().stream().map(RoundSpot::at).toList();
        return spots().stream().filter(spot -> places.contains(spot.at())).toList();
    }

    @Test
    void theFirstReadingIsTheOneThatDecidesMost() {
        LevelRound round = rounds.forOpenGround(1);
        double most = spots().stream()
                .filter(OpenSpot::undecided)
                .filter(spot -> Math.round(2 * spot.at().east() + 2 * spot.at().north()) % 2 == 0)
                .mapToDouble(spot -> expected(List.of(spot)))
                .max()
                .orElseThrow();
        assertThat(round.spots()).hasSize(1);
        assertThat(round.expectedSquareMetres()).isCloseTo(most, within(1e-9));
        assertThat(expected(chosen(round))).isCloseTo(most, within(1e-9));
        assertThat(most).isGreaterThan(0.05);
        assertThat(round.spots().get(0).place()).isEmpty();
        assertThat(round.spots().get(0).candidateOf()).isEmpty();
    }

    @Test
    void laterReadingsCountForWhatTheyAdd() {
        LevelRound two = rounds.forOpenGround(2);
        assertThat(chosen(two)).hasSize(2);
        assertThat(two.expectedSquareMetres()).isCloseTo(expected(chosen(two)), within(1e-6));
        // of all second readings the one that was taken adds most
        List<OpenSpot> first = chosen(rounds.forOpenGround(1));
        double most = spots().stream()
                .filter(spot -> spot.undecided() && !first.contains(spot))
                .filter(spot -> Math.round(2 * spot.at().east() + 2 * spot.at().north()) % 2 == 0)
                .mapToDouble(spot -> expected(List.of(first.get(0), spot)))
                .max()
                .orElseThrow();
        assertThat(two.expectedSquareMetres()).isCloseTo(most, within(1e-6));
    }

    @Test
    void withoutALineOfPlayARoundForThePlanIsOneForTheOpenGround() {
        assertThat(rounds.forPlan(3)).isEqualTo(rounds.forOpenGround(3));
    }

    @Test
    void aRoundHasOneToEightReadings() {
        assertThat(rounds.forOpenGround(8).spots()).hasSizeBetween(3, 8);
        assertThatThrownBy(() -> rounds.forOpenGround(0)).hasMessageContaining("0 readings");
        assertThatThrownBy(() -> rounds.forOpenGround(9)).hasMessageContaining("9 readings");
    }
}
