package org.cupwright.app.desk.day;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.desk.files.SourceFile;

/**
 * The day a person asks about.
 *
 * @param date the day; empty: today on the course
 * @param speedFeet green speed, taken as the day's fastest with nothing added; empty: the policy's
 * @param rain whether rain is expected during play
 * @param ground a file of what lies on the greens
 */
public record DayQuestion(
        Optional<LocalDate> date, Optional<Double> speedFeet, boolean rain, Optional<SourceFile> ground) {}
