package org.cupwright.settingout;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.units.Heading;
import org.cupwright.units.Paces;

/**
 * A position as so many paces from a mark, in a direction.
 *
 * @param mark where to start
 * @param metres distance to the position
 * @param paces the same, to the half pace
 * @param heading the direction on the map; empty when the position is the mark
 * @param towards another mark to walk towards, beyond the position and in line with it; empty where none stands so
 */
public record FromMark(Mark mark, double metres, double paces, Optional<Heading> heading, Optional<Mark> towards) {
    /**
     * How far walking towards the other mark may lead past the position, m: our choice, about what half-pace rounding
     * does.
     */
    public static final double IN_LINE_METRES = 0.25;

    /** From the nearest of the marks; empty where there is none. */
    static Optional<FromMark> nearest(MapPoint position, List<Mark> marks, double paceMetres) {
        return marks.stream()
                .min(Comparator.comparingDouble(mark -> mark.at().distanceMetres(position)))
                .map(mark -> from(mark, position, marks, paceMetres));
    }

    private static FromMark from(Mark mark, MapPoint position, List<Mark> marks, double paceMetres) {
        double metres = mark.at().distanceMetres(position);
        double paces = Paces.roundedToHalf(metres, paceMetres);
        if (metres == 0) {
            return new FromMark(mark, 0, 0, Optional.empty(), Optional.empty());
        }
        Optional<Mark> towards = marks.stream()
                .filter(other -> mark.at().distanceMetres(other.at()) > metres)
                .filter(other -> missMetres(mark.at(), position, other.at()) <= IN_LINE_METRES)
                .min(Comparator.comparingDouble(other -> missMetres(mark.at(), position, other.at())));
        Heading heading = Heading.ofStep(
                position.east() - mark.at().east(), position.north() - mark.at().north());
        return new FromMark(mark, metres, paces, Optional.of(heading), towards);
    }

    /** How far from the position one stands after walking its distance towards a target. */
    private static double missMetres(MapPoint start, MapPoint position, MapPoint target) {
        Heading heading = Heading.ofStep(target.east() - start.east(), target.north() - start.north());
        return start.moved(heading, start.distanceMetres(position)).distanceMetres(position);
    }
}
