package org.cupwright.green.findings;

import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/** Whether an outline can be a green's by its size. */
public final class GreenSize {
    /** Above it a "green" is likelier a practice green or a whole complex drawn as one, m². Our choice. */
    static final double VERY_LARGE_SQUARE_METRES = 2500;

    /** Below it a "green" is likelier a slip of the pen, m². Our choice. */
    public static final double VERY_SMALL_SQUARE_METRES = 80;

    /** No green is larger, m². Our choice, six times the size of a very large double green. */
    public static final double IMPOSSIBLE_SQUARE_METRES = 20_000;

    /** Nor wider or longer, m. Our choice. */
    public static final double IMPOSSIBLE_METRES = 400;

    private GreenSize() {}

    /**
     * Refuses what can be no green.
     *
     * @throws org.cupwright.finding.UnreadableFile if the outline is too large
     */
    public static void refuseImpossible(Polygon outline, Message where) {
        Envelope extent = outline.getEnvelopeInternal();
        double widest = Math.max(extent.getWidth(), extent.getHeight());
        if (widest > IMPOSSIBLE_METRES) {
            throw impossible(outline, where, new Message.Length(widest), new Message.Length(IMPOSSIBLE_METRES));
        }
        if (outline.getArea() > IMPOSSIBLE_SQUARE_METRES) {
            Message.Area limit = new Message.Area(IMPOSSIBLE_SQUARE_METRES);
            throw impossible(outline, where, new Message.Area(outline.getArea()), limit);
        }
    }

    private static UnreadableFile impossible(
            Polygon outline, Message where, Message.Argument found, Message.Argument limit) {
        return Finding.of(FindingKind.GREEN_IMPOSSIBLE, where, found)
                .at(MapPoint.of(outline.getCentroid().getCoordinate()))
                .trying(limit)
                .failure();
    }

    /** What is odd about the size of an outline, if anything is. */
    public static Optional<Finding> check(Outline outline, Message where) {
        double area = outline.areaSquareMetres();
        if (area > VERY_LARGE_SQUARE_METRES) {
            return Optional.of(finding(FindingKind.GREEN_VERY_LARGE, outline, where));
        }
        return area < VERY_SMALL_SQUARE_METRES
                ? Optional.of(finding(FindingKind.GREEN_VERY_SMALL, outline, where))
                : Optional.empty();
    }

    private static Finding finding(FindingKind kind, Outline outline, Message where) {
        return Finding.of(kind, where, new Message.Area(outline.areaSquareMetres()))
                .at(outline.centroid());
    }
}
