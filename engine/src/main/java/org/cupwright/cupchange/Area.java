package org.cupwright.cupchange;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message.Count;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** A piece of ground, drawn by hand or paced out. In the course's frame. */
public sealed interface Area {
    /** The area as a polygon; discs have 64 corners. */
    Geometry toGeometry();

    /**
     * A drawn area.
     *
     * @param corners three or more, in order, the first not repeated
     */
    record Drawn(List<MapPoint> corners) implements Area {
        public Drawn {
            corners = List.copyOf(corners);
            if (corners.size() < 3) {
                throw new ImpossibleFact("fewCorners", new Count(corners.size()));
            }
            if (!polygon(corners).isValid()) {
                throw new ImpossibleFact("areaCrossesItself");
            }
        }

        @Override
        public Geometry toGeometry() {
            return polygon(corners);
        }

        private static Geometry polygon(List<MapPoint> corners) {
            Coordinate[] ring = new Coordinate[corners.size() + 1];
            for (int i = 0; i < ring.length; i++) {
                ring[i] = corners.get(i % corners.size()).toCoordinate();
            }
            return new GeometryFactory().createPolygon(ring);
        }
    }

    /** Everything within a distance of a place. */
    record Around(MapPoint centre, double radiusMetres) implements Area {
        public Around {
            Checks.between("radius", radiusMetres, 0.05, 100, "m");
        }

        @Override
        public Geometry toGeometry() {
            return centre.toPoint().buffer(radiusMetres, 16);
        }
    }
}
