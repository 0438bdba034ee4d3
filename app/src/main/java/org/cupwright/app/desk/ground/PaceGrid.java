package org.cupwright.app.desk.ground;

import java.util.Locale;
import java.util.stream.Stream;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.units.Heading;
import org.cupwright.units.Paces;

/**
 * Places about a green in paces, on the green and off it: so far on from the foremost point of its edge along the line
 * of play, and so far to the right of the line of play through its middle. Where no line of play is known, on is north.
 *
 * @param zero where both are nothing
 * @param on which way is on
 * @param paceMetres how long a pace is
 */
public record PaceGrid(MapPoint zero, Heading on, double paceMetres) {
    /** The grid of a green as its outline is. */
    public static PaceGrid of(Hole hole, double paceMetres) {
        Heading on = hole.lineOfPlay().map(LineOfPlay::atGreen).orElse(new Heading(0));
        MapPoint middle = hole.green().centroid();
        PaceGrid about = new PaceGrid(middle, on, 1);
        double front = Stream.of(hole.green().polygon().getExteriorRing().getCoordinates())
                .mapToDouble(corner -> about.on(MapPoint.of(corner)))
                .min()
                .orElseThrow();
        return new PaceGrid(middle.moved(on, front), on, paceMetres);
    }

    /** The place that lies so many paces on and so many to the right; below 0: before the front, to the left. */
    public MapPoint ground(double onPaces, double rightPaces) {
        return zero.moved(on, Paces.toMetres(onPaces, paceMetres))
                .moved(on.turnedClockwise(90), Paces.toMetres(rightPaces, paceMetres));
    }

    public double on(MapPoint place) {
        double metres = (place.east() - zero.east()) * on.east() + (place.north() - zero.north()) * on.north();
        return Paces.fromMetres(metres, paceMetres);
    }

    public double right(MapPoint place) {
        double metres = (place.east() - zero.east()) * on.north() - (place.north() - zero.north()) * on.east();
        return Paces.fromMetres(metres, paceMetres);
    }

    /** A place as it is typed: {@code 12.30 L4.50}. */
    public String written(MapPoint place) {
        String right = hundredths(right(place));
        String on = hundredths(on(place));
        return on + (right.startsWith("-") ? " L" + right.substring(1) : " R" + right);
    }

    /** Nothing is neither before nor left. */
    private static String hundredths(double paces) {
        String written = String.format(Locale.ROOT, "%.2f", paces);
        return written.equals("-0.00") ? "0.00" : written;
    }
}
