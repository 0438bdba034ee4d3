package org.cupwright.green.findings;

import java.util.Optional;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.message.Message;

/** Whether an outline can be a green's by its size. */
public final class GreenSize {
    /** Above it a "green" is likelier a practice green or a whole complex drawn as one, m². Our choice. */
    static final double VERY_LARGE_SQUARE_METRES = 2500;

    /** Below it a "green" is likelier a slip of the pen, m². Our choice. */
    public static final double VERY_SMALL_SQUARE_METRES = 80;

    private GreenSize() {}

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
