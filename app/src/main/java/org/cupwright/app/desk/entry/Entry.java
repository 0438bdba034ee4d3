package org.cupwright.app.desk.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.Photo;

/**
 * An entry for the logbook as a person gives it.
 *
 * @param holes the holes it is about, one fact each; {@code all} for every hole of the course; empty for the whole
 *     course
 * @param asPlanned cut where the day's plan had it
 * @param day the day it happened; empty: today on the course
 * @param says what it says of each hole, and when it happened; where that is left open, now, or the morning of a day
 *     that is not today
 * @param photo a photo to keep with it
 * @param sure whether an entry that looks wrong is meant
 * @param beside whether it stands beside what others wrote of the same hole, and corrects nothing of theirs
 */
public record Entry(
        List<String> holes,
        boolean asPlanned,
        Optional<LocalDate> day,
        Says says,
        Optional<Photo> photo,
        boolean sure,
        boolean beside) {
    public Entry {
        holes = List.copyOf(holes);
    }

    /** One that is made where all that others wrote can be seen. */
    public Entry(
            List<String> holes,
            boolean asPlanned,
            Optional<LocalDate> day,
            Says says,
            Optional<Photo> photo,
            boolean sure) {
        this(holes, asPlanned, day, says, photo, sure, false);
    }
}
