package org.cupwright.app.storage;

import java.time.Instant;
import java.util.Optional;
import org.cupwright.green.SurveyKind;

/**
 * One of the surveys of a green that are kept beside each other.
 *
 * @param number counted from 1, the oldest; the newest counts
 * @param recordedAt when it was imported
 * @param origin where its points came from
 * @param points how many there are
 * @param kind how the ground was surveyed, where somebody said
 */
public record SurveyVersion(
        int number, Instant recordedAt, GreenSurvey.Origin origin, int points, Optional<SurveyKind> kind) {}
