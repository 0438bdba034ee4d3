package org.cupwright.app.desk.intake;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.ChangedMeanwhile;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.drawn.DrawnFile;
import org.cupwright.app.desk.drawn.DrawnLeftBehind;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.intake.ImportResult.GreenKnown;
import org.cupwright.app.desk.intake.ImportResult.Points;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.app.storage.Stores;
import org.cupwright.app.storage.Versions;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.items.ReadDrawn;
import org.cupwright.formats.outlines.OutlineRequest;
import org.cupwright.formats.outlines.ReadCourse;
import org.cupwright.green.RestsOn;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/**
 * Makes a course, or betters one, from the files a person has.
 *
 * <p>Everything is read and checked before anything is stored; what is stored is stored in one transaction.
 *
 * @param today whose policy says how what was measured is taken
 */
public record ImportCourse(Session session, LocalDate today) {
    /** What is known of a course before the import. */
    private record Before(
            Optional<Course> course,
            Policy policy,
            Set<String> surveyed,
            LevelSpots levels,
            DrawnOnCourse drawn,
            Versions versions) {
        static Before of(Stores stores, String courseId, LocalDate today) {
            return new Before(
                    stores.courses().find(courseId),
                    stores.policies().history(courseId).at(today),
                    stores.surveys().surveyed(courseId),
                    stores.surveys().levels(courseId),
                    stores.drawn().of(courseId),
                    stores.versions(courseId, today));
        }
    }

    /** What the files add. */
    private record Added(
            Points points,
            List<GreenSurvey> surveys,
            Optional<LevelSpots> levels,
            List<ReadDrawn.Item> drawn,
            Optional<String> unit) {
        Added without(Set<String> known) {
            List<GreenSurvey> others = surveys.stream()
                    .filter(survey -> !known.contains(survey.hole()))
                    .toList();
            return new Added(points, others, levels, drawn, unit);
        }
    }

    /** The holes of surveys that are, point by point, the newest one there is. */
    private static Set<String> known(Stores stores, Course course, List<GreenSurvey> surveys) {
        Set<String> known = new LinkedHashSet<>();
        for (GreenSurvey survey : surveys) {
            stores.surveys()
                    .find(course.id(), survey.hole())
                    .filter(newest -> newest.points().sameAs(survey.points()) && saysNothingNew(survey, newest))
                    .ifPresent(newest -> known.add(survey.hole()));
        }
        return known;
    }

    /** Whether the kind is not said, or said already, and strips tell nothing, or what is known already. */
    private static boolean saysNothingNew(GreenSurvey survey, GreenSurvey newest) {
        return isKnown(survey.points().kind(), newest.points().kind())
                && isKnown(survey.points().measured(), newest.points().measured());
    }

    private static <T> boolean isKnown(Optional<T> said, Optional<T> before) {
        return said.isEmpty() || said.equals(before);
    }

    public ImportResult run(ImportRequest request, Progress progress) {
        checkId(request.courseId());
        Before before = session.read(stores -> Before.of(stores, request.courseId(), today));
        List<FileFinding> findings = new ArrayList<>();
        Course course = course(request, before.course(), findings);
        if (request.outlines().isPresent()) {
            findings.addAll(DrawnLeftBehind.by(
                    course, before.drawn(), request.outlines().get()));
        }
        Added read = added(request, course, before.policy(), findings, progress);
        Set<String> known = session.read(stores -> known(stores, course, read.surveys()));
        Added added = read.without(known);
        if (!request.dryRun()) {
            session.decide(Right.SURVEY, stores -> {
                Versions now = stores.versions(course.id(), today);
                new ChangedMeanwhile(stores, course.id(), before.versions(), now)
                        .refuse(Part.COURSE, Part.SURVEYS, Part.LEVELS, Part.DRAWN, Part.POLICY);
                return store(stores, course, added);
            });
        }
        return new ImportResult(
                course,
                added.unit(),
                added.points(),
                known(course, before, added),
                added.drawn(),
                List.copyOf(known),
                findings,
                !request.dryRun());
    }

    private static Course store(Stores stores, Course course, Added added) {
        stores.courses().add(course);
        added.surveys().forEach(survey -> stores.surveys().add(course.id(), survey));
        added.levels()
                .ifPresent(levels -> stores.surveys()
                        .addLevels(
                                course.id(),
                                stores.surveys().levels(course.id()).with(levels)));
        if (!added.drawn().isEmpty()) {
            DrawnOnCourse all = stores.drawn().of(course.id());
            for (ReadDrawn.Item item : added.drawn()) {
                all = all.with(item);
            }
            stores.drawn().add(course.id(), all);
        }
        return course;
    }

    private static List<GreenKnown> known(Course course, Before before, Added added) {
        Set<String> surveyed = new HashSet<>(before.surveyed());
        added.surveys().forEach(survey -> surveyed.add(survey.hole()));
        LevelSpots levels = before.levels().with(added.levels().orElse(LevelSpots.none()));
        List<GreenKnown> known = new ArrayList<>();
        for (Hole hole : course.holes()) {
            RestsOn withoutSurvey = levels.of(hole.id()).isEmpty() ? RestsOn.OUTLINE : RestsOn.LEVELS;
            RestsOn restsOn = surveyed.contains(hole.id()) ? RestsOn.SURVEY : withoutSurvey;
            known.add(new GreenKnown(hole.id(), hole.green().areaSquareMetres(), restsOn));
        }
        return known;
    }

    private Added added(
            ImportRequest request, Course course, Policy policy, List<FileFinding> findings, Progress progress) {
        Optional<LevelSpots> levels =
                request.levels().map(file -> LevelReadingFile.read(file, course, policy, findings));
        List<ReadDrawn.Item> drawn = request.drawn()
                .map(file -> drawn(DrawnFile.read(file, course, policy), request.dryRun(), findings))
                .orElse(List.of());
        List<SourceFile> files = request.elevation();
        if (files.isEmpty()) {
            return new Added(Points.NONE, List.of(), levels, drawn, Optional.empty());
        }
        SurveyIntake.Taken taken = new SurveyIntake(session, course, policy).take(files, request.survey(), progress);
        findings.addAll(taken.findings());
        return new Added(taken.points(), taken.surveys(), levels, drawn, Optional.of(taken.unit()));
    }

    /** All of it or nothing; a dry run shows everything that does not read. */
    private static List<ReadDrawn.Item> drawn(DrawnFile file, boolean dryRun, List<FileFinding> findings) {
        if (!dryRun) {
            return file.items();
        }
        findings.addAll(file.findings());
        return file.readable();
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
        ReadCourse read = MapFile.read(file, wanted);
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
        } catch (UnreadableFile unknown) {
            throw new Problem(
                    unknown.finding().says(),
                    List.of(Message.of("where.field", new Message.Field("crs"))),
                    unknown.finding().value(),
                    unknown.finding().tryThis());
        }
    }

    private static void checkId(String id) {
        if (!id.matches(Course.ID_PATTERN)) {
            throw Problem.of("courseId", "course", id);
        }
    }

    private static Problem noOutlines(String id) {
        return Problem.of("noOutlines", "outlines", "", new Name(id));
    }
}
