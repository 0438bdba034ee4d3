package org.cupwright.app.desk.findings;

import java.util.List;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.course.Hole;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.RestsOn;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.green.findings.GroundFindings;
import org.cupwright.policy.Policy;

/**
 * What is doubtful about the ground of one green.
 *
 * @param hole the hole
 * @param restsOn what the knowledge of its ground rests on
 * @param readings how many level readings it has
 * @param findings the worst first; numbered from 1 in this order wherever they are shown
 */
public record GreenFindings(Hole hole, RestsOn restsOn, int readings, List<GroundFinding> findings) {
    public GreenFindings {
        findings = List.copyOf(findings);
    }

    /** Fits the green's survey, if it has one: takes up to a second. */
    static GreenFindings of(MeasuredGreen green, Policy policy) {
        List<GroundFinding> findings = GroundFindings.of(green.hole(), green.points(), green.readings(), policy);
        boolean fitted = green.survey().isPresent()
                && findings.stream().noneMatch(found -> found.finding().kind() == FindingKind.SURVEY_TOO_THIN);
        RestsOn withoutSurvey = green.readings().isEmpty() ? RestsOn.OUTLINE : RestsOn.LEVELS;
        return new GreenFindings(
                green.hole(),
                fitted ? RestsOn.SURVEY : withoutSurvey,
                green.readings().size(),
                findings);
    }
}
