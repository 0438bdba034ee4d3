package org.cupwright.app.sheets;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.answers.LevelRoundText;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.level.LevelRoundOfDay;
import org.cupwright.app.desk.level.LevelRoundOfDay.GreenRound;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.levelround.RoundSpot;

/** The spots of a level round on paper: where, in the order of the walk, and room to write what the level read. */
public record LevelRoundSheet(Texts texts) {
    /** The list as a PDF. */
    public byte[] pdf(LevelRoundOfDay.Answer round) {
        CourseDay day = round.day();
        return Pdf.of(
                xhtml(round),
                texts.say("sheet.level.title") + " " + day.course().name(),
                day.date());
    }

    String xhtml(LevelRoundOfDay.Answer round) {
        CourseDay day = round.day();
        Page page = new Page("level", "13mm 16mm 11mm 16mm", day.course().name(), day.date(), day.policy(), texts);
        page.heading().say("h1", "title", "sheet.level.title");
        LevelRoundText says = new LevelRoundText(texts, round);
        page.element("p", "state", says.aim() + " · " + DaySheet.speed(day.speed(), texts));
        page.say("p", "how", "level.round.how");
        double pace = day.policy().get(PlacePolicy.PACE_METRES);
        round.greens().stream()
                .filter(green -> !green.round().spots().isEmpty())
                .forEach(green -> green(green, pace, says, page));
        notes(round, page);
        return page.done();
    }

    private void green(GreenRound green, double pace, LevelRoundText says, Page page) {
        PlaceWords words = new PlaceWords(texts, pace);
        page.open("div", "green").open("h2", "green");
        page.text(texts.say("survey.where.hole", green.hole().id()));
        page.element("span", "expected", expected(green)).close("h2");
        page.open("table", "spots").open("tbody");
        Optional<MapPoint> before = Optional.empty();
        int number = 1;
        for (RoundSpot spot : green.round().spots()) {
            page.open("tr").element("td", "number", Integer.toString(number++));
            page.open("td", "where").element("span", "place", words.area(spot.place(), spot.at()));
            spot.place().ifPresent(place -> page.text(" " + words.paces(place)));
            page.element("div", "walk", says.walk(spot, before)).close("td");
            blanks(spot, page);
            page.close("tr");
            before = Optional.of(spot.at());
        }
        page.close("tbody").close("table").close("div");
    }

    /** Along play and across it; where there is no line of play, the steepest way down and its direction. */
    private void blanks(RoundSpot spot, Page page) {
        page.open("td", "blanks");
        if (spot.place().isPresent()) {
            for (List<String> ways : List.of(List.of("front", "back"), List.of("left", "right"))) {
                ways.forEach(way -> page.box(texts.say("sheet.level." + way)));
                page.line("short").text(" %\u00a0\u00a0 ");
            }
        } else {
            page.text(texts.say("sheet.level.falls") + " ").line("short").text(" % ");
            page.text(texts.say("sheet.level.towards") + " ").line("short").text(" °");
        }
        page.close("td");
    }

    private String expected(GreenRound green) {
        return texts.say(
                "sheet.level.expected",
                texts.number(green.round().undecidedSquareMetres(), 0),
                texts.number(100 * green.round().expectedShare(), 0));
    }

    private static void notes(LevelRoundOfDay.Answer round, Page page) {
        String none = round.greens().stream()
                .filter(green -> green.round().spots().isEmpty())
                .map(green -> green.hole().id())
                .collect(Collectors.joining(", "));
        if (!none.isEmpty()) {
            page.say("p", "note", "sheet.level.nothing", none);
        }
        page.say("p", "note", "sheet.level.keep").say("p", "note", "sheet.localRules");
    }
}
