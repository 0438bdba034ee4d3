package org.cupwright.app.desk.intake;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.green.SurveyKind;
import org.cupwright.units.Heading;
import org.cupwright.units.LengthUnit;

/**
 * What a person hands in to make or to better a course.
 *
 * @param courseId short name of the course
 * @param zone the zone whose days are the course's, for a new course
 * @param outlines the map file with the greens' outlines; may be left out for a course that exists
 * @param towards directions of play by hole, which go before the map's lines
 * @param elevation survey files
 * @param levels a file of level spots
 * @param drawn a file of good and bad ground and usual spots as people drew or listed them
 * @param survey how the survey files are to be read
 * @param dryRun whether to look only and store nothing
 */
public record ImportRequest(
        String courseId,
        ZoneId zone,
        Optional<SourceFile> outlines,
        Map<String, Heading> towards,
        List<SourceFile> elevation,
        Optional<SourceFile> levels,
        Optional<SourceFile> drawn,
        SurveyOptions survey,
        boolean dryRun) {
    public ImportRequest {
        towards = Map.copyOf(towards);
        elevation = List.copyOf(elevation);
    }

    /**
     * How survey files are to be read.
     *
     * @param epsg the frame they are in; empty: what the file says, else the course's
     * @param unit the unit of x, y and z
     * @param classes point classes to keep; empty: all, or ground where the file tells classes
     * @param columns the order of a text file's columns
     * @param kind how the ground was surveyed; empty: as it looks likeliest
     * @param unchanged whether the ground is as it was at the survey before
     */
    public record SurveyOptions(
            OptionalInt epsg,
            Optional<LengthUnit> unit,
            Set<Integer> classes,
            Optional<String> columns,
            Optional<SurveyKind> kind,
            boolean unchanged) {
        public SurveyOptions {
            classes = Set.copyOf(classes);
        }

        /** As the files say themselves. */
        public static SurveyOptions asTheFilesSay() {
            return new SurveyOptions(
                    OptionalInt.empty(), Optional.empty(), Set.of(), Optional.empty(), Optional.empty(), false);
        }
    }
}
