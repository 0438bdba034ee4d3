package org.cupwright.app.desk.intake;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.course.Hole;
import org.cupwright.green.Sharing;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.strips.StripTold;
import org.cupwright.green.strips.StripTold.Why;
import org.cupwright.green.strips.TwoSurveys;

/**
 * The survey that a green had before one that is brought in, on ground that has not changed since.
 *
 * @param points its points; empty where there is none
 */
record EarlierSurvey(Optional<SurveyPoints> points) {
    /** The newest that is not the very survey that is brought in: that may have come in before. */
    static EarlierSurvey of(Stores stores, String courseId, GreenSurvey survey) {
        List<SurveyVersion> versions = stores.surveys().versions(courseId, survey.hole());
        for (int i = versions.size() - 1; i >= 0; i--) {
            Optional<SurveyPoints> points = stores.surveys()
                    .find(courseId, survey.hole(), versions.get(i))
                    .map(GreenSurvey::points)
                    .filter(before -> !before.sameAs(survey.points()));
            if (points.isPresent()) {
                return new EarlierSurvey(points);
            }
        }
        return new EarlierSurvey(Optional.empty());
    }

    /** What the two tell of the errors that points share. */
    StripTold tells(Hole hole, SurveyPoints survey, Sharing set) {
        return points.map(earlier -> TwoSurveys.tell(hole.green(), survey, earlier, set))
                .orElseGet(() -> StripTold.nothing(Why.NONE_EARLIER));
    }
}
