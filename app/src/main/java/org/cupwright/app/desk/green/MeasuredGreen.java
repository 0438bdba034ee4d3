package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Hole;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.Green;
import org.cupwright.green.Ground;
import org.cupwright.green.LevelReading;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.OutlineOnlyGround;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;

/**
 * A green with what was measured on it.
 *
 * @param hole the hole
 * @param survey its points
 * @param readings slopes read with a level
 * @param drawn what people say of its ground, which is not measured
 */
public record MeasuredGreen(
        Hole hole, Optional<GreenSurvey> survey, List<LevelReading> readings, List<DrawnItem> drawn) {
    public MeasuredGreen {
        readings = List.copyOf(readings);
        drawn = List.copyOf(drawn);
    }

    public static MeasuredGreen of(Stores stores, String courseId, Hole hole) {
        return new MeasuredGreen(
                hole,
                stores.surveys().find(courseId, hole.id()),
                stores.surveys().levels(courseId).of(hole.id()),
                stores.drawn().of(courseId).of(hole.id()));
    }

    /** The same green with these readings, and no others. */
    public MeasuredGreen withReadings(List<LevelReading> others) {
        return new MeasuredGreen(hole, survey, others, drawn);
    }

    /** The same green with another survey. */
    public MeasuredGreen withSurvey(GreenSurvey other) {
        return new MeasuredGreen(hole, Optional.of(other), readings, drawn);
    }

    /** The green with its ground fitted to the survey: takes up to a second. */
    public Green green(Policy policy) {
        return new Green(hole, ground(policy), drawn);
    }

    private Ground ground(Policy policy) {
        if (survey.isEmpty()) {
            return withoutSurvey(policy);
        }
        try {
            return fitted(policy);
        } catch (SurveyTooThin tooThin) {
            return withoutSurvey(policy); // the import said so
        }
    }

    /** The ground fitted to the survey, the readings taken in; there must be a survey. */
    public SurveyedGround fitted(Policy policy) throws SurveyTooThin {
        SurveyedGround ground =
                SurveyedGround.fit(hole.green(), survey.orElseThrow().points(), policy);
        return readings.isEmpty() ? ground : ground.withReadings(readings);
    }

    private Ground withoutSurvey(Policy policy) {
        return readings.isEmpty() ? new OutlineOnlyGround() : new LevelSpotsGround(readings, policy);
    }
}
