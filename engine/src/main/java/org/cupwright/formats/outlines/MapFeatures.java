package org.cupwright.formats.outlines;

import java.util.List;
import org.cupwright.finding.Finding;
import org.cupwright.formats.CoordinateFrame;

/**
 * What a map file holds.
 *
 * @param frame the frame of its coordinates
 * @param features in the order of the file
 * @param findings what had to be left out, and why
 */
public record MapFeatures(CoordinateFrame frame, List<MapFeature> features, List<Finding> findings) {
    public MapFeatures {
        features = List.copyOf(features);
        findings = List.copyOf(findings);
    }
}
