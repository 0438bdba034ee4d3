package org.cupwright.app.storage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.cupwright.green.LevelReading;
import org.cupwright.green.ReadingId;

/**
 * The slopes read with a level on a course's greens.
 *
 * @param byHole readings by hole, the oldest first
 */
public record LevelSpots(Map<String, List<LevelReading>> byHole) {
    /** Readings so near to each other are of one spot, and the later one counts, m: our choice, a foot's length. */
    private static final double SAME_SPOT_METRES = 0.25;

    public LevelSpots {
        byHole = Map.copyOf(byHole);
    }

    public static LevelSpots none() {
        return new LevelSpots(Map.of());
    }

    public List<LevelReading> of(String hole) {
        return byHole.getOrDefault(hole, List.of());
    }

    /** These with later ones: at a spot that was read before, the later reading takes the place of the earlier. */
    public LevelSpots with(LevelSpots later) {
        Map<String, List<LevelReading>> all = new HashMap<>(byHole);
        later.byHole.forEach((hole, readings) -> {
            List<LevelReading> together = of(hole);
            for (LevelReading reading : readings) {
                together = with(together, reading);
            }
            all.put(hole, together);
        });
        return new LevelSpots(all);
    }

    /** One green's readings with a later one. */
    public static List<LevelReading> with(List<LevelReading> readings, LevelReading later) {
        List<LevelReading> all = new ArrayList<>(readings);
        all.removeIf(other -> sameSpot(other, later));
        all.add(later);
        return all;
    }

    public static boolean sameSpot(LevelReading one, LevelReading other) {
        return one.place().distanceMetres(other.place()) <= SAME_SPOT_METRES;
    }

    /**
     * A reading with where it lies and what it is called.
     *
     * @param id follows from the reading, so that it means the same one whatever else is kept
     */
    public record Called(String id, String hole, LevelReading reading) {}

    /** The readings of a hole, each with what it is called. */
    public List<Called> called(String hole) {
        return of(hole).stream()
                .map(reading -> new Called(ReadingId.of(hole, reading), hole, reading))
                .toList();
    }

    /** The readings of some holes whose id begins so; none where nothing is given of it. */
    public List<Called> find(List<String> holes, String beginning) {
        String start = beginning.strip().toLowerCase(Locale.ROOT);
        return holes.stream()
                .flatMap(hole -> called(hole).stream())
                .filter(one -> !start.isEmpty() && one.id().startsWith(start))
                .toList();
    }

    /** These without one. */
    public LevelSpots without(String hole, LevelReading gone) {
        Map<String, List<LevelReading>> all = new HashMap<>(byHole);
        all.put(hole, of(hole).stream().filter(other -> !other.equals(gone)).toList());
        return new LevelSpots(all);
    }
}
