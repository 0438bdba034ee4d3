package org.cupwright.app.sheets;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.desk.level.LevelRoundOfDay.GreenRound;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.levelround.RoundSpot;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Paces;

/** The spots of a level round on paper: where, in the order of the walk, and room to write what the level read. */
public final class LevelRoundSheet {
    private final Texts texts;

    public LevelRoundSheet(Texts texts) {
        this.texts = texts;
    }

    /** The list as a PDF. */
    public byte[] pdf(LevelRoundOfDay.Answer round) {
        String course = round.day().course().name();
        return Pdf.of(
                xhtml(round),
                texts.say("sheet.level.title") + " " + course,
                round.day().date());
    }

    String xhtml(LevelRoundOfDay.Answer round) {
        Page page = new Page(
                round.day().course().name(), round.day().date(), round.day().policy(), texts);
        Xhtml out = page.start("level", "13mm 16mm 11mm 16mm");
        page.heading(out);
        out.element("h1", "title", texts.say("sheet.level.title"));
        String aim = texts.say("level.aim." + EnumNames.lowerCamel(round.aim()));
        out.element("p", "state", aim + " · " + page.speed(round.day().fastest().feet()));
        out.element("p", "how", texts.say("level.round.how"));
        double pace = round.day().policy().get(PlacePolicy.PACE_METRES);
        round.greens().stream()
                .filter(green -> !green.round().spots().isEmpty())
                .forEach(green -> green(green, pace, out));
        notes(round, out);
        return page.end(out);
    }

    private void green(GreenRound green, double pace, Xhtml out) {
        PlaceWords words = new PlaceWords(texts, pace);
        out.open("div", "green").open("h2", "green");
        out.text(texts.say("survey.where.hole", green.hole().id()));
        out.element("span", "expected", expected(green)).close("h2");
        out.open("table", "spots").open("tbody");
        Optional<MapPoint> before = Optional.empty();
        int number = 1;
        for (RoundSpot spot : green.round().spots()) {
            out.open("tr").element("td", "number", Integer.toString(number++));
            out.open("td", "where").element("span", "place", words.area(spot.place(), spot.at()));
            spot.place().ifPresent(place -> out.text(" " + words.paces(place)));
            out.element("div", "walk", walk(spot, before, pace)).close("td");
            blanks(spot, out);
            out.close("tr");
            before = Optional.of(spot.at());
        }
        out.close("tbody").close("table").close("div");
    }

    private String walk(RoundSpot spot, Optional<MapPoint> before, double pace) {
        return before.map(from -> Paces.roundedToHalf(from.distanceMetres(spot.at()), pace))
                .map(paces -> texts.say("level.round.walk", texts.paces(paces)))
                .orElseGet(() -> texts.say("level.round.start"));
    }

    /** Along play and across it; where there is no line of play, the steepest way down and its direction. */
    private void blanks(RoundSpot spot, Xhtml out) {
        out.open("td", "blanks");
        if (spot.place().isPresent()) {
            for (List<String> ways : List.of(List.of("front", "back"), List.of("left", "right"))) {
                ways.forEach(way -> out.box(texts.say("sheet.level." + way)));
                out.line("short").text(" %\u00a0\u00a0 ");
            }
        } else {
            out.text(texts.say("sheet.level.falls") + " ").line("short").text(" % ");
            out.text(texts.say("sheet.level.towards") + " ").line("short").text(" °");
        }
        out.close("td");
    }

    private String expected(GreenRound green) {
        return texts.say(
                "sheet.level.expected",
                texts.number(green.round().undecidedSquareMetres(), 0),
                texts.number(100 * green.round().expectedShare(), 0));
    }

    private void notes(LevelRoundOfDay.Answer round, Xhtml out) {
        List<String> none = round.greens().stream()
                .filter(green -> green.round().spots().isEmpty())
                .map(green -> green.hole().id())
                .toList();
        if (!none.isEmpty()) {
            out.element("p", "note", texts.say("sheet.level.nothing", String.join(", ", none)));
        }
        out.element("p", "note", texts.say("sheet.level.keep"));
        out.element("p", "note", texts.say("sheet.localRules"));
    }
}
