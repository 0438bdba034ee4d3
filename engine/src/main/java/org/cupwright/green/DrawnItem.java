package org.cupwright.green;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Ground of a green that a person drew on a map, paced out or named, with what the person says of it.
 *
 * @param id by which it is called; one of a kind on its course
 * @param word what is said of it, by whom and when
 * @param place a polygon in the course's frame, a point for a usual spot; the polygon may reach beyond the green
 */
public record DrawnItem(String id, PersonsOpinion word, Geometry place) {
    /** What an id looks like. */
    public static final String ID_PATTERN = "[A-Za-z0-9][A-Za-z0-9-]{0,39}";

    /** Two shapes whose corners lie so near to each other are one and the same, drawn or read twice, m: our choice. */
    private static final double SAME_PLACE_METRES = 0.1;

    private static final int CORNERS_A_QUARTER = 16;

    public DrawnItem {
        boolean fits = word.kind() == PersonsOpinion.Kind.USUAL ? place instanceof Point : place instanceof Polygon;
        if (!id.matches(ID_PATTERN) || !fits || place.isEmpty() || !place.isValid()) {
            throw new IllegalArgumentException("no drawn ground: " + word.kind() + " called " + id + ", a "
                    + place.getGeometryType() + ". Usual spots are points, good and bad ground polygons.");
        }
    }

    /** A point as a place. */
    public static Geometry spot(MapPoint at) {
        return at.toPoint();
    }

    /** The ground within a distance of a point as a place: a polygon of 64 corners. */
    public static Geometry disc(MapPoint centre, double radiusMetres) {
        return spot(centre).buffer(radiusMetres, CORNERS_A_QUARTER);
    }

    public double distanceMetres(MapPoint point) {
        return place.distance(spot(point));
    }

    /**
     * A point of it: the spot itself, the middle of the ground, or where that lies outside (of a bent piece) another
     * inside.
     */
    public MapPoint middle() {
        Point centroid = place.getCentroid();
        return MapPoint.of((place.intersects(centroid) ? centroid : place.getInteriorPoint()).getCoordinate());
    }

    /**
     * Whether another says the same kind of thing of the same ground, or draws the same area: then the later of the two
     * counts.
     */
    public boolean isAbout(PersonsOpinion other, Geometry there) {
        if (word.kind() == PersonsOpinion.Kind.AREA) {
            return word.area().equals(other.area());
        }
        return word.kind() == other.kind() && place.norm().equalsExact(there.norm(), SAME_PLACE_METRES);
    }

    /** The same with another word. */
    public DrawnItem saying(PersonsOpinion later) {
        return new DrawnItem(id, later, place);
    }

    /** Its area, m²; empty for a spot. */
    public Optional<Double> areaSquareMetres() {
        return place instanceof Polygon ? Optional.of(place.getArea()) : Optional.empty();
    }
}
