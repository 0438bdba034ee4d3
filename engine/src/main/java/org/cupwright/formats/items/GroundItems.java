package org.cupwright.formats.items;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.finding.Finding;
import org.cupwright.green.GroundItem;

/**
 * What a file says lies on the ground of a course's greens.
 *
 * @param byHole by hole; holes of one green share what lies on it
 * @param findings what was left out, and why
 */
public record GroundItems(Map<String, List<GroundItem>> byHole, List<Finding> findings) {
    public GroundItems {
        Map<String, List<GroundItem>> copy = new HashMap<>();
        byHole.forEach((hole, items) -> copy.put(hole, List.copyOf(items)));
        byHole = Map.copyOf(copy);
        findings = List.copyOf(findings);
    }

    public static GroundItems none() {
        return new GroundItems(Map.of(), List.of());
    }

    /** The items of a hole, none when there are none. */
    public List<GroundItem> of(String holeId) {
        return byHole.getOrDefault(holeId, List.of());
    }
}
