package org.cupwright.app.cli.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import org.cupwright.app.answers.FindingText;
import org.cupwright.app.answers.json.FindingJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.intake.ImportCourse;
import org.cupwright.app.desk.intake.ImportRequest;
import org.cupwright.app.desk.intake.ImportRequest.SurveyOptions;
import org.cupwright.app.desk.intake.ImportResult;
import org.cupwright.green.SurveyKind;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Heading;
import org.cupwright.units.LengthUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Makes a course, or betters one, from files. */
@Command(
        name = "import",
        description =
                "Makes a course from a map of its greens, or adds a survey. Without --elevation the greens' outlines"
                        + " are enough to plan with.")
public final class ImportCommand extends CourseCommand {
    @Option(
            names = "--outlines",
            paramLabel = "FILE",
            description = "Greens, lines of play, bunkers, water: GeoJSON, or OpenStreetMap XML, with golf tags.")
    private Path outlines;

    @Option(
            names = "--towards",
            paramLabel = "HOLE=DEGREES",
            description = "Direction of play at a green, clockwise from north on the map. May be repeated.")
    private Map<String, Double> towards = new LinkedHashMap<>();

    @Option(names = "--elevation", paramLabel = "FILE", description = "A survey of the ground. May be repeated.")
    private List<Path> elevation = new ArrayList<>();

    @Option(names = "--levels", paramLabel = "FILE", description = "Slopes read with a level: CSV.")
    private Path levels;

    @Option(
            names = "--drawn",
            paramLabel = "FILE",
            description = "Good and bad ground and usual spots as people drew or listed them: GeoJSON or CSV.")
    private Path drawn;

    @Option(
            names = "--crs",
            paramLabel = "EPSG:n",
            description = "The frame the survey is in. Default: what the file says, else the course's.")
    private String crs;

    @Option(names = "--unit", paramLabel = "m|ft|usft", description = "Unit of the survey's x, y and z.")
    private String unit;

    @Option(names = "--class", paramLabel = "N", description = "Keep points of this class only. May be repeated.")
    private Set<Integer> classes = new LinkedHashSet<>();

    @Option(names = "--columns", paramLabel = "x,y,z", description = "The columns of a text survey, in their order.")
    private String columns;

    @Option(
            names = "--kind",
            paramLabel = "lidar|drone|rtk|scan|levelled",
            description = "How the ground was surveyed: from an aircraft, from a drone's photographs, with a satellite"
                    + " receiver, a scanner on a tripod, or a level or total station. Default: as it looks likeliest.")
    private String kind;

    @Option(
            names = "--unchanged",
            description = "The ground is as it was at the survey before, nothing was built or levelled: the two then"
                    + " show how far neighbouring points are off together.")
    private boolean unchanged;

    @Option(names = "--dry-run", description = "Look only; store nothing.")
    private boolean dryRun;

    @Override
    protected void run(Task task) {
        ImportCourse importing = new ImportCourse(task.session(), task.day());
        ImportResult result = importing.run(request(task), task.progress());
        task.answer(
                () -> new FindingJson(task.texts()).imported(result),
                () -> new FindingText(task.texts()).imported(result));
    }

    private ImportRequest request(Task task) {
        String course = task.options().course().orElseThrow(() -> wrong("Say which course: --course ID.", ""));
        Map<String, Heading> headings = new TreeMap<>();
        towards.forEach((hole, degrees) -> headings.put(hole, heading(degrees)));
        return new ImportRequest(
                course,
                task.session().clock().getZone(),
                Optional.ofNullable(outlines).map(ImportCommand::file),
                headings,
                elevation.stream().map(ImportCommand::file).toList(),
                Optional.ofNullable(levels).map(ImportCommand::file),
                Optional.ofNullable(drawn).map(ImportCommand::file),
                surveyOptions(),
                dryRun);
    }

    private SurveyOptions surveyOptions() {
        return new SurveyOptions(
                crs == null ? OptionalInt.empty() : OptionalInt.of(epsg(crs)),
                Optional.ofNullable(unit).map(this::lengthUnit),
                classes,
                Optional.ofNullable(columns),
                Optional.ofNullable(kind).map(this::surveyKind),
                unchanged);
    }

    private int epsg(String text) {
        if (!text.matches("(?i)(EPSG:)?[0-9]{4,6}")) {
            throw wrong("--crs takes a code such as EPSG:2154, not '" + text + "'.", text);
        }
        return Integer.parseInt(text.replaceFirst("(?i)EPSG:", ""));
    }

    private LengthUnit lengthUnit(String text) {
        return java.util.Arrays.stream(LengthUnit.values())
                .filter(known -> known.symbol().equals(text))
                .findFirst()
                .orElseThrow(() -> wrong("--unit takes m, ft or usft, not '" + text + "'.", text));
    }

    private SurveyKind surveyKind(String text) {
        return EnumNames.find(SurveyKind.class, text)
                .orElseThrow(
                        () -> wrong("--kind takes lidar, drone, rtk, scan or levelled, not '" + text + "'.", text));
    }

    private Heading heading(double degrees) {
        if (!Double.isFinite(degrees)) {
            throw wrong("--towards takes degrees, not " + degrees + ".", Double.toString(degrees));
        }
        return Heading.ofDegrees(degrees);
    }

    private static SourceFile file(Path path) {
        return SourceFile.at(path);
    }
}
