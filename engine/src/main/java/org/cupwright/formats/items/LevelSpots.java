package org.cupwright.formats.items;

import java.util.List;
import org.cupwright.finding.Finding;

/**
 * The slopes of a file of level readings.
 *
 * @param spots in the order of the file
 * @param findings lines that were passed over, and why
 */
public record LevelSpots(List<LevelSpot> spots, List<Finding> findings) {
    public LevelSpots {
        spots = List.copyOf(spots);
        findings = List.copyOf(findings);
    }
}
