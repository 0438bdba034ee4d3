package org.cupwright.course;

import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;

/**
 * The edge of a green: a simple polygon in the course's frame, holes in it allowed (a bunker inside a green).
 *
 * <p>Distances are exact for the polygon as drawn; a traced outline is itself good to about a metre. Safe for use by
 * several threads.
 */
public final class Outline {
    private final Polygon polygon;
    private final IndexedPointInAreaLocator locator;
    private final IndexedFacetDistance edge;

    /**
     * @param polygon a valid, non-empty polygon
     * @throws IllegalArgumentException if it is empty or crosses itself
     */
    public Outline(Polygon polygon) {
        if (polygon.isEmpty() || !polygon.isValid()) {
            throw new IllegalArgumentException("a green's outline must be a polygon that does not cross itself");
        }
        this.polygon = polygon;
        this.locator = new IndexedPointInAreaLocator(polygon);
        this.edge = new IndexedFacetDistance(polygon.getBoundary());
        locator.locate(new Coordinate(0, 0)); // builds the index before other threads can see it
    }

    public Polygon polygon() {
        return polygon;
    }

    /** Whether the point lies inside or on the edge. */
    public boolean contains(MapPoint point) {
        return locator.locate(point.toCoordinate()) != Location.EXTERIOR;
    }

    /** Distance to the nearest edge, metres, never negative: inside and outside alike. */
    public double distanceToEdgeMetres(MapPoint point) {
        return edge.distance(point.toPoint());
    }

    public double areaSquareMetres() {
        return polygon.getArea();
    }

    /**
     * Whether two outlines, perhaps drawn at different times, are of one green: they have more than half of the
     * smaller in common.
     */
    public boolean isSameGreenAs(Outline other) {
        if (!polygon.getEnvelopeInternal().intersects(other.polygon.getEnvelopeInternal())) {
            return false;
        }
        double common = polygon.intersection(other.polygon).getArea();
        return common > Math.min(areaSquareMetres(), other.areaSquareMetres()) / 2;
    }

    /** The centre of gravity: the origin of the green's own frame. */
    public MapPoint centroid() {
        return MapPoint.of(polygon.getCentroid().getCoordinate());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Outline outline && polygon.equalsExact(outline.polygon);
    }

    @Override
    public int hashCode() {
        return polygon.hashCode();
    }
}
