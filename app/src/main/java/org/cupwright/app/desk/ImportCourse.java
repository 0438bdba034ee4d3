package org.cupwright.app.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.ImportResult.FileFinding;
import org.cupwright.app.desk.ImportResult.GreenKnown;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.green.RestsOn;
import org.cupwright.green.survey.CoordinateFrame;
import org.cupwright.green.survey.UnreadableSurvey;
import org.cupwright.green.survey.outlines.OutlineRequest;
import org.cupwright.green.survey.outlines.ReadCourse;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/**
 * Makes a course, or betters one, from the files a person has.
 *
 * <p>Everything is read and checked before anything is stored; what is stored is stored in one transaction.
 */
public final class ImportCourse {
    private final DataFolder folder;

    public ImportCourse(DataFolder folder) {
        this.folder = folder;
    }

    public ImportResult run(ImportRequest request) {
        checkId(request.courseId());
        Optional<Course> before = folder.read(stores -> stores.courses().find(request.courseId()));
        List<FileFinding> findings = new ArrayList<>();
        Course course = course(request, before, findings);
        List<GreenKnown> greens =
                course.holes().stream().map(hole -> known(hole)).toList();
        if (!request.dryRun()) {
            folder.write(stores -> stores.courses().add(course));
        }
        return new ImportResult(
                course, Optional.empty(), ImportResult.Points.NONE, greens, findings, !request.dryRun());
    }

    private static GreenKnown known(Hole hole) {
        return new GreenKnown(hole.id(), hole.green().areaSquareMetres(), RestsOn.OUTLINE);
    }

    private static Course course(ImportRequest request, Optional<Course> before, List<FileFinding> findings) {
        if (request.outlines().isEmpty()) {
            return before.orElseThrow(() -> noOutlines(request.courseId()));
        }
        SourceFile file = request.outlines().get();
        OutlineRequest wanted = new OutlineRequest(
                request.courseId(),
                before.map(Course::name),
                before.map(course -> course.frame().zone()).orElse(request.zone()),
                frame(request, before),
                request.towards());
        ReadCourse read = OutlineReading.read(file, wanted);
        read.findings().forEach(finding -> findings.add(new FileFinding(file.name(), finding)));
        return read.course();
    }

    /** A course keeps its frame: its surveys are in it. A new one takes that of its first survey. */
    private static Optional<CoordinateFrame> frame(ImportRequest request, Optional<Course> before) {
        if (before.isPresent()) {
            return before.map(course -> CoordinateFrame.of(course.frame().epsg()));
        }
        if (request.elevation().isEmpty() || request.survey().epsg().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(surveyFrame(request.survey().epsg().getAsInt()));
    }

    /** The frame of a code that a person gave. */
    static CoordinateFrame surveyFrame(int epsg) {
        try {
            return CoordinateFrame.of(epsg);
        } catch (UnreadableSurvey unknown) {
            throw new Problem(
                    unknown.finding().says(),
                    List.of(Message.of("where.option", new Name("--crs"))),
                    unknown.finding().value(),
                    unknown.finding().tryThis());
        }
    }

    private static void checkId(String id) {
        if (!id.matches(Course.ID_PATTERN)) {
            throw Problem.of(
                    Message.of("problem.courseId"),
                    Message.of("where.option", new Name("--course")),
                    id,
                    Message.of("try.courseId"));
        }
    }

    private static Problem noOutlines(String id) {
        return Problem.of(
                Message.of("problem.noOutlines", new Name(id)),
                Message.of("where.option", new Name("--outlines")),
                "",
                Message.of("try.noOutlines"));
    }
}
