package org.cupwright.formats.points;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.message.Message;

/**
 * Points that stand twice in a survey: the same place and height once more is dropped, the same place with another
 * height is kept and told.
 */
final class RepeatedPoints {
    /** Places nearer than this are the same, m. Our choice. */
    private static final double SAME_PLACE_METRES = 0.001;

    /** Heights at one place that differ by more are told, m: twice the noise of ordinary airborne lidar. Our choice. */
    private static final double HEIGHTS_AGREE_METRES = 0.05;

    private final PointCloud points;
    private final Map<Cell, Integer> first = new HashMap<>();
    private int repeated;
    private int disagreeing;
    private double worst;
    private int worstAt;

    private record Cell(long east, long north) {}

    private RepeatedPoints(PointCloud points) {
        this.points = points;
    }

    static PointCloud dropped(String holeId, PointCloud points, List<Finding> findings) {
        RepeatedPoints check = new RepeatedPoints(points);
        int[] kept = check.kept();
        check.tell(holeId, findings);
        return kept.length == points.size() ? points : points.chosen(kept);
    }

    private int[] kept() {
        int[] kept = new int[points.size()];
        int count = 0;
        for (int i = 0; i < points.size(); i++) {
            Integer before = first.putIfAbsent(cell(points.point(i)), i);
            if (before != null && !differs(before, i)) {
                repeated++;
            } else {
                kept[count++] = i;
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static Cell cell(MapPoint point) {
        return new Cell(Math.round(point.east() / SAME_PLACE_METRES), Math.round(point.north() / SAME_PLACE_METRES));
    }

    private boolean differs(int before, int now) {
        double difference = Math.abs(points.heightMetres(before) - points.heightMetres(now));
        if (difference > HEIGHTS_AGREE_METRES) {
            disagreeing++;
        }
        if (difference > worst) {
            worst = difference;
            worstAt = now;
        }
        return difference > 0;
    }

    private void tell(String holeId, List<Finding> findings) {
        if (repeated > 0) {
            findings.add(Finding.of(FindingKind.POINTS_TWICE, Where.hole(holeId), new Message.Count(repeated)));
        }
        if (disagreeing > 0) {
            findings.add(Finding.of(FindingKind.HEIGHTS_DISAGREE, Where.hole(holeId), new Message.Length(worst))
                    .at(points.point(worstAt))
                    .trying(new Message.Count(disagreeing)));
        }
    }
}
