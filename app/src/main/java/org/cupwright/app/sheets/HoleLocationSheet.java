package org.cupwright.app.sheets;

import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.policy.EnumNames;

/** The day's hole locations for golf shop and players: one page, words first, then paces. */
public final class HoleLocationSheet {
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
        Xhtml out = page.start("locations");
        page.heading(texts.say("sheet.locations.title"), out);
        String state =
                day.asCutAt().map(time -> texts.say("sheet.asCutAt", time)).orElseGet(() -> texts.say("sheet.planned"));
        out.element("p", "state", state + " · " + texts.say("sheet.greenSpeed", texts.number(day.speedFeet(), 1)));
        int half = day.holes().size() > 9
                ? (day.holes().size() + 1) / 2
                : day.holes().size();
        out.open("table", "columns").open("tr");
        column(day.holes().subList(0, half), day, out);
        if (half < day.holes().size()) {
            column(day.holes().subList(half, day.holes().size()), day, out);
        }
        out.close("tr").close("table");
        notes(day, out);
        return page.end(out);
    }

    private void column(List<SheetHole> holes, DaySheet day, Xhtml out) {
        PlaceWords words = new PlaceWords(texts, day.paceMetres());
        Flags flags = new Flags(texts, day.policy());
        out.open("td", "column").open("table", "holes");
        out.open("tr", "head");
        for (String key : List.of("hole", "where", "paces", "flag")) {
            out.element("th", key, texts.say("sheet.head." + key));
        }
        out.close("tr");
        for (SheetHole hole : holes) {
            out.open("tr");
            out.element("td", "hole", hole.hole());
            if (hole.place().isPresent()) {
                PlaceOnGreen place = hole.place().get();
                out.element("td", "where", words.area(place));
                out.element("td", "paces", texts.say("sheet.on", words.on(place)) + " · " + words.side(place));
                out.element("td", "flag", flags.named(place.third()));
            } else {
                out.element("td", "where", hole.fallback())
                        .element("td", "paces", "")
                        .element("td", "flag", "");
            }
            out.close("tr");
        }
        out.close("table").close("td");
    }

    private void notes(DaySheet day, Xhtml out) {
        out.element("p", "note", texts.say("sheet.convention." + EnumNames.lowerCamel(day.convention())));
        out.element("p", "note", texts.say("sheet.pace", texts.number(day.paceMetres(), 3)));
    }
}
