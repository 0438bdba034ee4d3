package org.cupwright.app.desk.day;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;

/**
 * The day a person asks about.
 *
 * @param date the day; empty: today on the course
 * @param speed green speed, taken as the day's fastest with nothing added; empty: as it was read, else the policy's
 * @param rain whether rain is expected during play; empty: as the forecast has it
 * @param ground a file of what lies on the greens
 */
public record DayQuestion(
        Optional<LocalDate> date, Optional<DaySpeed> speed, Optional<DayRain> rain, Optional<SourceFile> ground) {
    /** What is known of a day without being told. */
    public static DayQuestion of(LocalDate date) {
        return new DayQuestion(Optional.of(date), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
