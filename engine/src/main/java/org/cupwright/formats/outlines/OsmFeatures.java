package org.cupwright.formats.outlines;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Reads the golf features of an OpenStreetMap XML file: ways, and multipolygon relations of ways.
 *
 * <p>Only elements tagged golf or leisure=golf_course become features; a closed way is an area unless it is a
 * golf=hole.
 */
public final class OsmFeatures {
    private final OsmXml osm;
    private final GeometryFactory factory = new GeometryFactory();
    private final FeatureCollector features;

    private OsmFeatures(OsmXml osm, Predicate<Map<String, String>> essential) {
        this.osm = osm;
        this.features = new FeatureCollector(essential);
    }

    /**
     * Reads the golf features of a file.
     *
     * @param in the file; not closed
     * @param essential by its tags, whether a feature that cannot be read makes the whole file useless
     * @throws UnreadableFile if the file is empty, no OpenStreetMap XML, too large, or an essential feature is broken
     */
    public static MapFeatures read(InputStream in, Predicate<Map<String, String>> essential) throws IOException {
        OsmFeatures reader = new OsmFeatures(OsmXml.read(in), essential);
        reader.osm.ways().values().forEach(way -> reader.add(way, reader::shape));
        reader.osm.relations().stream()
                .filter(relation -> "multipolygon".equals(relation.tags().get("type")))
                .forEach(relation -> reader.add(relation, reader::polygons));
        return reader.features.all(CoordinateFrame.of(CoordinateFrame.WGS84));
    }

    private void add(OsmElement element, BiFunction<OsmElement, Message, Geometry> shaping) {
        if (element.isGolf()) {
            features.add(element.namedTags(), where -> shaping.apply(element, where));
        }
    }

    private Geometry shape(OsmElement way, Message where) {
        Coordinate[] points = points(way, where);
        if (points.length < 2) {
            throw Finding.of(FindingKind.RING_TOO_SHORT, where, points.length).failure();
        }
        return "hole".equals(way.tags().get("golf"))
                ? factory.createLineString(points)
                : factory.createPolygon(Polygons.ring(List.of(points), factory, where));
    }

    private Geometry polygons(OsmElement relation, Message where) {
        List<Coordinate[]> outer = new ArrayList<>();
        List<Coordinate[]> inner = new ArrayList<>();
        Set<Long> taken = new HashSet<>();
        for (OsmElement.Part member : relation.parts()) {
            if (!taken.add(member.id())) {
                continue; // an edge is an edge however often it is named
            }
            OsmElement way = there(osm.ways().get(member.id()), "way/" + member.id(), where);
            (member.role().equals("inner") ? inner : outer).add(points(way, where));
        }
        return new OsmRings(factory, where).polygons(outer, inner);
    }

    private Coordinate[] points(OsmElement way, Message where) {
        return way.parts().stream()
                .map(node -> there(osm.nodes().get(node.id()), "node/" + node.id(), where)
                        .copy())
                .toArray(Coordinate[]::new);
    }

    private static <T> T there(T part, String name, Message where) {
        if (part == null) {
            throw Finding.of(FindingKind.PART_MISSING, where, name).failure();
        }
        return part;
    }
}
