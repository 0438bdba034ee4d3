package org.cupwright.green.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.LevelReading;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;

/** Everything that is known to be doubtful about the ground of a green. Fits the survey: takes up to a second. */
public final class GroundFindings {
    /** What misleads comes before what is merely unknown, that before what is small or was dealt with (our choice). */
    private static final List<FindingKind> WORST_FIRST = List.of(
            FindingKind.HEIGHTS_STEEP,
            FindingKind.SURVEY_TILTED,
            FindingKind.SURVEY_DOMED,
            FindingKind.READING_OVERRULES,
            FindingKind.SURVEY_TOO_THIN,
            FindingKind.NO_SURVEY,
            FindingKind.PART_NOT_SURVEYED,
            FindingKind.SLOPES_UNCERTAIN,
            FindingKind.SLOPES_UNCERTAIN_HERE,
            FindingKind.POINTS_UNEVEN,
            FindingKind.SMALL_PARTS_NOT_SURVEYED,
            FindingKind.STEP,
            FindingKind.POINT_LEFT_OUT,
            FindingKind.READING_OFF_GREEN);

    private GroundFindings() {}

    /**
     * The findings about one green, the worst first.
     *
     * @param survey its points, if it was surveyed
     * @param readings slopes read with a level, in their order on the green
     */
    public static List<GroundFinding> of(
            Hole hole, Optional<SurveyPoints> survey, List<LevelReading> readings, Policy policy) {
        List<GroundFinding> findings = new ArrayList<>(ReadingFindings.offGreen(hole, readings));
        if (survey.isPresent()) {
            findings.addAll(ofSurvey(hole, survey.get(), readings, policy));
        } else {
            findings.add(GroundFinding.of(Finding.of(FindingKind.NO_SURVEY, Where.hole(hole.id()), readings.size())));
        }
        GreenSize.check(hole.green(), Where.hole(hole.id()))
                .map(GroundFinding::of)
                .ifPresent(findings::add);
        if (hole.lineOfPlay().isEmpty()) {
            findings.add(GroundFinding.of(Finding.of(FindingKind.NO_LINE_OF_PLAY, Where.hole(hole.id()), hole.id())
                    .trying(hole.id())));
        }
        findings.sort(Comparator.comparingInt(GroundFindings::rank));
        return findings;
    }

    private static int rank(GroundFinding finding) {
        int rank = WORST_FIRST.indexOf(finding.finding().kind());
        return rank < 0 ? WORST_FIRST.size() : rank;
    }

    private static List<GroundFinding> ofSurvey(
            Hole hole, SurveyPoints points, List<LevelReading> readings, Policy policy) {
        try {
            SurveyedGround survey = SurveyedGround.fit(hole.green(), points, policy);
            SurveyedGround withReadings = readings.isEmpty() ? survey : survey.withReadings(readings);
            List<GroundFinding> findings = new ArrayList<>(SurveyFindings.of(hole, withReadings));
            findings.addAll(ReadingFindings.against(hole, survey, withReadings, policy));
            return findings;
        } catch (SurveyTooThin tooThin) {
            return List.of(GroundFinding.of(tooThin(hole, tooThin)));
        }
    }

    /** A survey from which no ground can be fitted. */
    public static Finding tooThin(Hole hole, SurveyTooThin tooThin) {
        Message where = Where.hole(hole.id());
        return Finding.of(FindingKind.SURVEY_TOO_THIN, where, tooThin.points());
    }
}
