package org.cupwright.app.cli.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.answers.FindingText;
import org.cupwright.app.answers.json.FindingJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.intake.ImportResult;
import org.cupwright.app.desk.intake.ImportResult.GreenKnown;
import org.cupwright.app.texts.Texts;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.JsonNode;

/** The result of an import as a page and as JSON. */
final class ImportPrint {
    private final Texts texts;

    ImportPrint(Texts texts) {
        this.texts = texts;
    }

    String page(ImportResult result) {
        List<String> lines = new ArrayList<>();
        int epsg = result.course().frame().epsg();
        lines.add(
                texts.say("import.title", result.course().name(), result.holes().size(), "EPSG:" + epsg));
        if (result.points().read() > 0) {
            lines.add(texts.say(
                    "import.points", result.points().read(), result.points().kept()));
        }
        if (!result.drawn().isEmpty()) {
            lines.add(texts.say(
                    "import.drawn", result.count(Kind.GOOD), result.count(Kind.BAD), result.count(Kind.USUAL)));
        }
        if (!result.knownAlready().isEmpty()) {
            lines.addAll(
                    Layout.wrapped("", texts.say("import.knownAlready", String.join(", ", result.knownAlready()))));
        }
        lines.add("");
        lines.add(Layout.left(texts.say("column.hole"), 8) + Layout.right(texts.say("column.area"), 9) + "   "
                + texts.say("column.knowledge"));
        for (GreenKnown green : result.holes()) {
            lines.add(Layout.left(green.hole(), 8) + Layout.right(texts.area(green.areaSquareMetres()), 9) + "   "
                    + texts.say("restsOn." + EnumNames.lowerCamel(green.restsOn())));
        }
        lines.addAll(findings(result));
        lines.add("");
        lines.add(texts.say(result.stored() ? "import.stored" : "import.dryRun"));
        if (result.stored() && result.points().kept() > 0) {
            lines.add(texts.say("import.seeFindings"));
        }
        return String.join(System.lineSeparator(), lines);
    }

    private List<String> findings(ImportResult result) {
        List<String> lines = new ArrayList<>();
        if (!result.findings().isEmpty()) {
            lines.add("");
            lines.add(texts.say("import.findings", result.findings().size()));
        }
        Map<FindingKind, List<FileFinding>> byKind = result.findings().stream()
                .collect(Collectors.groupingBy(
                        found -> found.finding().kind(), LinkedHashMap::new, Collectors.toList()));
        byKind.values().forEach(alike -> lines.addAll(finding(alike)));
        return lines;
    }

    /** The first of a kind in full, and where the others are. */
    private List<String> finding(List<FileFinding> alike) {
        FileFinding first = alike.get(0);
        Optional<String> where = Optional.of(FindingText.where(texts, first));
        List<String> lines = Layout.hanging(4, "  – ", FindingText.says(texts, first.finding(), where));
        lines.addAll(Layout.wrapped("    ", texts.say(first.finding().tryThis())));
        String others = alike.stream()
                .map(found -> found.finding().where())
                .filter(place -> !place.equals(first.finding().where()))
                .map(texts::say)
                .distinct()
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            lines.addAll(Layout.wrapped("    ", texts.say("import.others", others)));
        }
        return lines;
    }

    JsonNode json(ImportResult result) {
        return new FindingJson(texts).imported(result);
    }
}
