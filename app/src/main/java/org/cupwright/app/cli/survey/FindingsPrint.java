package org.cupwright.app.cli.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.answers.FindingText;
import org.cupwright.app.answers.PlaceText;
import org.cupwright.app.answers.json.FindingJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.findings.GreenFindings;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.green.RestsOn;
import org.cupwright.green.agreement.SurveyAgainstReadings;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.JsonNode;

/** What is doubtful about greens as a page and as JSON. */
final class FindingsPrint {
    /** Of one kind on one green no more are listed; JSON, GeoJSON and the counts have all of them. Our choice. */
    private static final int MOST_OF_A_KIND = 6;

    private final Texts texts;
    private final FindDoubts.Answer answer;
    private final PlaceText places;

    FindingsPrint(Texts texts, FindDoubts.Answer answer) {
        this.texts = texts;
        this.answer = answer;
        this.places = new PlaceText(texts, answer.day().course(), answer.day().policy());
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
            Optional<String> where = finding.place().map(place -> places.at(hole.id(), place));
            String mark = Layout.right(Integer.toString(before + i + 1), 3) + " ";
            lines.addAll(Layout.hanging(4, mark, FindingText.says(texts, finding, where)));
        }
        if (alike.size() > MOST_OF_A_KIND) {
            lines.addAll(Layout.wrapped("    ", texts.say("findings.more", alike.size() - MOST_OF_A_KIND)));
        }
        alike.stream()
                .map(found -> Layout.wrapped("    ", texts.say(found.finding().tryThis())))
                .distinct()
                .forEach(lines::addAll);
        return lines;
    }

    JsonNode json() {
        return new FindingJson(texts).ground(answer);
    }
}
