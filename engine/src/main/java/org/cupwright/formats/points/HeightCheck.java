package org.cupwright.formats.points;

import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.findings.SurveyFindings;
import org.cupwright.message.Message;

/** Whether the heights on a green can be a green's: trees left in, feet taken for metres, a wrong column. */
public final class HeightCheck {
    /** From the lowest to the highest point of a green, a fiftieth left out at either end, m. Our choice. */
    static final double GREATEST_RANGE_METRES = 8;

    /** A green as a whole is never steeper than this. Our choice. */
    static final double IMPOSSIBLE_SLOPE = 0.40;

    /** Some greens are steeper than this, but not the half of a course's; 1.25 % in feet reads 4.1 %. Our choice. */
    static final double STEEP_MIDDLE_SLOPE = 0.04;

    /** Fewer greens than this are no course to judge by. Our choice. */
    private static final int FEWEST_GREENS = 6;

    private static final double LEFT_OUT_SHARE = 0.02;

    private HeightCheck() {}

    /**
     * Checks the heights of one green.
     *
     * @return how steep it is, rise over run: as one plane, or in the middle of its parts where they are steeper
     * @throws org.cupwright.finding.UnreadableFile if no green can have such heights
     */
    public static double check(Hole hole, SurveyPoints points, List<Finding> findings) {
        double range = range(points);
        if (range > GREATEST_RANGE_METRES) {
            throw finding(FindingKind.HEIGHTS_IMPOSSIBLE, hole, new Message.Length(range))
                    .trying(new Message.Length(GREATEST_RANGE_METRES))
                    .failure();
        }
        double steepness = Math.max(
                RoughSlopes.whole(points).orElse(0), RoughSlopes.middle(points).orElse(0));
        if (steepness > IMPOSSIBLE_SLOPE) {
            throw finding(FindingKind.HEIGHTS_IMPOSSIBLE, hole, new Message.Slope(100 * steepness))
                    .trying(new Message.Slope(100 * IMPOSSIBLE_SLOPE))
                    .failure();
        }
        if (steepness > SurveyFindings.STEEP_SLOPE) {
            findings.add(finding(FindingKind.HEIGHTS_STEEP, hole, new Message.Slope(100 * steepness)));
        }
        return steepness;
    }

    /**
     * Asks about a whole survey by which half of the greens would be steep: one green alone may be so, half a course is
     * not.
     */
    public static void checkAll(List<Double> steepness, List<Finding> findings) {
        double middle = steepness.stream()
                .sorted()
                .skip(steepness.size() / 2)
                .findFirst()
                .orElse(0.0);
        if (steepness.size() >= FEWEST_GREENS && middle > STEEP_MIDDLE_SLOPE) {
            findings.add(Finding.of(FindingKind.GREENS_STEEP, Where.file(), new Message.Slope(100 * middle)));
        }
    }

    private static Finding finding(FindingKind kind, Hole hole, Message.Argument value) {
        return Finding.of(kind, Where.hole(hole.id()), value).at(hole.green().centroid());
    }

    private static double range(SurveyPoints points) {
        double[] heights = IntStream.range(0, points.count())
                .mapToDouble(points::heightMetres)
                .sorted()
                .toArray();
        int left = (int) (LEFT_OUT_SHARE * heights.length);
        return heights[heights.length - 1 - left] - heights[left];
    }
}
