package org.cupwright.app.cli.level;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.PositionJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.desk.level.LevelRoundOfDay.GreenRound;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.levelround.LevelRound;
import org.cupwright.holelocation.levelround.RoundSpot;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;
import tools.jackson.databind.node.ObjectNode;

/** Level rounds as a page to carry and as JSON. */
final class LevelRoundPrint {
    private static final String BLANK = "______";
    private static final int PLACE_WIDTH = 42;

    private final Texts texts;
    private final LevelRoundOfDay.Answer answer;
    private final double pace;

    LevelRoundPrint(Texts texts, LevelRoundOfDay.Answer answer) {
        this.texts = texts;
        this.answer = answer;
        this.pace = answer.day().policy().get(PlacePolicy.PACE_METRES);
    }

    List<String> page() {
        List<String> lines = new ArrayList<>();
        String title = texts.say(
                "level.round.title",
                answer.day().course().name(),
                texts.day(answer.day().date()));
        lines.add(title + " · " + new DayText(texts).speed(answer.day()));
        lines.add(texts.say("level.aim." + aim()));
        lines.addAll(Layout.wrapped("", texts.say("level.round.how")));
        answer.greens().forEach(green -> lines.addAll(green(green)));
        return lines;
    }

    private String aim() {
        return EnumNames.lowerCamel(answer.aim());
    }

    private List<String> green(GreenRound green) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(texts.say(
                "level.round.green", green.hole().id(), texts.say("restsOn." + EnumNames.lowerCamel(green.restsOn()))));
        lines.addAll(Layout.wrapped("   ", expected(green)));
        Optional<MapPoint> before = Optional.empty();
        int number = 1;
        for (RoundSpot spot : green.round().spots()) {
            String where = new PositionText(texts, pace).of(spot.place(), spot.at());
            String blanks = spot.place().isPresent() ? "level.round.blanks" : "level.round.blanksSteepest";
            lines.add("  " + number++ + "  " + Layout.left(where, PLACE_WIDTH) + texts.say(blanks, BLANK));
            lines.add("     " + String.join(" · ", walkAndUse(spot, before)));
            before = Optional.of(spot.at());
        }
        return lines;
    }

    private List<String> walkAndUse(RoundSpot spot, Optional<MapPoint> before) {
        List<String> parts = new ArrayList<>();
        parts.add(before.map(from -> texts.say("level.round.walk", paces(from.distanceMetres(spot.at()))))
                .orElseGet(() -> texts.say("level.round.start")));
        spot.candidateOf()
                .ifPresent(third -> parts.add(
                        texts.say("level.round.forThird", texts.say("third." + EnumNames.lowerCamel(third)))));
        parts.add(texts.say("level.round.decides", texts.number(spot.expectedSquareMetres(), 1)));
        return parts;
    }

    private String paces(double metres) {
        return texts.paces(Paces.roundedToHalf(metres, pace));
    }

    private String expected(GreenRound green) {
        LevelRound round = green.round();
        if (round.spots().isEmpty()) {
            return texts.say(
                    round.undecidedSquareMetres() > 0 ? "level.round.nothingHelps" : "level.round.nothingOpen");
        }
        String key = green.restsOn() == RestsOn.SURVEY ? "level.round.expected" : "level.round.expectedNoSurvey";
        return texts.say(
                key,
                round.spots().size(),
                texts.number(round.undecidedSquareMetres(), 0),
                texts.number(100 * round.expectedShare(), 0));
    }

    ObjectNode json() {
        ObjectNode node = Json.object();
        node.put("course", answer.day().course().id());
        node.put("date", answer.day().date().toString());
        node.set("speedFeet", Json.number(answer.day().fastest().feet()));
        node.put("aim", aim());
        node.set("greens", Json.array(answer.greens().stream().map(this::json).toList()));
        return node;
    }

    private ObjectNode json(GreenRound green) {
        LevelRound round = green.round();
        ObjectNode node = Json.object();
        node.put("hole", green.hole().id());
        node.put("restsOn", EnumNames.lowerCamel(green.restsOn()));
        node.put("readings", green.readings());
        node.set("undecidedSquareMetres", Json.number(round.undecidedSquareMetres()));
        node.set("expectedSquareMetres", Json.number(round.expectedSquareMetres()));
        node.set("expectedShare", Json.number(round.expectedShare()));
        node.set("spots", Json.array(round.spots().stream().map(this::json).toList()));
        return node;
    }

    private ObjectNode json(RoundSpot spot) {
        ObjectNode node = Json.object();
        node.set("position", new PositionJson(texts, pace).position(spot.place(), spot.at()));
        node.set("forThird", Json.text(spot.candidateOf().map(EnumNames::lowerCamel)));
        node.set("expectedSquareMetres", Json.number(spot.expectedSquareMetres()));
        return node;
    }
}
