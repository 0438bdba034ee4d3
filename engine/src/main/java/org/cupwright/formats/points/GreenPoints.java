package org.cupwright.formats.points;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.green.SurveyPoints;

/**
 * The points of a survey, given to the greens they lie on.
 *
 * @param read points read
 * @param kept points that lie on a green or within {@link PointCollector#MARGIN_METRES} of it and are of a wanted class
 * @param byClass points read of each class; empty when the file has no classes
 * @param byHole of every hole with points, its points; holes that share a green share them
 * @param findings what the person should know or mend
 */
public record GreenPoints(
        long read, long kept, Map<Integer, Long> byClass, Map<String, SurveyPoints> byHole, List<Finding> findings) {
    public GreenPoints {
        byClass = Map.copyOf(byClass);
        byHole = Map.copyOf(byHole);
        findings = List.copyOf(findings);
    }

    public Optional<SurveyPoints> find(String holeId) {
        return Optional.ofNullable(byHole.get(holeId));
    }
}
