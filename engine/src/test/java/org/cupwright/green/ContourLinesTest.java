package org.cupwright.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.Outline;
import org.cupwright.green.ContourLines.Contour;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;

class ContourLinesTest {
    private static final Envelope SQUARE = new Envelope(-10, 10, -10, 10);

    private static LineString only(MultiLineString lines) {
        assertThat(lines.getNumGeometries()).isEqualTo(1);
        return (LineString) lines.getGeometryN(0);
    }

    @Test
    void aBowlHasRoundContours() {
        // z = r²/200: the line at 0.18 m is the circle of 6 m. Stated accuracy cell²·|f''|/(8·|∇f|): f'' = 0.01, |∇f| =
        // 0.06,
        // cell 0.25 m: 0.0013 m
        ScalarGrid bowl = ScalarGrid.sampled(SQUARE, 0.25, (x, y) -> (x * x + y * y) / 200);
        LineString line = only(ContourLines.at(0.18, bowl));
        assertThat(line.isClosed()).isTrue();
        assertThat(line.isSimple()).isTrue();
        for (Coordinate corner : line.getCoordinates()) {
            assertThat(Math.hypot(corner.x, corner.y)).isCloseTo(6, within(0.0014));
        }
        assertThat(line.getLength()).isCloseTo(2 * Math.PI * 6, within(0.02));
    }

    @Test
    void aPlaneHasStraightContoursEveryStep() {
        // 2 % up to the east over −10.25…10.25: multiples of 0.05 from −0.20 to 0.20, at 2.5 m apart
        ScalarGrid plane = ScalarGrid.heights(MadeSurface.plane(0.02, 0), SQUARE, 0.25);
        List<Contour> contours = ContourLines.every(ContourLines.HEIGHT_STEP_METRES, plane);
        assertThat(contours).hasSize(9);
        for (Contour contour : contours) {
            LineString line = only(contour.lines());
            for (Coordinate corner : line.getCoordinates()) {
                assertThat(corner.x).isCloseTo(contour.level() / 0.02, within(1e-9));
            }
            assertThat(line.getLength()).isCloseTo(20.5, within(1e-9));
        }
        assertThat(contours.get(0).level()).isCloseTo(-0.20, within(1e-12));
    }

    @Test
    void linesAreCutAtTheOutline() {
        // the circle of 6 m cut by the half plane east of 0: half of it, in one piece
        ScalarGrid bowl = ScalarGrid.sampled(SQUARE, 0.25, (x, y) -> (x * x + y * y) / 200);
        Outline half = Shapes.rectangle(0, -10, 10, 10);
        MultiLineString inside = ContourLines.clipped(ContourLines.at(0.18, bowl), half);
        assertThat(only(inside).getLength()).isCloseTo(Math.PI * 6, within(0.02));
        assertThat(inside.getEnvelopeInternal().getMinX()).isCloseTo(0, within(1e-9));
        assertThat(ContourLines.every(0.05, bowl, Shapes.rectangle(0, 0, 1, 1))).isEmpty();
    }

    @Test
    void theSlopeOfABowlHasRoundLinesToo() {
        // slope of z = r²/200 is r/100: 4 % at 4 m. The slope field is a cone, |f''| across = 1/(100·4), |∇f| = 0.01:
        // 0.002 m
        ScalarGrid slope = ScalarGrid.sampled(SQUARE, 0.25, (x, y) -> Math.hypot(x, y) / 100);
        for (Coordinate corner : only(ContourLines.at(0.04, slope)).getCoordinates()) {
            assertThat(Math.hypot(corner.x, corner.y)).isCloseTo(4, within(0.002));
        }
    }

    @Test
    void theCentreDecidesAtASaddle() {
        // corners 1 0 / 0 1: at 0.4 the centre (0.5) is above, so the two low corners are cut off, each for itself;
        // at 0.6 it is below, so the two high corners are
        ScalarGrid saddle = new ScalarGrid(0, 0, 1, 2, 2, new double[] {1, 0, 0, 1});
        // low corner (1, 0): from (0.6, 0) to (1, 0.4); 0.5657 long
        assertThat(ContourLines.at(0.4, saddle).toText()).contains("0.6 0", "1 0.4");
        assertThat(ContourLines.at(0.4, saddle).getLength()).isCloseTo(2 * 0.4 * Math.sqrt(2), within(1e-12));
        assertThat(ContourLines.at(0.6, saddle).getLength()).isCloseTo(2 * 0.4 * Math.sqrt(2), within(1e-12));
        Outline highCorner = Shapes.rectangle(-0.1, -0.1, 0.41, 0.41);
        assertThat(ContourLines.clipped(ContourLines.at(0.6, saddle), highCorner)
                        .getLength())
                .isCloseTo(0.4 * Math.sqrt(2), within(1e-12));
    }

    @Test
    void linesEndWhereTheGroundIsUnknown() {
        // east of 5 m unknown: the line of the circle of 6 m stays open
        ScalarGrid grid = ScalarGrid.sampled(SQUARE, 0.25, (x, y) -> x > 5 ? Double.NaN : (x * x + y * y) / 200);
        LineString line = only(ContourLines.at(0.18, grid));
        assertThat(line.isClosed()).isFalse();
        assertThat(line.getEnvelopeInternal().getMaxX()).isLessThanOrEqualTo(5);
        ScalarGrid unknown = ScalarGrid.sampled(SQUARE, 1, (x, y) -> Double.NaN);
        assertThat(ContourLines.every(0.05, unknown)).isEmpty();
    }

    @Test
    void nodesOfExactlyTheValueMakeOneLine() {
        // z = north at whole metres: the line at 3 runs through nodes, 23 of them, once
        ScalarGrid stairs = ScalarGrid.sampled(SQUARE, 1, (x, y) -> y);
        LineString line = only(ContourLines.at(3, stairs));
        assertThat(line.getLength()).isEqualTo(22);
        assertThat(line.isSimple()).isTrue();
    }

    @Test
    void aStepThatDoesNotSuitIsRefused() {
        ScalarGrid stairs = ScalarGrid.sampled(SQUARE, 1, (x, y) -> y);
        assertThatThrownBy(() -> ContourLines.every(0, stairs)).hasMessageContaining("step of 0.0");
        assertThatThrownBy(() -> ContourLines.every(1e-5, stairs)).hasMessageContaining("1.0E-5");
        assertThatThrownBy(() -> new ScalarGrid(0, 0, 1, 2, 2, new double[3])).hasMessageContaining("3 values");
        assertThatThrownBy(() -> ScalarGrid.sampled(SQUARE, 1e-4, (x, y) -> y)).hasMessageContaining("too small");
    }
}
