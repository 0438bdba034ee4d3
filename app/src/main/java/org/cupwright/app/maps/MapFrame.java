package org.cupwright.app.maps;

import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;

/**
 * From the course's frame to the drawing and back: the line of play runs up the page, or north where no line of play is
 * known.
 *
 * <p>One scale for both directions, as large as the green and a margin about it allow.
 */
public final class MapFrame {
    /** Ground shown beyond the green's edge, m: enough for the hazards that count. */
    static final double MARGIN_METRES = 5;

    private final Heading up;
    private final double right0;
    private final double up0;
    private final double scale;
    private final int width;
    private final int height;

    /** A frame for a green, as large as fits into a size in drawing units. */
    public MapFrame(Hole hole, int width, int height) {
        this(hole, width, height, 0, MARGIN_METRES);
    }

    /** The same with a strip along the foot left free for writing, and so much ground about the green. */
    MapFrame(Hole hole, int width, int height, int foot, double marginMetres) {
        this.up = up(hole);
        this.width = width;
        this.height = height;
        Envelope box = box(hole, up, marginMetres);
        this.scale = Math.min(width / box.getWidth(), (height - foot) / box.getHeight());
        this.right0 = box.centre().x - width / scale / 2;
        this.up0 = box.centre().y + (height - foot) / scale / 2;
    }

    /** How much higher than wide a drawing must be that shows a green without waste. */
    static double heightForWidth(Hole hole, double marginMetres) {
        Envelope box = box(hole, up(hole), marginMetres);
        return box.getHeight() / box.getWidth();
    }

    private static Heading up(Hole hole) {
        return hole.lineOfPlay().map(LineOfPlay::atGreen).orElse(new Heading(0));
    }

    private static Envelope box(Hole hole, Heading up, double marginMetres) {
        Envelope box = new Envelope();
        for (Coordinate corner : hole.green().polygon().getCoordinates()) {
            MapPoint point = MapPoint.of(corner);
            box.expandToInclude(right(point, up), ahead(point, up));
        }
        box.expandBy(marginMetres);
        return box;
    }

    private static double right(MapPoint point, Heading up) {
        return point.east() * up.north() - point.north() * up.east();
    }

    private static double ahead(MapPoint point, Heading up) {
        return point.east() * up.east() + point.north() * up.north();
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** Drawing units for a length on the ground. */
    public double length(double metres) {
        return metres * scale;
    }

    public double x(MapPoint point) {
        return (right(point, up) - right0) * scale;
    }

    public double y(MapPoint point) {
        return (up0 - ahead(point, up)) * scale;
    }

    /** The point of the ground shown at a place of the drawing. */
    public MapPoint ground(double x, double y) {
        double r = right0 + x / scale;
        double a = up0 - y / scale;
        return new MapPoint(r * up.north() + a * up.east(), a * up.north() - r * up.east());
    }

    /** Where north points on the drawing: degrees clockwise from up. */
    public double northDegrees() {
        return -up.degrees();
    }
}
