package org.cupwright.formats.outlines;

import java.util.List;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;

/** Closed rings from lists of points. */
final class Rings {
    /** The first point is repeated at the end, so a triangle has four (RFC 7946, section 3.1.6). */
    private static final int FEWEST_POINTS = 4;

    private Rings() {}

    /**
     * @throws org.cupwright.finding.UnreadableFile if there are fewer than four points or the last is not the first
     */
    static LinearRing close(List<Coordinate> points, GeometryFactory factory, Message where) {
        if (points.size() < FEWEST_POINTS) {
            Message.Argument count = new Message.Count(points.size());
            throw Finding.of(FindingKind.RING_TOO_SHORT, where, count).failure();
        }
        Coordinate first = points.get(0);
        Coordinate last = points.get(points.size() - 1);
        if (!first.equals2D(last)) {
            Message.Argument ends =
                    new Message.Name("(" + first.x + ", " + first.y + ") ≠ (" + last.x + ", " + last.y + ")");
            throw Finding.of(FindingKind.RING_OPEN, where, ends).failure();
        }
        return factory.createLinearRing(points.toArray(Coordinate[]::new));
    }
}
