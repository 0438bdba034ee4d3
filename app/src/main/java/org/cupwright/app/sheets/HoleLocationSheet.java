package org.cupwright.app.sheets;

import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.settingout.PacedPlace;

/**
 * The day's hole locations for golf shop and players: one line a hole, words first, then paces; the flag's letter
 * stands beside its colour's name.
 */
public record HoleLocationSheet(Texts texts) {
    /** So many holes stand on one page, as large as its height allows; of more rows the last go to a second page. */
    private static final int ON_A_PAGE = 18;

    /** Of a page's height, what goes to margins, heading and notes. */
    private static final double AROUND_MILLIMETRES = 97;

    /** The sheet as a PDF. */
    public byte[] pdf(DaySheet day) {
        return Pdf.of(xhtml(day), texts.say("sheet.locations.title") + " " + day.course(), day.date());
    }

    String xhtml(DaySheet day) {
        Page page = day.page("locations", "13mm 16mm 11mm 16mm", texts);
        page.heading().say("h1", "title", "sheet.locations.title");
        page.open("p", "state").element("span", "state", day.state(texts));
        page.text(" · " + DaySheet.speed(day.speed(), texts)).close("p");
        page.open("table", "holes").open("thead").open("tr");
        List.of("hole", "where", "paces", "depth", "flag").forEach(key -> page.say("th", key, "sheet.head." + key));
        page.close("tr").close("thead").open("tbody");
        String height = Page.millimetres((page.paper().heightMillimetres() - AROUND_MILLIMETRES) / ON_A_PAGE);
        day.holes().forEach(hole -> row(hole, height, day, page));
        page.close("tbody").close("table");
        page.say("p", "note", "sheet.convention." + EnumNames.lowerCamel(day.convention()));
        String pace = texts.say("sheet.pace", texts.number(day.paceMetres(), 3));
        page.element("p", "note", String.join(" ", texts.say("sheet.depth"), pace, texts.say("sheet.letters")));
        return page.say("p", "note", "sheet.localRules").done();
    }

    private void row(SheetHole hole, String height, DaySheet day, Page page) {
        PlaceWords words = new PlaceWords(texts, day.paceMetres());
        page.open("tr").open("td", "hole", "height: " + height + ";").text(hole.hole());
        page.close("td").open("td", "where").text(words.where(hole));
        day.soFar()
                .findMovedInPlay(hole.hole())
                .ifPresent(time -> page.element("div", "moved", texts.say("sheet.movedInPlay", time.toString())));
        page.close("td").open("td", "paces");
        hole.paced().ifPresent(place -> paces(place, words, page));
        page.close("td")
                .element(
                        "td",
                        "depth",
                        hole.paced()
                                .map(place -> texts.halves(place.depthPaces()))
                                .orElse(""));
        page.open("td", "flag");
        Flags flags = new Flags(texts, day.policy());
        hole.paced()
                .map(PacedPlace::third)
                .ifPresent(third ->
                        page.element("span", "letter", flags.letter(third)).text(" " + flags.colour(third)));
        page.close("td").close("tr");
    }

    private static void paces(PacedPlace place, PlaceWords words, Page page) {
        page.text(words.paces(place.metres()));
        words.fromBack(place).ifPresent(back -> page.element("span", "back", "(" + back + ")"));
    }
}
