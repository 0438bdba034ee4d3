package org.cupwright.app.sheets;

import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.settingout.PacedPlace;

/**
 * The day's hole locations for golf shop and players: one line a hole, words first, then paces; the flag's letter
 * stands beside its colour's name.
 */
public final class HoleLocationSheet {
    /** So many holes stand on one page, as large as its height allows; of more rows the last go to a second page. */
    private static final int ON_A_PAGE = 18;

    /** Of a page's height, what goes to margins, heading and notes. */
    private static final double AROUND_MILLIMETRES = 90;

    private final Texts texts;

    public HoleLocationSheet(Texts texts) {
        this.texts = texts;
    }

    /** The sheet as a PDF. */
    public byte[] pdf(DaySheet day) {
        return Pdf.of(xhtml(day), texts.say("sheet.locations.title") + " " + day.course(), day.date());
    }

    String xhtml(DaySheet day) {
        Page page = new Page(day, texts);
        Xhtml out = page.start("locations", "13mm 16mm 11mm 16mm");
        page.heading(out);
        out.element("h1", "title", texts.say("sheet.locations.title"));
        out.open("p", "state").element("span", "state", page.state(day)).text(" · ");
        out.text(page.speed(day.speedFeet())).close("p");
        out.open("table", "holes").open("thead").open("tr");
        for (String key : List.of("hole", "where", "paces", "flag")) {
            out.element("th", key, texts.say("sheet.head." + key));
        }
        out.close("tr").close("thead").open("tbody");
        String height = Page.millimetres((page.paper().heightMillimetres() - AROUND_MILLIMETRES) / ON_A_PAGE);
        day.holes().forEach(hole -> row(hole, height, day, out));
        out.close("tbody").close("table");
        notes(day, out);
        return page.end(out);
    }

    private void row(SheetHole hole, String height, DaySheet day, Xhtml out) {
        PlaceWords words = new PlaceWords(texts, day.paceMetres());
        out.open("tr");
        out.open("td", "hole", "height: " + height + ";").text(hole.hole()).close("td");
        out.element(
                "td",
                "where",
                hole.cut().map(cut -> words.area(cut.directions())).orElseGet(() -> texts.say("sheet.noHole")));
        out.open("td", "paces");
        hole.cut().flatMap(cut -> cut.directions().place()).ifPresent(place -> paces(place, words, out));
        out.close("td").open("td", "flag");
        hole.cut().flatMap(cut -> cut.directions().place()).ifPresent(place -> flag(place, day, out));
        out.close("td").close("tr");
    }

    private static void paces(PacedPlace place, PlaceWords words, Xhtml out) {
        out.text(words.paces(place.metres()));
        words.fromBack(place).ifPresent(back -> out.element("span", "back", "(" + back + ")"));
    }

    private void flag(PacedPlace place, DaySheet day, Xhtml out) {
        Flags flags = new Flags(texts, day.policy());
        out.element("span", "letter", flags.letter(place.third())).text(" " + flags.colour(place.third()));
    }

    private void notes(DaySheet day, Xhtml out) {
        out.element("p", "note", texts.say("sheet.convention." + EnumNames.lowerCamel(day.convention())));
        out.element(
                "p",
                "note",
                texts.say("sheet.pace", texts.number(day.paceMetres(), 3)) + " " + texts.say("sheet.letters"));
        out.element("p", "note", texts.say("sheet.localRules"));
    }
}
