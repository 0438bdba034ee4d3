package org.cupwright.app.desk.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.files.SourceFile;

/**
 * An entry for the logbook as a person gives it.
 *
 * @param kind the kind of entry
 * @param holes the holes it is about, one fact each; {@code all} for every hole of the course; empty for the whole
 *     course
 * @param where the place on the green
 * @param radiusMetres how far about the place the ground is meant
 * @param asPlanned cut where the day's plan had it
 * @param day the day it happened; empty: today on the course
 * @param when the time; empty: now, or the morning of a day that is not today
 * @param parts further parts by name
 * @param photo a photo to keep with it, where the kind takes one
 * @param sure whether an entry that looks wrong is meant
 */
public record Entry(
        String kind,
        List<String> holes,
        Optional<Spot> where,
        OptionalDouble radiusMetres,
        boolean asPlanned,
        Optional<LocalDate> day,
        Optional<String> when,
        Map<String, String> parts,
        Optional<SourceFile> photo,
        boolean sure) {
    public Entry {
        holes = List.copyOf(holes);
        parts = Map.copyOf(parts);
    }
}
