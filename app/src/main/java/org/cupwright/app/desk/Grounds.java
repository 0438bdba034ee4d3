package org.cupwright.app.desk;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.green.Green;
import org.cupwright.green.Ground;
import org.cupwright.green.LevelReading;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.OutlineOnlyGround;
import org.cupwright.green.SurveyTooThin;
import org.cupwright.green.SurveyedGround;
import org.cupwright.policy.Policy;

/** Makes the ground of a green from what was measured on it. */
final class Grounds {
    private Grounds() {}

    static Green green(Stores stores, String courseId, Hole hole, Policy policy) {
        Optional<GreenSurvey> survey = stores.surveys().find(courseId, hole.id());
        List<LevelReading> readings = stores.surveys().levels(courseId).of(hole.id());
        return new Green(hole, ground(hole, survey, readings, policy));
    }

    /** A survey with the readings taken in; without one the readings; without them only the outline. */
    static Ground ground(Hole hole, Optional<GreenSurvey> survey, List<LevelReading> readings, Policy policy) {
        if (survey.isEmpty()) {
            return readings.isEmpty() ? new OutlineOnlyGround() : new LevelSpotsGround(readings, policy);
        }
        try {
            SurveyedGround ground =
                    SurveyedGround.fit(hole.green(), survey.get().points(), policy);
            return readings.isEmpty() ? ground : ground.withReadings(readings);
        } catch (SurveyTooThin tooThin) {
            return ground(hole, Optional.empty(), readings, policy); // said when the survey was imported
        }
    }
}
