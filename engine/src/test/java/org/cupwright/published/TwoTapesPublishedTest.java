package org.cupwright.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.settingout.ErrorEllipse;
import org.cupwright.settingout.Tape;
import org.cupwright.settingout.TapeFix;
import org.cupwright.settingout.TwoTapes;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/**
 * Two tapes from two marks. The values are derived from plane geometry and the propagation of errors and need no
 * citation; tolerance half a unit of the last figure stated, 1e-9 m for coordinates that are exact.
 */
class TwoTapesPublishedTest {
    private static final Outline NORTH_OF_THE_MARKS = Shapes.rectangle(0, 0, 20, 20);

    private static TapeFix fix(double apart, double first, double firstSigma, double second, double secondSigma) {
        Mark a = new Mark(Mark.Kind.SURVEYED_MARK, "A", new MapPoint(0, 0));
        Mark b = new Mark(Mark.Kind.SURVEYED_MARK, "B", new MapPoint(apart, 0));
        return TwoTapes.fix(new Tape(a, first, firstSigma), new Tape(b, second, secondSigma), NORTH_OF_THE_MARKS);
    }

    @Test
    void aRightAngleAndEqualErrorsGiveACircle() {
        // A(0,0) B(20,0), 12 and 16 m, σ 0.02 m: (7.2, 9.6), a circle of 0.02 m
        TapeFix fix = fix(20, 12, 0.02, 16, 0.02);
        assertThat(fix.at().distanceMetres(new MapPoint(7.2, 9.6))).isLessThan(1e-9);
        assertThat(fix.angleDegrees()).isCloseTo(90, within(1e-9));
        assertThat(fix.error().semiMajorMetres()).isCloseTo(0.02, within(1e-9));
        assertThat(fix.error().semiMinorMetres()).isCloseTo(0.02, within(1e-9));
    }

    @Test
    void aSharpAngleAndUnequalErrorsGiveAnEllipse() {
        // A(0,0) B(10,0), 13 and 13 m, σ 0.02 and 0.03 m: (5, 12), semi-axes 0.0475698 and 0.0177634 m, the greater at
        // −10.599°
        // anticlockwise from east, angle between the tapes 45.24°
        TapeFix fix = fix(10, 13, 0.02, 13, 0.03);
        assertThat(fix.at().distanceMetres(new MapPoint(5, 12))).isLessThan(1e-9);
        assertThat(fix.error().semiMajorMetres()).isCloseTo(0.0475698, within(5e-8));
        assertThat(fix.error().semiMinorMetres()).isCloseTo(0.0177634, within(5e-8));
        assertThat(90 - fix.error().majorAxisDegrees()).isCloseTo(-10.599, within(5e-4));
        assertThat(fix.angleDegrees()).isCloseTo(45.24, within(0.005));
        // position error √(σ1² + σ2²)/sin γ
        double expected = Math.hypot(0.02, 0.03) / Math.sin(Math.toRadians(fix.angleDegrees()));
        assertThat(fix.error().positionErrorMetres()).isCloseTo(expected, within(1e-12));
    }

    @Test
    void theScaleFor95InAHundred() {
        // √(−2·ln 0.05) = 2.4477
        assertThat(ErrorEllipse.SCALE_95_PERCENT).isCloseTo(Math.sqrt(-2 * Math.log(0.05)), within(5e-5));
        assertThat(fix(20, 12, 0.02, 16, 0.02).error().holding95Percent().semiMajorMetres())
                .isCloseTo(0.048954, within(5e-7));
    }
}
