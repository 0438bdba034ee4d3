package org.cupwright.app.cli.survey;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.FindingText;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.intake.ImportResult;
import org.cupwright.app.desk.intake.ImportResult.GreenKnown;
import org.cupwright.app.desk.intake.ImportResult.Points;
import org.cupwright.app.texts.Texts;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.node.ObjectNode;

/** The result of an import as a page and as JSON. */
final class ImportPrint {
    private final Texts texts;
    private final FindingText points;

    ImportPrint(Texts texts) {
        this.texts = texts;
        this.points = new FindingText(texts);
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
                    "import.drawn", count(result, Kind.GOOD), count(result, Kind.BAD), count(result, Kind.USUAL)));
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

    private static long count(ImportResult result, Kind kind) {
        return result.drawn().stream()
                .filter(item -> item.word().kind() == kind)
                .count();
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
        List<String> lines = new ArrayList<>(points.says("  –", first.finding(), Optional.of(where(first))));
        lines.addAll(points.tryThis(first.finding()));
        String others = alike.stream()
                .map(found -> found.finding().where())
                .filter(where -> !where.equals(first.finding().where()))
                .map(texts::say)
                .distinct()
                .collect(Collectors.joining(", "));
        if (!others.isEmpty()) {
            lines.addAll(Layout.wrapped("    ", texts.say("import.others", others)));
        }
        return lines;
    }

    private String where(FileFinding found) {
        return Path.of(found.file()).getFileName() + ", "
                + texts.say(found.finding().where());
    }

    ObjectNode json(ImportResult result) {
        ObjectNode node = Json.object();
        node.put("course", result.course().id());
        node.put("crs", "EPSG:" + result.course().frame().epsg());
        node.set("unit", Json.text(result.unit()));
        node.set("points", json(result.points()));
        node.set(
                "holes",
                Json.array(result.holes().stream().map(ImportPrint::json).toList()));
        node.set("knownAlready", Json.texts(result.knownAlready()));
        ObjectNode drawn = node.putObject("drawn");
        for (Kind kind : Kind.values()) {
            drawn.put(EnumNames.lowerCamel(kind), count(result, kind));
        }
        node.set(
                "findings",
                Json.array(result.findings().stream().map(this::json).toList()));
        node.put("stored", result.stored());
        return node;
    }

    private static ObjectNode json(Points points) {
        ObjectNode node = Json.object();
        node.put("read", points.read());
        node.put("kept", points.kept());
        ObjectNode byClass = node.putObject("byClass");
        new TreeMap<>(points.byClass()).forEach((code, count) -> byClass.put(code.toString(), count));
        return node;
    }

    private static ObjectNode json(GreenKnown green) {
        ObjectNode node = Json.object();
        node.put("hole", green.hole());
        node.set("areaSquareMetres", Json.number(green.areaSquareMetres()));
        node.put("restsOn", EnumNames.lowerCamel(green.restsOn()));
        return node;
    }

    private ObjectNode json(FileFinding found) {
        return points.json(found.finding(), where(found));
    }
}
