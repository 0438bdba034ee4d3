package org.cupwright.app.storage;

import org.cupwright.green.SurveyPoints;

/**
 * The surveyed points of one green, as they were imported.
 *
 * @param hole the hole
 * @param points in the course's frame, metres; with their kind where it was said, and with what they share of their
 *     errors where the survey has shown it
 * @param origin where the points came from
 */
public record GreenSurvey(String hole, SurveyPoints points, Origin origin) {
    /**
     * Where a survey came from.
     *
     * @param epsg the frame the file was in
     * @param unit the unit the file was in, as its symbol
     * @param file the file's name
     */
    public record Origin(int epsg, String unit, String file) {}
}
