package org.cupwright.green;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;

/** Level readings on one green, each taken to hold for a short way about its spot. */
public record LevelReadings(List<LevelReading> readings, double reachMetres) {
    public LevelReadings {
        readings = List.copyOf(readings);
    }

    /** The nearest reading within reach; of two at the same distance the later one. */
    public Optional<LevelReading> findNear(MapPoint point) {
        Optional<LevelReading> nearest = Optional.empty();
        Comparator<LevelReading> byDistance =
                Comparator.comparingDouble(reading -> reading.place().distanceMetres(point));
        for (LevelReading reading : readings) {
            boolean inReach = reading.place().distanceMetres(point) <= reachMetres;
            if (inReach && (nearest.isEmpty() || byDistance.compare(reading, nearest.get()) <= 0)) {
                nearest = Optional.of(reading);
            }
        }
        return nearest;
    }
}
