package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.FileBounds;
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
            tags.forEach((key, value) -> checkName(key, value, where));
            features.add(new MapFeature(bounded(shape.apply(where), where), tags, where));
        } catch (UnreadableFile trouble) {
            if (essential.test(tags)) {
                throw trouble;
            }
            findings.add(MapFeature.leftOut(trouble.finding()));
        }
    }

    /** Tags that nobody asks for may be as long as they like. */
    private static void checkName(String key, String value, Message where) {
        if (MapFeature.NAMES.contains(key) && value.length() > FileBounds.LONGEST_NAME) {
            throw Finding.of(FindingKind.NAME_TOO_LONG, where, key)
                    .trying(FileBounds.LONGEST_NAME)
                    .failure();
        }
    }

    /** Parts that join into nothing are an outline of no points. */
    private static Geometry bounded(Geometry shape, Message where) {
        if (shape.isEmpty()) {
            throw Finding.of(FindingKind.RING_TOO_SHORT, where, 0).failure();
        }
        if (shape.getNumPoints() > FileBounds.MOST_CORNERS) {
            throw Finding.of(FindingKind.TOO_MANY_CORNERS, where, shape.getNumPoints())
                    .trying(FileBounds.MOST_CORNERS)
                    .failure();
        }
        return shape;
    }

    MapFeatures all(CoordinateFrame frame) {
        return new MapFeatures(frame, features, findings);
    }
}
