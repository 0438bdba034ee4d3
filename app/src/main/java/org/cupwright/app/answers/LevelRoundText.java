package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.desk.level.LevelRoundOfDay.GreenRound;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.levelround.LevelRound;
import org.cupwright.holelocation.levelround.RoundSpot;
import org.cupwright.policy.EnumNames;

/** Level rounds in words, to carry along. */
public final class LevelRoundText {
    private static final String BLANK = "______";
    private static final int PLACE_WIDTH = 42;

    private final Texts texts;
    private final LevelRoundOfDay.Answer answer;
    private final PositionText positions;
    private final Lines lines;

    public LevelRoundText(Texts texts, LevelRoundOfDay.Answer answer) {
        this.texts = texts;
        this.answer = answer;
        this.positions = new PositionText(texts, answer.day().policy().get(PlacePolicy.PACE_METRES));
        this.lines = new Lines(texts);
    }

    public Lines lines() {
        lines.line(new DayText(texts).title("level.round.title", answer.day()));
        lines.line(aim()).wrapped("", texts.say("level.round.how"));
        answer.greens().forEach(this::green);
        return lines;
    }

    /** What the round is for. */
    public String aim() {
        return texts.say("level.aim." + EnumNames.lowerCamel(answer.aim()));
    }

    private void green(GreenRound green) {
        lines.heading(
                "level.round.green", green.hole().id(), texts.say("restsOn." + EnumNames.lowerCamel(green.restsOn())));
        lines.wrapped("   ", expected(green));
        Optional<MapPoint> before = Optional.empty();
        int number = 1;
        for (RoundSpot spot : green.round().spots()) {
            String where = positions.of(spot.place(), spot.at());
            String blanks = spot.place().isPresent() ? "level.round.blanks" : "level.round.blanksSteepest";
            lines.row(
                    List.of(new Line.Cell("  " + number++ + "  ", 0), Line.left(where, PLACE_WIDTH)),
                    texts.say(blanks, BLANK));
            lines.line("     " + String.join(" · ", walkAndUse(spot, before)));
            before = Optional.of(spot.at());
        }
    }

    /** How far it is from the spot before, and what a reading there is for. */
    public List<String> walkAndUse(RoundSpot spot, Optional<MapPoint> before) {
        List<String> parts = new ArrayList<>();
        parts.add(walk(spot, before));
        spot.candidateOf()
                .ifPresent(third -> parts.add(
                        texts.say("level.round.forThird", texts.say("third." + EnumNames.lowerCamel(third)))));
        parts.add(texts.say("level.round.decides", texts.number(spot.expectedSquareMetres(), 1)));
        return parts;
    }

    /** How far from the spot before. */
    public String walk(RoundSpot spot, Optional<MapPoint> before) {
        return before.map(from -> from.distanceMetres(spot.at()))
                .map(metres -> texts.say("level.round.walk", positions.paces(metres)))
                .orElseGet(() -> texts.say("level.round.start"));
    }

    /** What the round over a green is expected to decide. */
    public String expected(GreenRound green) {
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
}
