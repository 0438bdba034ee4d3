package org.cupwright.app.desk.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cupwright.app.desk.green.MeasuredGreen;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.KindGuess;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.Sharing;
import org.cupwright.green.SharingPolicy;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.green.findings.GroundFindings;
import org.cupwright.green.findings.SurveyFindings;
import org.cupwright.green.strips.StripMeasure;
import org.cupwright.green.strips.StripTold;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.policy.Policy;

/**
 * Fits the ground of a green once when its survey is imported, to say at once what the survey is good for.
 *
 * @param survey the survey, with what its strips or an earlier one tell of the errors its points share
 * @param strips what its strips tell; empty where the file says nothing of strips, or an earlier survey tells it
 * @param surveys what it and an earlier one tell; empty where the ground may have changed between
 * @param usable whether a ground could be fitted
 * @param findings what the person should know
 */
record SurveyCheck(
        GreenSurvey survey,
        Optional<StripTold> strips,
        Optional<StripTold> surveys,
        boolean usable,
        List<GroundFinding> findings) {
    /** @param earlier the survey before; empty where the ground may have changed since */
    static SurveyCheck of(Hole hole, GreenSurvey read, Optional<EarlierSurvey> earlier, Policy policy) {
        Sharing set = SharingPolicy.of(KindGuess.withKind(read.points()), policy);
        Optional<StripTold> surveys = earlier.map(before -> before.tells(hole, read.points(), set));
        Optional<SharedAmplitude> shared = surveys.flatMap(StripTold::measured);
        Optional<StripTold> strips = shared.isPresent() ? Optional.empty() : strips(hole, read.points(), set);
        GreenSurvey survey = shared.or(() -> strips.flatMap(StripTold::measured))
                .map(measured -> new GreenSurvey(read.hole(), read.points().sharing(measured), read.origin()))
                .orElse(read);
        try {
            MeasuredGreen measured = new MeasuredGreen(hole, Optional.of(survey), List.of(), List.of());
            List<GroundFinding> findings = SurveyFindings.of(hole, measured.fitted(policy));
            return new SurveyCheck(survey, strips, surveys, true, together(findings));
        } catch (SurveyTooThin tooThin) {
            return new SurveyCheck(
                    survey, strips, surveys, false, List.of(alone(GroundFindings.tooThin(hole, tooThin))));
        }
    }

    private static Optional<StripTold> strips(Hole hole, SurveyPoints points, Sharing set) {
        return points.hasStrips() ? Optional.of(StripMeasure.of(hole.green(), points, set)) : Optional.empty();
    }

    /**
     * Points left out are told as one: how many, and the worst of them. The heights of the file were looked at when it
     * was read.
     */
    private static List<GroundFinding> together(List<GroundFinding> findings) {
        List<Finding> leftOut = findings.stream()
                .map(GroundFinding::finding)
                .filter(finding -> finding.kind() == FindingKind.POINT_LEFT_OUT)
                .toList();
        List<GroundFinding> told = new ArrayList<>(findings);
        told.removeIf(found -> found.finding().kind() == FindingKind.POINT_LEFT_OUT
                || found.finding().kind() == FindingKind.HEIGHTS_STEEP);
        leftOut.stream()
                .findFirst()
                .map(worst -> alone(leftOut(worst, leftOut.size())))
                .ifPresent(told::add);
        return told;
    }

    private static GroundFinding alone(Finding finding) {
        return new GroundFinding(finding, Optional.empty());
    }

    private static Finding leftOut(Finding worst, int count) {
        MapPoint place = worst.place().orElseThrow();
        String coordinates = String.format(Locale.ROOT, "%.1f,%.1f", place.east(), place.north());
        return Finding.of(FindingKind.POINTS_LEFT_OUT, worst.where(), new Count(count))
                .at(place)
                .trying(worst.value(), new Name(coordinates));
    }
}
