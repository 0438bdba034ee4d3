package org.cupwright.green.survey.points;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.green.survey.Finding;
import org.cupwright.green.survey.FindingKind;
import org.cupwright.green.survey.Where;
import org.cupwright.message.Message;

/** Whether the heights on a green can be a green's: trees left in, feet taken for metres, a wrong column. */
final class HeightCheck {
    /** From the lowest to the highest point of a green, a fiftieth left out at either end, m. Our choice. */
    static final double GREATEST_RANGE_METRES = 8;

    /** A green as a whole is never steeper than this. Our choice. */
    static final double IMPOSSIBLE_SLOPE = 0.40;

    /** Above it a green as a whole is steep enough to ask whether its heights are in feet: 2 % then reads 6.6 %. Our choice. */
    static final double STEEP_SLOPE = 0.06;

    private static final double LEFT_OUT_SHARE = 0.02;

    private HeightCheck() {}

    /**
     * @throws org.cupwright.green.survey.UnreadableSurvey if no green can have such heights
     */
    static void check(Hole hole, PointCloud points, List<Finding> findings) {
        double range = range(points.heightsMetres());
        if (range > GREATEST_RANGE_METRES) {
            throw finding(FindingKind.HEIGHTS_IMPOSSIBLE, hole, new Message.Length(range))
                    .failure();
        }
        Optional<Double> slope = WholePlane.slope(points);
        if (slope.isPresent() && slope.get() > IMPOSSIBLE_SLOPE) {
            throw finding(FindingKind.HEIGHTS_IMPOSSIBLE, hole, new Message.Slope(100 * slope.get()))
                    .failure();
        }
        slope.filter(value -> value > STEEP_SLOPE)
                .ifPresent(value ->
                        findings.add(finding(FindingKind.HEIGHTS_STEEP, hole, new Message.Slope(100 * value))));
    }

    private static Finding finding(FindingKind kind, Hole hole, Message.Argument value) {
        return Finding.of(kind, Where.hole(hole.id()), value).at(hole.green().centroid());
    }

    private static double range(double[] heights) {
        Arrays.sort(heights);
        int left = (int) (LEFT_OUT_SHARE * heights.length);
        return heights[heights.length - 1 - left] - heights[left];
    }
}
