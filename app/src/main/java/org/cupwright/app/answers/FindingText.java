package org.cupwright.app.answers;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.findings.GreenFindings;
import org.cupwright.app.desk.intake.ImportResult;
import org.cupwright.app.desk.intake.ImportResult.GreenKnown;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.green.RestsOn;
import org.cupwright.green.agreement.SurveyAgainstReadings;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.policy.EnumNames;

/** What is doubtful about files, and about the ground of greens, in words. */
public record FindingText(Texts texts, Lines lines) {
    /** Of one kind on one green no more are listed; JSON, GeoJSON and the counts have all of them. Our choice. */
    private static final int MOST_OF_A_KIND = 6;

    public FindingText(Texts texts) {
        this(texts, new Lines(texts));
    }

    /** The file, by its name alone, and where in it. */
    public static String where(Texts texts, FileFinding found) {
        return Path.of(found.file()).getFileName() + ", "
                + texts.say(found.finding().where());
    }

    /** What is doubtful green by green, the worst first, then which surveys were held against too few readings. */
    public Lines ground(FindDoubts.Answer answer) {
        CourseDay day = answer.day();
        PlaceText places = new PlaceText(texts, day.course(), day.policy());
        lines.say("findings.title", day.course().name(), texts.day(day.date()));
        answer.greens().forEach(green -> green(green, places));
        String unread = answer.greens().stream()
                .filter(green -> green.restsOn() == RestsOn.SURVEY)
                .filter(green -> green.readings() < SurveyAgainstReadings.LEAST_READINGS)
                .map(green -> green.hole().id())
                .collect(Collectors.joining(", "));
        return unread.isEmpty() ? lines : lines.gap().wrapped("", texts.say("findings.unread", unread));
    }

    private void green(GreenFindings green, PlaceText places) {
        lines.heading(
                "findings.green",
                green.hole().id(),
                texts.say("restsOn." + EnumNames.lowerCamel(green.restsOn())),
                green.readings(),
                green.findings().size());
        List<Alike> all = alike(green, places);
        all.forEach(this::alike);
        if (all.isEmpty()) {
            lines.wrapped("    ", texts.say("findings.none"));
        }
    }

    /**
     * Findings of one kind on one green.
     *
     * @param first the number of the first of them
     * @param says what was found, and where
     * @param more how many more there are of the kind than are listed
     * @param tryThis what to do about them
     */
    public record Alike(int first, List<String> says, int more, List<String> tryThis) {}

    /** What is doubtful about one green, the worst first, kind by kind. */
    public List<Alike> alike(GreenFindings green, PlaceText places) {
        List<Finding> all =
                green.findings().stream().map(GroundFinding::finding).toList();
        List<Alike> kinds = new ArrayList<>();
        int number = 1;
        for (List<Finding> alike : Lines.alike(all, Finding::kind)) {
            kinds.add(alike(green.hole(), alike, number, places));
            number += alike.size();
        }
        return kinds;
    }

    /** Findings of one kind, and once what to do about them. */
    private Alike alike(Hole hole, List<Finding> alike, int first, PlaceText places) {
        List<String> says = alike.stream()
                .limit(MOST_OF_A_KIND)
                .map(found -> says(found, found.place().map(place -> places.at(hole.id(), place))))
                .toList();
        List<String> tryThis = alike.stream()
                .map(found -> texts.say(found.tryThis()))
                .distinct()
                .toList();
        return new Alike(first, says, Math.max(0, alike.size() - MOST_OF_A_KIND), tryThis);
    }

    private void alike(Alike alike) {
        int number = alike.first();
        for (String says : alike.says()) {
            lines.wrapped(List.of(Line.right(Integer.toString(number++), 3), new Line.Cell(" ", 0)), says);
        }
        if (alike.more() > 0) {
            lines.wrapped("    ", texts.say("findings.more", alike.more()));
        }
        alike.tryThis().forEach(tryThis -> lines.wrapped("    ", tryThis));
    }

    /** What an import made, and what is doubtful about its files. */
    public Lines imported(ImportResult result) {
        List<String> known = result.knownAlready();
        lines.say(
                "import.title",
                result.course().name(),
                result.holes().size(),
                "EPSG:" + result.course().frame().epsg());
        if (result.points().read() > 0) {
            lines.say("import.points", result.points().read(), result.points().kept());
        }
        if (!result.drawn().isEmpty()) {
            lines.say(
                    "import.drawn",
                    result.count(Kind.GOOD),
                    result.count(Kind.BAD),
                    result.count(Kind.USUAL),
                    result.count(Kind.AREA));
        }
        if (!known.isEmpty()) {
            lines.wrapped("", texts.say("import.knownAlready", String.join(", ", known)));
        }
        lines.gap();
        row(texts.say("column.hole"), texts.say("column.area"), texts.say("column.knowledge"));
        for (GreenKnown green : result.holes()) {
            String knowledge = texts.say("restsOn." + EnumNames.lowerCamel(green.restsOn()));
            row(green.hole(), texts.area(green.areaSquareMetres()), knowledge);
        }
        files(result.findings());
        lines.heading(result.stored() ? "import.stored" : "import.dryRun");
        return result.stored() && result.points().kept() > 0 ? lines.say("import.seeFindings") : lines;
    }

    private void row(String hole, String area, String knowledge) {
        lines.row(List.of(Line.left(hole, 8), Line.right(area, 9)), "   " + knowledge);
    }

    /** The first of a kind in full, and where the others are. */
    private void files(List<FileFinding> findings) {
        if (!findings.isEmpty()) {
            lines.heading("import.findings", findings.size());
        }
        for (List<FileFinding> alike :
                Lines.alike(findings, found -> found.finding().kind())) {
            FileFinding file = alike.get(0);
            Finding first = file.finding();
            lines.wrapped("  – ", says(first, Optional.of(where(texts, file))));
            lines.wrapped("    ", texts.say(first.tryThis()));
            String others = alike.stream()
                    .map(found -> found.finding().where())
                    .filter(place -> !place.equals(first.where()))
                    .map(texts::say)
                    .distinct()
                    .collect(Collectors.joining(", "));
            if (!others.isEmpty()) {
                lines.wrapped("    ", texts.say("import.others", others));
            }
        }
    }

    /** What was found, and where. */
    private String says(Finding finding, Optional<String> where) {
        return texts.say(finding.says()) + where.map(text -> " (" + text + ")").orElse("");
    }
}
