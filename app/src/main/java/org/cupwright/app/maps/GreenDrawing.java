package org.cupwright.app.maps;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Surface;

/**
 * What is to be seen on the drawing of one green.
 *
 * @param hole outline, line of play, hazards, marks
 * @param surface the ground, for contour lines; empty without a survey
 * @param notToCut ground on which no hole may be cut: hatched
 * @param resting ground that rests: dotted
 * @param oldHoles old holes with their age in days
 * @param slopes slopes in percent, written where they were taken
 * @param spots today's spot, or several
 */
public record GreenDrawing(
        Hole hole,
        Optional<Surface> surface,
        Predicate<MapPoint> notToCut,
        Predicate<MapPoint> resting,
        List<SpotOnMap> oldHoles,
        List<SpotOnMap> slopes,
        List<MapPoint> spots) {
    /** A green with nothing on it but its outline and surroundings. */
    public static GreenDrawing of(Hole hole) {
        return new GreenDrawing(hole, Optional.empty(), any -> false, any -> false, List.of(), List.of(), List.of());
    }

    public GreenDrawing withSurface(Surface known) {
        return new GreenDrawing(hole, Optional.of(known), notToCut, resting, oldHoles, slopes, spots);
    }

    public GreenDrawing withGround(Predicate<MapPoint> hatched, Predicate<MapPoint> dotted) {
        return new GreenDrawing(hole, surface, hatched, dotted, oldHoles, slopes, spots);
    }

    public GreenDrawing withOldHoles(List<SpotOnMap> holes) {
        return new GreenDrawing(hole, surface, notToCut, resting, holes, slopes, spots);
    }

    public GreenDrawing withSlopes(List<SpotOnMap> taken) {
        return new GreenDrawing(hole, surface, notToCut, resting, oldHoles, taken, spots);
    }

    public GreenDrawing withSpots(List<MapPoint> chosen) {
        return new GreenDrawing(hole, surface, notToCut, resting, oldHoles, slopes, chosen);
    }
}
