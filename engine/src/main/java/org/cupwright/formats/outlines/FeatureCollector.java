package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import org.cupwright.finding.Finding;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;

/**
 * Collects the features of a map file. One that cannot be read is left out with a finding, unless it is one of those
 * the caller cannot do without.
 */
final class FeatureCollector {
    private final Predicate<Map<String, String>> essential;
    private final List<MapFeature> features = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /** @param essential by its tags, whether a feature that cannot be read makes the whole file useless */
    FeatureCollector(Predicate<Map<String, String>> essential) {
        this.essential = essential;
    }

    /**
     * Takes the next feature of the file.
     *
     * @param shape makes its shape, told which feature it is
     * @throws UnreadableFile if it is essential and has none
     */
    void add(Map<String, String> tags, Function<Message, Geometry> shape) {
        Message where = Where.feature(features.size() + findings.size() + 1, MapFeature.label(tags));
        try {
            features.add(new MapFeature(shape.apply(where), tags, where));
        } catch (UnreadableFile trouble) {
            if (essential.test(tags)) {
                throw trouble;
            }
            findings.add(MapFeature.leftOut(trouble.finding()));
        }
    }

    MapFeatures all(CoordinateFrame frame) {
        return new MapFeatures(frame, features, findings);
    }
}
