package org.cupwright.settingout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;

/**
 * Measures points of a green out by two tapes from two marks: which pair of marks for a point, and which point for two distances.
 *
 * <p>Distances are horizontal and the marks taken as exact. The pair is the one of the smallest position error,
 * √(σ1² + σ2²)/sin γ, γ the angle between the tapes, among those whose tapes are long enough and meet between 30° and 150°.
 */
public final class TwoTapes {
    /** Tapes whose sine of the angle is less than this lie in one line and fix nothing: our choice. */
    private static final double IN_ONE_LINE = 1e-6;

    /** Standard error of a tape pulled by hand over a green, held to a mark and read to the centimetre, m: our choice. */
    public static final double SIGMA_METRES = 0.02;

    /** Tapes that meet at a sharper angle, or at one as flat on the other side, fix a point badly: common practice, no source. */
    private static final double LEAST_ANGLE_DEGREES = 30;

    /** A long tape of the usual length, m: our choice. */
    private static final double LONGEST_METRES = 50;

    private TwoTapes() {}

    /** The best two tapes to a point; empty where no two marks fix it well enough. Of equals the first in the marks' order. */
    public static Optional<TapeFix> findBest(MapPoint point, List<Mark> marks) {
        List<Tape> tapes = marks.stream()
                .filter(mark ->
                        mark.at().distanceMetres(point) > 0 && mark.at().distanceMetres(point) <= LONGEST_METRES)
                .map(mark -> new Tape(mark, mark.at().distanceMetres(point), SIGMA_METRES))
                .toList();
        List<TapeFix> fixes = new ArrayList<>();
        for (int i = 0; i < tapes.size(); i++) {
            for (int j = i + 1; j < tapes.size(); j++) {
                fixes.add(TapeFix.at(point, tapes.get(i), tapes.get(j)));
            }
        }
        return fixes.stream()
                .filter(fix -> fix.meetsWell(LEAST_ANGLE_DEGREES))
                .min(Comparator.comparingDouble(fix -> fix.error().positionErrorMetres()));
    }

    /** As {@link #fix(Tape, Tape, Outline)}, for distances read from two marks with the usual error. */
    public static TapeFix fix(Mark first, double firstMetres, Mark second, double secondMetres, Outline green) {
        return fix(new Tape(first, firstMetres, SIGMA_METRES), new Tape(second, secondMetres, SIGMA_METRES), green);
    }

    /**
     * The point where two tapes meet. They meet in two, one either side of the line through the marks: the one on the green
     * counts, or of two that are both on or both off it the one on the side where the green's centroid lies.
     *
     * @throws IllegalArgumentException if the tapes do not meet, or meet in one line
     */
    public static TapeFix fix(Tape first, Tape second, Outline green) {
        MapPoint centroid = green.centroid();
        return meetings(first, second).stream()
                .min(Comparator.comparing((MapPoint point) -> !green.contains(point))
                        .thenComparing(point -> point.distanceMetres(centroid)))
                .map(point -> TapeFix.at(point, first, second))
                .orElseThrow(() -> new IllegalArgumentException(doNotMeet(first, second)));
    }

    /** Both points where two tapes meet; none where they do not, or where they meet in one line. */
    public static List<MapPoint> meetings(Tape first, Tape second) {
        MapPoint a = first.mark().at();
        MapPoint b = second.mark().at();
        double apart = a.distanceMetres(b);
        if (apart == 0) {
            return List.of();
        }
        double east = (b.east() - a.east()) / apart;
        double north = (b.north() - a.north()) / apart;
        double r1 = first.metres();
        double r2 = second.metres();
        double along = (apart + (r1 - r2) * (r1 + r2) / apart) / 2;
        double square = (r1 - along) * (r1 + along);
        double sine = Math.sqrt(Math.max(0, square)) * apart / (r1 * r2);
        if (!(sine > IN_ONE_LINE)) {
            return List.of();
        }
        double beside = Math.sqrt(square);
        double footEast = a.east() + along * east;
        double footNorth = a.north() + along * north;
        return List.of(
                new MapPoint(footEast - beside * north, footNorth + beside * east),
                new MapPoint(footEast + beside * north, footNorth - beside * east));
    }

    private static String doNotMeet(Tape first, Tape second) {
        double apart = first.mark().at().distanceMetres(second.mark().at());
        return "tapes of " + first.metres() + " m from " + first.mark().name() + " and " + second.metres() + " m from "
                + second.mark().name() + " do not meet at an angle, the marks being " + apart
                + " m apart. Maybe a distance was misread or a mark mistaken for another.";
    }
}
