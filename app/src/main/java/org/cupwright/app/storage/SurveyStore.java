package org.cupwright.app.storage;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What was measured on greens, each with every version that was ever imported. */
public interface SurveyStore {
    /** The newest survey of a green. */
    Optional<GreenSurvey> find(String courseId, String holeId);

    /** Every survey of a green that was ever imported, the oldest first; the points are not read. */
    List<SurveyVersion> versions(String courseId, String holeId);

    /** One of them. */
    Optional<GreenSurvey> find(String courseId, String holeId, SurveyVersion version);

    /** The holes whose greens have a survey; the points are not read. */
    Set<String> surveyed(String courseId);

    void add(String courseId, GreenSurvey survey);

    /** The newest level spots of a course. */
    LevelSpots levels(String courseId);

    /** The level spots of a course as they were known before a moment. */
    LevelSpots levelsBefore(String courseId, Instant moment);

    void addLevels(String courseId, LevelSpots spots);
}
