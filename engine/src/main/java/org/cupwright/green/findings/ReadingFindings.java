package org.cupwright.green.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.ReadingId;
import org.cupwright.green.agreement.SurveyAgainstReadings;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Direction;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Slope;
import org.cupwright.message.Message.SlopePoints;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.Policy;

/** What the readings of a level say of the survey, and of themselves. */
final class ReadingFindings {
    /** No slope is said to be known better than so many points (our choice: what a level shows). */
    private static final double LEAST_SAID = 0.1;

    private ReadingFindings() {}

    /** Readings that lie off the green; they are told by what they are called. */
    static List<GroundFinding> offGreen(Hole hole, List<LevelReading> readings) {
        List<GroundFinding> findings = new ArrayList<>();
        for (LevelReading reading : readings) {
            MapPoint place = reading.place();
            if (!hole.green().contains(place)) {
                Length off = new Length(hole.green().distanceToEdgeMetres(place));
                findings.add(GroundFinding.of(Finding.of(FindingKind.READING_OFF_GREEN, Where.hole(hole.id()), off)
                        .trying(ReadingId.of(hole.id(), reading))
                        .at(place)));
            }
        }
        return findings;
    }

    /**
     * A common tilt or dome of the survey against all readings, then single readings that it contradicts, the worst
     * first.
     */
    static List<GroundFinding> against(Hole hole, SurveyedGround survey, SurveyedGround withReadings, Policy policy) {
        List<GroundFinding> findings =
                new ArrayList<>(SurveyAgainstReadings.of(survey, withReadings.readings()).findings(hole).stream()
                        .map(GroundFinding::of)
                        .toList());
        withReadings.overruling().stream()
                .sorted(Comparator.comparingDouble((LevelReading reading) -> off(survey, reading))
                        .reversed())
                .map(reading -> GroundFinding.of(overrules(hole, survey, reading, policy)))
                .forEach(findings::add);
        return findings;
    }

    private static double off(SurveyedGround survey, LevelReading reading) {
        PlaneFit plane = survey.planeAt(reading.place()).orElseThrow();
        return Math.hypot(
                reading.gradientEast() - plane.gradientEast(), reading.gradientNorth() - plane.gradientNorth());
    }

    private static Finding overrules(Hole hole, SurveyedGround survey, LevelReading reading, Policy policy) {
        PlaneFit surveyed = survey.planeAt(reading.place()).orElseThrow();
        return Finding.of(
                        FindingKind.READING_OVERRULES,
                        Where.hole(hole.id()),
                        new Slope(reading.plane().slopePercent()))
                .saying(
                        downhill(hole, reading.plane()),
                        new Slope(surveyed.slopePercent()),
                        new SlopePoints(Math.max(LEAST_SAID, 2 * 100 * surveyed.slopeStandardError())),
                        downhill(hole, surveyed))
                .trying(new Length(policy.get(GroundPolicy.READING_REACH_METRES)))
                .at(reading.place());
    }

    private static Argument downhill(Hole hole, PlaneFit plane) {
        return plane.downhill()
                .<Argument>map(
                        heading -> new Direction(heading, hole.lineOfPlay().map(LineOfPlay::atGreen)))
                .orElse(new Translated("way.none"));
    }
}
