package org.cupwright.app.cli.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.PositionJson;
import org.cupwright.app.cli.command.FindingText;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.findings.GreenFindings;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.RestsOn;
import org.cupwright.green.agreement.SurveyAgainstReadings;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** What is doubtful about greens as a page and as JSON. */
final class FindingsPrint {
    /** Of one kind on one green no more are listed; JSON, GeoJSON and the counts have all of them. Our choice. */
    private static final int MOST_OF_A_KIND = 6;

    private final Texts texts;
    private final FindDoubts.Answer answer;
    private final FindingText points;
    private final GreenPlaces places;
    private final double pace;

    FindingsPrint(Texts texts, FindDoubts.Answer answer) {
        this.texts = texts;
        this.answer = answer;
        this.points = new FindingText(texts);
        this.places = new GreenPlaces(answer.day().course(), answer.day().policy());
        this.pace = answer.day().policy().get(PlacePolicy.PACE_METRES);
    }

    List<String> page() {
        List<String> lines = new ArrayList<>();
        lines.add(texts.say(
                "findings.title",
                answer.day().course().name(),
                texts.day(answer.day().date())));
        answer.greens().forEach(green -> lines.addAll(green(green)));
        String unread = answer.greens().stream()
                .filter(green -> green.restsOn() == RestsOn.SURVEY)
                .filter(green -> green.readings() < SurveyAgainstReadings.LEAST_READINGS)
                .map(green -> green.hole().id())
                .collect(Collectors.joining(", "));
        if (!unread.isEmpty()) {
            lines.add("");
            lines.addAll(Layout.wrapped("", texts.say("findings.unread", unread)));
        }
        return lines;
    }

    private List<String> green(GreenFindings green) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(texts.say(
                "findings.green",
                green.hole().id(),
                texts.say("restsOn." + EnumNames.lowerCamel(green.restsOn())),
                green.readings(),
                green.findings().size()));
        List<GroundFinding> all = green.findings();
        for (int first = 0; first < all.size(); ) {
            int end = endOfKind(all, first);
            lines.addAll(alike(green.hole(), all.subList(first, end), first));
            first = end;
        }
        if (all.isEmpty()) {
            lines.addAll(Layout.wrapped("    ", texts.say("findings.none")));
        }
        return lines;
    }

    private static int endOfKind(List<GroundFinding> all, int first) {
        int end = first;
        while (end < all.size()
                && all.get(end).finding().kind() == all.get(first).finding().kind()) {
            end++;
        }
        return end;
    }

    /** Findings of one kind, and once what to do about them. */
    private List<String> alike(Hole hole, List<GroundFinding> alike, int before) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < alike.size() && i < MOST_OF_A_KIND; i++) {
            Finding finding = alike.get(i).finding();
            String mark = Layout.right(Integer.toString(before + i + 1), 3);
            lines.addAll(points.says(mark, finding, where(hole, finding)));
        }
        if (alike.size() > MOST_OF_A_KIND) {
            lines.addAll(Layout.wrapped("    ", texts.say("findings.more", alike.size() - MOST_OF_A_KIND)));
        }
        alike.stream()
                .map(GroundFinding::finding)
                .map(points::tryThis)
                .distinct()
                .forEach(lines::addAll);
        return lines;
    }

    private Optional<String> where(Hole hole, Finding finding) {
        return finding.place().map(place -> new PositionText(texts, pace).of(places.find(hole.id(), place), place));
    }

    ObjectNode json() {
        ObjectNode node = Json.object();
        node.put("course", answer.day().course().id());
        node.put("date", answer.day().date().toString());
        node.put("crs", "EPSG:" + answer.day().course().frame().epsg());
        node.set("greens", Json.array(answer.greens().stream().map(this::json).toList()));
        return node;
    }

    private ObjectNode json(GreenFindings green) {
        List<ObjectNode> findings = new ArrayList<>();
        for (GroundFinding found : green.findings()) {
            ObjectNode finding = points.json(
                    found.finding(),
                    where(green.hole(), found.finding())
                            .orElse(texts.say(found.finding().where())));
            finding.put("number", findings.size() + 1);
            finding.set("position", position(green.hole(), found.finding()));
            finding.set(
                    "areaSquareMetres",
                    Json.number(found.area().map(area -> area.getArea()).orElse(Double.NaN)));
            findings.add(finding);
        }
        ObjectNode node = Json.object();
        node.put("hole", green.hole().id());
        node.put("restsOn", EnumNames.lowerCamel(green.restsOn()));
        node.put("readings", green.readings());
        node.set("findings", Json.array(findings));
        return node;
    }

    private JsonNode position(Hole hole, Finding finding) {
        return finding.place()
                .<JsonNode>map(place -> new PositionJson(texts, pace).position(places.find(hole.id(), place), place))
                .orElseGet(Json::nothing);
    }
}
