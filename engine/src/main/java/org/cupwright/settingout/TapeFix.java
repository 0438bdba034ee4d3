package org.cupwright.settingout;

import org.cupwright.course.MapPoint;

/**
 * The point where two tapes meet.
 *
 * @param at the point
 * @param first one tape
 * @param second the other
 * @param angleDegrees angle between the tapes at the point, above 0 and below 180; a right angle is best
 * @param error how well the tapes fix it, the marks taken as exact
 */
public record TapeFix(MapPoint at, Tape first, Tape second, double angleDegrees, ErrorEllipse error) {
    /** The fix of a known point, its ellipse by the propagation of the tapes' errors (first order). */
    static TapeFix at(MapPoint point, Tape first, Tape second) {
        double e1 = (point.east() - first.mark().at().east()) / first.metres();
        double n1 = (point.north() - first.mark().at().north()) / first.metres();
        double e2 = (point.east() - second.mark().at().east()) / second.metres();
        double n2 = (point.north() - second.mark().at().north()) / second.metres();
        double cross = e1 * n2 - n1 * e2;
        double square = cross * cross;
        double v1 = first.sigmaMetres() * first.sigmaMetres();
        double v2 = second.sigmaMetres() * second.sigmaMetres();
        ErrorEllipse error = ErrorEllipse.ofCovariance(
                (n2 * n2 * v1 + n1 * n1 * v2) / square,
                -(e2 * n2 * v1 + e1 * n1 * v2) / square,
                (e2 * e2 * v1 + e1 * e1 * v2) / square);
        double angle = Math.toDegrees(StrictMath.atan2(Math.abs(cross), e1 * e2 + n1 * n2));
        return new TapeFix(point, first, second, angle, error);
    }

    /** Whether the tapes meet neither too sharply nor too flatly: between an angle and 180° less it. */
    public boolean meetsWell(double leastAngleDegrees) {
        return angleDegrees >= leastAngleDegrees && angleDegrees <= 180 - leastAngleDegrees;
    }
}
