package org.cupwright.formats.outlines;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * Reads the golf features of an OpenStreetMap XML file: ways, and multipolygon relations of ways.
 *
 * <p>Only elements tagged golf or leisure=golf_course become features; a closed way is an area unless it is a golf=hole.
 */
public final class OsmFeatures {
    private final OsmData osm;
    private final Predicate<Map<String, String>> essential;
    private final GeometryFactory factory = new GeometryFactory();
    private final List<MapFeature> features = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private OsmFeatures(OsmData osm, Predicate<Map<String, String>> essential) {
        this.osm = osm;
        this.essential = essential;
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
        reader.osm.ways().values().forEach(reader::addWay);
        reader.osm.relations().forEach(reader::addRelation);
        return new MapFeatures(CoordinateFrame.of(CoordinateFrame.WGS84), reader.features, reader.findings);
    }

    private void addWay(OsmData.Way way) {
        add(OsmData.named("way", way.id(), way.tags()), where -> shape(way, where));
    }

    private void addRelation(OsmData.Relation relation) {
        if (!"multipolygon".equals(relation.tags().get("type"))) {
            return;
        }
        add(OsmData.named("relation", relation.id(), relation.tags()), where -> {
            List<Coordinate[]> outer = new ArrayList<>();
            List<Coordinate[]> inner = new ArrayList<>();
            for (OsmData.Member member : relation.members()) {
                OsmData.Way way = osm.ways().get(member.way());
                if (way == null) {
                    throw missing("way/" + member.way(), where);
                }
                (member.role().equals("inner") ? inner : outer).add(points(way, where));
            }
            return new OsmRings(factory, where).polygons(outer, inner);
        });
    }

    private interface Shaping {
        Geometry shape(Message where);
    }

    private void add(Map<String, String> tags, Shaping shaping) {
        boolean golf = tags.containsKey("golf") || "golf_course".equals(tags.get("leisure"));
        if (!golf) {
            return;
        }
        Message where = Where.feature(features.size() + findings.size() + 1, Tags.label(tags));
        try {
            features.add(new MapFeature(shaping.shape(where), tags, where));
        } catch (UnreadableFile trouble) {
            if (essential.test(tags)) {
                throw trouble;
            }
            findings.add(Tags.leftOut(trouble.finding()));
        }
    }

    private Geometry shape(OsmData.Way way, Message where) {
        Coordinate[] points = points(way, where);
        boolean line = "hole".equals(way.tags().get("golf"));
        if (points.length < 2) {
            Message.Argument count = new Message.Count(points.length);
            throw Finding.of(FindingKind.RING_TOO_SHORT, where, count).failure();
        }
        return line
                ? factory.createLineString(points)
                : factory.createPolygon(Rings.close(List.of(points), factory, where));
    }

    private Coordinate[] points(OsmData.Way way, Message where) {
        List<Coordinate> points = new ArrayList<>();
        for (long node : way.nodes()) {
            Coordinate point = osm.nodes().get(node);
            if (point == null) {
                throw missing("node/" + node, where);
            }
            points.add(point.copy());
        }
        return points.toArray(Coordinate[]::new);
    }

    private static UnreadableFile missing(String element, Message where) {
        return Finding.of(FindingKind.PART_MISSING, where, new Message.Name(element))
                .failure();
    }
}
