package org.cupwright.formats.points;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.SurveyPoints;
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

    private final SurveyPoints points;
    private final Map<Cell, Integer> first = new HashMap<>();
    private int repeated;
    private int disagreeing;
    private double worst;
    private int worstAt;

    private record Cell(long east, long north) {}

    private RepeatedPoints(SurveyPoints points) {
        this.points = points;
    }

    static SurveyPoints dropped(String holeId, SurveyPoints points, List<Finding> findings) {
        RepeatedPoints check = new RepeatedPoints(points);
        SurveyPoints kept = points.where(check::isFirst);
        check.tell(holeId, findings);
        return kept;
    }

    private boolean isFirst(int point) {
        Integer before = first.putIfAbsent(cell(point), point);
        boolean again = before != null && !differs(before, point);
        repeated += again ? 1 : 0;
        return !again;
    }

    private Cell cell(int point) {
        return new Cell(
                Math.round(points.east(point) / SAME_PLACE_METRES),
                Math.round(points.north(point) / SAME_PLACE_METRES));
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
            findings.add(Finding.of(FindingKind.POINTS_TWICE, Where.hole(holeId), repeated));
        }
        if (disagreeing > 0) {
            findings.add(Finding.of(FindingKind.HEIGHTS_DISAGREE, Where.hole(holeId), new Message.Length(worst))
                    .at(new MapPoint(points.east(worstAt), points.north(worstAt)))
                    .trying(disagreeing));
        }
    }
}
