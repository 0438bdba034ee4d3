package org.cupwright.app.desk;

import java.util.Optional;
import java.util.Set;

/** What was measured on greens, each with every version that was ever imported. */
public interface SurveyStore {
    /** The newest survey of a green. */
    Optional<GreenSurvey> find(String courseId, String holeId);

    /** The holes whose greens have a survey; the points are not read. */
    Set<String> surveyed(String courseId);

    void add(String courseId, GreenSurvey survey);

    /** The newest level spots of a course. */
    LevelSpots levels(String courseId);

    void addLevels(String courseId, LevelSpots spots);
}
