package org.cupwright.app.desk;

import org.cupwright.green.SurveyPoints;

/**
 * The surveyed points of one green, as they were imported.
 *
 * @param hole the hole
 * @param points in the course's frame, metres
 * @param epsg the frame the file was in
 * @param unit the unit the file was in, as its symbol
 * @param source the file's name
 */
public record GreenSurvey(String hole, SurveyPoints points, int epsg, String unit, String source) {}
