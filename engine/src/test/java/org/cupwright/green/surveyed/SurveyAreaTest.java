package org.cupwright.green.surveyed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.cupwright.course.Outline;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.FitSettings;
import org.cupwright.green.spline.SurveySpline.Area;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Which points count for an invented green of six metres by four, and how finely a surface is fitted to them. */
class SurveyAreaTest {
    private static final Outline GREEN = Shapes.rectangle(0, 0, 6, 4);
    private static final Policy POLICY = Policy.defaults();

    private static SurveyPoints at(double... eastNorth) {
        return SurveyPoints.scattered(evens(eastNorth, 0), evens(eastNorth, 1), new double[eastNorth.length / 2]);
    }

    private static double[] evens(double[] from, int first) {
        return IntStream.range(0, from.length / 2)
                .mapToDouble(i -> from[2 * i + first])
                .toArray();
    }

    private static SurveyPoints grid(double cell, double... eastNorth) {
        return SurveyPoints.grid(cell, 0.1, evens(eastNorth, 0), evens(eastNorth, 1), new double[eastNorth.length / 2]);
    }

    /** About a corner the margin is round: 1.5 m each way is 2.1 m off. */
    @Test
    void pointsCountAsFarAsTheMarginReaches() {
        SurveyPoints survey = at(3, 2, -1.9, 1, -2.1, 1, 3, 5.9, 3, 6.1, 7.4, 5.4, 7.5, 5.5);
        SurveyPoints near = SurveyArea.pointsNear(GREEN, survey, 2);
        assertThat(IntStream.range(0, near.count()).mapToDouble(near::east)).containsExactly(3.0, -1.9, 3.0, 7.4);
        assertThat(IntStream.range(0, near.count()).mapToDouble(near::north)).containsExactly(2.0, 1.0, 5.9, 5.4);
    }

    private static SurveyTooThin refused(SurveyPoints points) {
        return catchThrowableOfType(
                SurveyTooThin.class, () -> SurveyArea.check(points, SurveyCoverage.of(points, POLICY), POLICY));
    }

    private static void assertRefused(SurveyPoints points, SurveyTooThin.Reason why, double found, double needed) {
        SurveyTooThin told = refused(points);
        assertThat(told.reason()).isEqualTo(why);
        assertThat(told.points()).isEqualTo(points.count());
        assertThat(told.found()).isCloseTo(found, within(1e-6));
        assertThat(told.needed()).isCloseTo(needed, within(1e-12));
        assertThat(told).hasMessageContaining(why + ": " + points.count() + " points");
    }

    private static final double[] FIVE = {0, 0, 2, 0, 0, 2, 2, 2, 1, 1};
    private static final double[] SIX = {0, 0, 2, 0, 0, 2, 2, 2, 1, 1, 1, 2};

    @Test
    void fewerPointsThanADiscNeedsAreTooFew() {
        assertRefused(at(FIVE), SurveyTooThin.Reason.TOO_FEW_POINTS, 5, 6);
        assertThatCode(() -> SurveyArea.check(at(SIX), SurveyCoverage.of(at(SIX), POLICY), POLICY))
                .doesNotThrowAnyException();
    }

    @Test
    void aGridMayHaveCellsOfAMetreAndNoWider() {
        assertThat(refused(grid(1, SIX))).isNull();
        assertRefused(grid(1.01, SIX), SurveyTooThin.Reason.CELLS_TOO_WIDE, 1.01, 1);
    }

    /** Half of six points a tenth of a metre to each side of a line; a spread of 0.15 of 0.91 m is wanted. */
    @Test
    void pointsHardlyOffALineShowNoPlane() {
        assertRefused(
                at(
                        0, 0.1, 1, -0.1, 2, 0.1, 3, 0.1, 4, -0.1, 5, 0.1, 0, -0.1, 1, 0.1, 2, -0.1, 3, -0.1, 4, 0.1, 5,
                        -0.1),
                SurveyTooThin.Reason.ON_A_LINE,
                0.1,
                0.1365);
        assertThat(refused(at(0, 0.14, 3, 0.14, 5, 0.14, 0, -0.14, 3, -0.14, 5, -0.14)))
                .isNull();
    }

    /** Coordinates of millions of metres leave squares no digits for a tenth of a metre. */
    @Test
    void farFromTheOriginAsWell() {
        double e = 487_000;
        double n = 5_312_000;
        assertRefused(
                at(e, n + 0.1, e, n - 0.1, e + 3, n + 0.1, e + 3, n - 0.1, e + 5, n + 0.1, e + 5, n - 0.1),
                SurveyTooThin.Reason.ON_A_LINE,
                0.1,
                0.1365);
        assertRefused(
                at(e + 0.1, n, e - 0.1, n, e + 0.1, n + 3, e - 0.1, n + 3, e + 0.1, n + 5, e - 0.1, n + 5),
                SurveyTooThin.Reason.ON_A_LINE,
                0.1,
                0.1365);
    }

    private static void assertArea(Area area, double west, double south, double east, double north) {
        assertThat(area.west()).isCloseTo(west, within(1e-12));
        assertThat(area.south()).isCloseTo(south, within(1e-12));
        assertThat(area.east()).isCloseTo(east, within(1e-12));
        assertThat(area.north()).isCloseTo(north, within(1e-12));
    }

    /** A disc of 0.91 m and 0.5 m more beyond the outline, and no further than 0.5 m more than that from the points. */
    @Test
    void theSurfaceReachesOverTheOutlineAndNotFarFromThePoints() {
        assertArea(SurveyArea.rectangle(GREEN, at(0, 0, 6, 4)), -1.41, -1.41, 7.41, 5.41);
        assertArea(SurveyArea.rectangle(GREEN, at(-0.5, 0.5, 6.5, 3.5)), -1.41, -1.41, 7.41, 5.41);
        assertArea(SurveyArea.rectangle(GREEN, at(-2, -1.5, 8, 6)), -2, -1.5, 8, 6);
        assertArea(SurveyArea.rectangle(GREEN, at(2, 1, 4, 3)), 0.09, -0.91, 5.91, 4.91);
    }

    /** So many points in each of six squares of a metre, some of them south and west of the origin. */
    private static SurveyPoints dense(int aSquare) {
        double[] eastNorth = new double[12 * aSquare];
        for (int i = 0; i < 6 * aSquare; i++) {
            eastNorth[2 * i] = -0.9 + i % 3 + 0.8 * (i / 6) / aSquare;
            eastNorth[2 * i + 1] = -0.9 + i / 3 % 2;
        }
        return at(eastNorth);
    }

    private static double spacing(SurveyPoints points, double least) {
        return SurveyArea.settings(points, new Area(0, 0, 8, 6), POLICY.with(GroundPolicy.KNOT_SPACING_METRES, least))
                .knotSpacingMetres();
    }

    /** Three quarters of a point for a cell: with 12 a square metre cells of √(0.75 / 12) = 0.25 m bear them. */
    @Test
    void knotsAreAsFarApartAsThePointsBearInQuartersOfAMetre() {
        assertThat(spacing(dense(12), 0.25)).isCloseTo(0.25, within(1e-12));
        assertThat(spacing(dense(11), 0.25)).isCloseTo(0.5, within(1e-12));
        assertThat(spacing(dense(3), 0.25)).isCloseTo(0.5, within(1e-12));
        assertThat(spacing(dense(2), 0.25)).isCloseTo(0.75, within(1e-12));
        assertThat(spacing(dense(1), 0.25)).as("√0.75 = 0.87").isCloseTo(1, within(1e-12));
        assertThat(spacing(at(0, 0), 0.25)).isCloseTo(1, within(1e-12));
        assertThat(spacing(dense(12), 0.5)).as("no nearer than is wanted").isCloseTo(0.5, within(1e-12));
    }

    /** Four and sixteen nodes a square metre; the number of nodes is not counted. */
    @Test
    void aGridHasAsManyPointsAsItsCellSays() {
        assertThat(spacing(grid(0.5, 0, 0), 0.25)).as("√(0.75 / 4) = 0.43").isCloseTo(0.5, within(1e-12));
        assertThat(spacing(grid(0.25, 0, 0), 0.25)).as("√(0.75 / 16) = 0.22").isCloseTo(0.25, within(1e-12));
        assertThat(spacing(grid(1, 0, 0), 0.25)).isCloseTo(1, within(1e-12));
    }

    /** Sixty by sixty metres are 12,000 cells of 0.55 m; with the step at most a quarter more. */
    @Test
    void onVeryLargeGreensKnotsAreFurtherApart() {
        FitSettings wide = SurveyArea.settings(dense(12), new Area(10, 20, 70, 80), POLICY);
        assertThat(wide.knotSpacingMetres()).isCloseTo(0.75, within(1e-12));
        assertThat(wide.stepSpacingMetres()).isCloseTo(0.75, within(1e-12));
        FitSettings huge = SurveyArea.settings(dense(1), new Area(10, 20, 160, 120), POLICY);
        assertThat(huge.knotSpacingMetres()).as("√(15,000 / 12,000) = 1.12").isCloseTo(1.25, within(1e-12));
        FitSettings usual = SurveyArea.settings(dense(1), new Area(10, 20, 40, 50), POLICY);
        assertThat(usual.knotSpacingMetres()).isCloseTo(1, within(1e-12));
        assertThat(usual.stepSpacingMetres()).as("as fine as is wanted").isCloseTo(0.5, within(1e-12));
        assertThat(usual.penaltyDivisor()).isEqualTo(3);
        assertThat(usual.blunderLimit()).isEqualTo(4);
    }
}
