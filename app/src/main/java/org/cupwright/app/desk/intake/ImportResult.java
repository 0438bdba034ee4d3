package org.cupwright.app.desk.intake;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.course.Course;
import org.cupwright.formats.items.ReadDrawn;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.RestsOn;

/**
 * What an import made, and what it found.
 *
 * @param course the course as it is now, or would be after a dry run
 * @param unit the unit of the survey files, as its symbol; empty without any
 * @param points the survey's points
 * @param holes each green and what its ground rests on
 * @param drawn the ground that people drew, as the file has it
 * @param knownAlready holes whose survey is the newest one there is, point by point, so that nothing was added
 * @param findings problems of the files, with what to try
 * @param stored whether it was stored
 */
public record ImportResult(
        Course course,
        Optional<String> unit,
        Points points,
        List<GreenKnown> holes,
        List<ReadDrawn.Item> drawn,
        List<String> knownAlready,
        List<FileFinding> findings,
        boolean stored) {
    public ImportResult {
        holes = List.copyOf(holes);
        drawn = List.copyOf(drawn);
        knownAlready = List.copyOf(knownAlready);
        findings = List.copyOf(findings);
    }

    /** How many of the drawn are of a kind. */
    public long count(PersonsOpinion.Kind kind) {
        return drawn.stream().filter(item -> item.word().kind() == kind).count();
    }

    /**
     * How many points there were.
     *
     * @param read in the files
     * @param kept near greens, of the classes wanted
     * @param byClass read points by class, where the files tell classes
     */
    public record Points(long read, long kept, Map<Integer, Long> byClass) {
        public static final Points NONE = new Points(0, 0, Map.of());

        public Points {
            byClass = Map.copyOf(byClass);
        }
    }

    /** A green and what its ground rests on. */
    public record GreenKnown(String hole, double areaSquareMetres, RestsOn restsOn) {}
}
