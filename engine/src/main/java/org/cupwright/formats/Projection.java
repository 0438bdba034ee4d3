package org.cupwright.formats;

import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.proj4j.CoordinateTransform;
import org.locationtech.proj4j.CoordinateTransformFactory;
import org.locationtech.proj4j.Proj4jException;
import org.locationtech.proj4j.ProjCoordinate;

/** Takes coordinates of one frame to another, east first in both. Heights are not touched. */
public final class Projection {
    /** Nothing on Earth, whose girth is 40,075 km, has greater numbers in any frame; our choice, with feet in mind. */
    private static final double GREATEST = 1e9;

    /** What goes beyond is cut in two there (RFC 7946, section 3.1.9); the library takes it to wrong places. */
    private static final double GREATEST_LONGITUDE = 180;

    private final CoordinateFrame from;
    private final CoordinateFrame to;
    private final CoordinateTransform transform;

    private Projection(CoordinateFrame from, CoordinateFrame to) {
        this.from = from;
        this.to = to;
        this.transform = new CoordinateTransformFactory().createTransform(from.system(), to.system());
    }

    public static Projection between(CoordinateFrame from, CoordinateFrame to) {
        return new Projection(from, to);
    }

    /**
     * The same place in the other frame.
     *
     * @throws UnreadableFile if the point is not a point of the frame it is said to be in
     */
    public Coordinate apply(double x, double y) {
        refuseTurned(x, y);
        boolean onEarth = from.isGeographic()
                ? Math.abs(x) <= GREATEST_LONGITUDE && Math.abs(y) <= 90
                : Math.abs(x) <= GREATEST && Math.abs(y) <= GREATEST;
        if (onEarth && from.equals(to)) {
            return new Coordinate(x, y);
        }
        ProjCoordinate out = new ProjCoordinate(Double.NaN, Double.NaN);
        if (onEarth) {
            try {
                transform.transform(new ProjCoordinate(x, y), out);
            } catch (Proj4jException | IllegalStateException e) { // the second from where datums are changed
                throw outside(x, y).failure(e);
            }
        }
        if (!Double.isFinite(out.x) || !Double.isFinite(out.y)) {
            throw outside(x, y).failure();
        }
        return new Coordinate(out.x, out.y);
    }

    /** The same as a point of the course; the projection must lead to the course's frame. */
    public MapPoint toCourse(double x, double y) {
        return MapPoint.of(apply(x, y));
    }

    /** A copy of a shape in the other frame. */
    public <G extends Geometry> G apply(G shape) {
        Geometry copy = shape.copy();
        copy.apply(new EveryPoint());
        copy.geometryChanged();
        @SuppressWarnings("unchecked") // a copy has the type of what it copies
        G sameType = (G) copy;
        return sameType;
    }

    /** Longitudes counted all the way round, as some maps and receivers do, are told with how to write them. */
    private void refuseTurned(double x, double y) {
        double degrees = Math.abs(x);
        if (from.isGeographic() && degrees > GREATEST_LONGITUDE && degrees <= 360 && Math.abs(y) <= 90) {
            throw Finding.of(FindingKind.LONGITUDE_BEYOND_180, Where.file(), words(x, y))
                    .failure();
        }
    }

    private Finding outside(double x, double y) {
        return Finding.of(FindingKind.OUTSIDE_FRAME, Where.file(), words(x, y)).trying(from.toString());
    }

    private static String words(double x, double y) {
        return x + ", " + y;
    }

    private final class EveryPoint implements CoordinateSequenceFilter {
        @Override
        public void filter(CoordinateSequence points, int index) {
            Coordinate moved = apply(points.getX(index), points.getY(index));
            points.setOrdinate(index, 0, moved.x);
            points.setOrdinate(index, 1, moved.y);
        }

        @Override
        public boolean isDone() {
            return false;
        }

        @Override
        public boolean isGeometryChanged() {
            return true;
        }
    }
}
