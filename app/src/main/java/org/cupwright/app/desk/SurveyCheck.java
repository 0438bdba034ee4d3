package org.cupwright.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Blunder;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.SurveyTooThin;
import org.cupwright.green.SurveyedGround;
import org.cupwright.green.survey.Finding;
import org.cupwright.green.survey.FindingKind;
import org.cupwright.green.survey.Where;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.SlopePoints;
import org.cupwright.policy.Policy;
import org.locationtech.jts.geom.Envelope;

/**
 * Fits the ground of a green once when its survey is imported, to say at once what the survey is good for.
 *
 * @param usable whether a ground could be fitted
 * @param findings what the person should know
 */
record SurveyCheck(boolean usable, List<Finding> findings) {
    /** Slopes known worse than this, two standard errors, do not judge a spot, points: our choice. */
    private static final double GOOD_FOR_JUDGING_POINTS = 0.6;

    /** Distance between the spots whose slope error is looked at, m: our choice. */
    private static final double STEP_METRES = 2;

    static SurveyCheck of(Hole hole, GreenSurvey survey, Policy policy) {
        try {
            MeasuredGreen measured = new MeasuredGreen(hole, Optional.of(survey), List.of(), List.of());
            return new SurveyCheck(true, findings(hole, measured.fitted(policy)));
        } catch (SurveyTooThin tooThin) {
            return new SurveyCheck(
                    false,
                    List.of(Finding.of(
                            FindingKind.SURVEY_TOO_THIN, Where.hole(hole.id()), new Count(tooThin.points()))));
        }
    }

    private static List<Finding> findings(Hole hole, SurveyedGround ground) {
        List<Finding> findings = new ArrayList<>();
        List<Blunder> blunders = ground.blunders();
        if (!blunders.isEmpty()) {
            Blunder worst = blunders.stream()
                    .max((a, b) -> Double.compare(Math.abs(a.residualMetres()), Math.abs(b.residualMetres())))
                    .orElseThrow();
            findings.add(Finding.of(FindingKind.POINTS_LEFT_OUT, Where.hole(hole.id()), new Count(blunders.size()))
                    .at(worst.place())
                    .trying(new Length(Math.abs(worst.residualMetres())), new Name(coordinates(worst.place()))));
        }
        double points = 2 * 100 * medianSlopeError(hole, ground);
        if (points > GOOD_FOR_JUDGING_POINTS) {
            findings.add(Finding.of(FindingKind.SLOPES_UNCERTAIN, Where.hole(hole.id()), new SlopePoints(points)));
        }
        return findings;
    }

    private static String coordinates(MapPoint point) {
        return String.format(java.util.Locale.ROOT, "%.1f,%.1f", point.east(), point.north());
    }

    private static double medianSlopeError(Hole hole, SurveyedGround ground) {
        Envelope box = hole.green().polygon().getEnvelopeInternal();
        List<Double> errors = new ArrayList<>();
        for (double east = box.getMinX(); east <= box.getMaxX(); east += STEP_METRES) {
            for (double north = box.getMinY(); north <= box.getMaxY(); north += STEP_METRES) {
                MapPoint spot = new MapPoint(east, north);
                if (hole.green().contains(spot)) {
                    ground.planeAt(spot).map(PlaneFit::slopeStandardError).ifPresent(errors::add);
                }
            }
        }
        double[] sorted =
                errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
    }
}
