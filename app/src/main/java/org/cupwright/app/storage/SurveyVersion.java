package org.cupwright.app.storage;

import java.time.Instant;

/**
 * One of the surveys of a green that are kept beside each other.
 *
 * @param number counted from 1, the oldest; the newest counts
 * @param recordedAt when it was imported
 * @param origin where its points came from
 * @param points how many there are
 */
public record SurveyVersion(int number, Instant recordedAt, GreenSurvey.Origin origin, int points) {}
