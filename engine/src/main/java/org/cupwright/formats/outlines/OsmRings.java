package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.linemerge.LineMerger;

/**
 * Polygons of a multipolygon relation: its member ways joined end to end into rings, inner rings cut out of the outer.
 */
record OsmRings(GeometryFactory factory, Message where) {
    /**
     * @return a polygon, or a MultiPolygon of several outer rings
     * @throws org.cupwright.finding.UnreadableFile if the ways do not join into rings
     */
    Geometry polygons(List<Coordinate[]> outer, List<Coordinate[]> inner) {
        List<LinearRing> holes = rings(inner);
        List<Polygon> polygons = new ArrayList<>();
        for (LinearRing ring : rings(outer)) {
            Polygon whole = factory.createPolygon(ring);
            LinearRing[] inside = holes.stream()
                    .filter(hole -> whole.getEnvelopeInternal().covers(hole.getEnvelopeInternal()))
                    .filter(hole -> whole.covers(hole))
                    .toArray(LinearRing[]::new);
            polygons.add(factory.createPolygon(ring, inside));
        }
        return polygons.size() == 1 ? polygons.get(0) : factory.createMultiPolygon(polygons.toArray(Polygon[]::new));
    }

    private List<LinearRing> rings(List<Coordinate[]> ways) {
        LineMerger merger = new LineMerger();
        List<LinearRing> rings = new ArrayList<>();
        for (Coordinate[] points : ways) {
            boolean closed = points.length > 2 && points[0].equals2D(points[points.length - 1]);
            if (closed || points.length < 2) {
                rings.add(ring(points));
            } else {
                merger.add(factory.createLineString(points));
            }
        }
        @SuppressWarnings("unchecked") // LineMerger documents a collection of LineStrings
        Collection<LineString> merged = merger.getMergedLineStrings();
        merged.forEach(line -> rings.add(ring(line.getCoordinates())));
        return rings;
    }

    private LinearRing ring(Coordinate[] points) {
        return Polygons.ring(Arrays.asList(points), factory, where);
    }
}
