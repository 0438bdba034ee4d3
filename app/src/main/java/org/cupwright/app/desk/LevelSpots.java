package org.cupwright.app.desk;

import java.util.List;
import java.util.Map;
import org.cupwright.green.LevelReading;

/**
 * The slopes read with a level on a course's greens.
 *
 * @param byHole readings by hole
 */
public record LevelSpots(Map<String, List<LevelReading>> byHole) {
    public LevelSpots {
        byHole = Map.copyOf(byHole);
    }

    public static LevelSpots none() {
        return new LevelSpots(Map.of());
    }

    public List<LevelReading> of(String hole) {
        return byHole.getOrDefault(hole, List.of());
    }
}
