package org.cupwright.green.agreement;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.Outline;
import org.cupwright.green.LevelReading;
import org.cupwright.green.MeasuredSharing;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.field.GreenField;
import org.cupwright.green.surveyed.SurveyedGround;

/**
 * What level readings have bought on a surveyed green: how well slopes are known without them and with them, and what
 * they have measured of the errors that the survey's points share.
 *
 * @param readings how many there are on the green
 * @param withoutPoints two standard errors of the slope on half of the green, without any reading, percentage points
 * @param withPoints the same with them
 * @param sharing what the points share, measured from five readings on
 */
public record RoundBought(int readings, double withoutPoints, double withPoints, MeasuredSharing sharing) {
    /**
     * @param survey the ground before any reading was taken in
     * @return empty where there is no reading, or nothing of the green is surveyed
     */
    public static Optional<RoundBought> of(Outline green, SurveyedGround survey, List<LevelReading> readings) {
        if (readings.isEmpty()) {
            return Optional.empty();
        }
        SurveyedGround after = survey.withReadings(readings);
        double without = typical(green, survey);
        double with = typical(green, after);
        return Double.isFinite(without) && Double.isFinite(with)
                ? Optional.of(new RoundBought(
                        readings.size(), without, with, after.sharing().orElseThrow()))
                : Optional.empty();
    }

    private static double typical(Outline green, SurveyedGround ground) {
        return new GreenField(
                        green,
                        spot -> ground.planeAt(spot)
                                .map(PlaneFit::slopeStandardError)
                                .map(error -> 2 * 100 * error)
                                .orElse(Double.NaN))
                .quantile(0.5);
    }
}
