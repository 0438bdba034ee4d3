package org.cupwright.app.desk;

import java.util.Optional;

/** Surveys of greens, each with every version that was ever imported. */
public interface SurveyStore {
    /** The newest survey of a green. */
    Optional<GreenSurvey> find(String courseId, String holeId);

    void add(String courseId, GreenSurvey survey);
}
