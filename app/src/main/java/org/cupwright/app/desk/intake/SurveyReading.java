package org.cupwright.app.desk.intake;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.intake.ImportRequest.SurveyOptions;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.course.Course;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.points.GreenPoints;
import org.cupwright.formats.points.PointCollector;
import org.cupwright.formats.points.PointRequest;
import org.cupwright.formats.points.PointsCsv;
import org.cupwright.green.SurveyPoints;
import org.cupwright.units.LengthUnit;

/** Reads the points of survey files and gives them to the greens they lie on. */
final class SurveyReading {
    private final Course course;
    private final SurveyOptions options;
    private final CoordinateFrame frame;

    SurveyReading(Course course, SurveyOptions options) {
        this.course = course;
        this.options = options;
        this.frame = options.epsg().isPresent()
                ? ImportCourse.surveyFrame(options.epsg().getAsInt())
                : CoordinateFrame.of(course.frame().epsg());
    }

    /** The points of all files together. */
    GreenPoints read(List<SourceFile> files, Progress progress) {
        progress.begin("files", files.size());
        PointRequest request = new PointRequest(Optional.of(frame), options.unit(), options.classes());
        PointCollector collector = new PointCollector(course, request);
        for (SourceFile file : files) {
            FileReading.read(file, in -> {
                PointsCsv.read(in, options.columns(), collector);
                return null;
            });
            progress.oneMore();
        }
        try {
            return collector.finish();
        } catch (UnreadableFile unreadable) {
            throw FileReading.problem(unreadable.finding(), names(files));
        }
    }

    /** The unit the files were read in. */
    LengthUnit unit() {
        return options.unit().orElseGet(() -> ofFrame(frame.unitMetres()));
    }

    private static LengthUnit ofFrame(double metres) {
        for (LengthUnit unit : LengthUnit.values()) {
            if (Math.abs(unit.toMetres(1) - metres) < 1e-8) {
                return unit;
            }
        }
        return LengthUnit.METRE;
    }

    GreenSurvey survey(String hole, SurveyPoints points, List<SourceFile> files) {
        SurveyPoints ofKind = options.kind().map(points::as).orElse(points);
        return new GreenSurvey(hole, ofKind, new Origin(frame.epsg(), unit().symbol(), names(files)));
    }

    static String names(List<SourceFile> files) {
        return files.stream().map(SourceFile::name).collect(Collectors.joining(" + "));
    }
}
