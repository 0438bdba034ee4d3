package org.cupwright.app.sheets;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.PaperPolicy;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.Third;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.EnumNames;

/**
 * The changer's card: nine holes a side in round order, each with where, how far off is still good, yesterday's hole, a drawing and
 * room to write; then what to load and look at before leaving the shed. Folded once along the middle it goes into a pocket.
 */
public final class ChangersCard {
    private static final int HOLES_A_PAGE = 9;
    private static final int DRAWING_WIDTH = 300;
    private static final int DRAWING_HEIGHT = 260;
    private static final List<String> TICKS = List.of(
            "cutter", "mallet", "puller", "setter", "soil", "water", "rag", "knife", "ballMarkTool", "pipe", "flags");
    private static final List<String> CAUTIONS =
            List.of("blade", "play", "thunder", "frost", "spray", "heat", "alone", "local");

    private final Texts texts;

    public ChangersCard(Texts texts) {
        this.texts = texts;
    }

    /** The card as a PDF. */
    public byte[] pdf(DaySheet day) {
        return Pdf.of(xhtml(day), texts.say("sheet.card.title") + " " + day.course(), day.date());
    }

    String xhtml(DaySheet day) {
        Page page = new Page(day, texts);
        Xhtml out = page.start("card");
        for (int from = 0; from < day.holes().size(); from += HOLES_A_PAGE) {
            int to = Math.min(day.holes().size(), from + HOLES_A_PAGE);
            out.open("div", "side");
            page.heading(texts.say("sheet.card.title"), out);
            out.open("table", "round");
            for (SheetHole hole : day.holes().subList(from, to)) {
                row(hole, day, out);
            }
            out.close("table").close("div");
        }
        out.open("div", "side");
        page.heading(texts.say("sheet.card.before"), out);
        load(day, out);
        list("sheet.tick.", TICKS, "tick", out);
        settings(day, out);
        out.element("h2", "cautions", texts.say("sheet.caution.title"));
        list("sheet.caution.", CAUTIONS, "caution", out);
        out.close("div");
        return page.end(out);
    }

    private void row(SheetHole hole, DaySheet day, Xhtml out) {
        PlaceWords words = new PlaceWords(texts, day.paceMetres());
        out.open("tr");
        out.element("td", "hole", hole.hole());
        out.open("td", "what");
        out.element("div", "where", hole.place().map(words::area).orElse(hole.fallback()));
        hole.place()
                .ifPresent(place -> out.element(
                        "div", "paces", texts.say("sheet.on", words.on(place)) + " · " + words.side(place)));
        out.element("div", "within", words.within(hole.goodWithinMetres()));
        out.close("td").open("td", "jobs");
        hole.place()
                .ifPresent(place -> out.element(
                        "div", "flag", texts.say("sheet.flag", new Flags(texts, day.policy()).named(place.third()))));
        out.element("div", "yesterday", yesterday(hole, words));
        warnings(hole).ifPresent(warning -> out.element("div", "warning", warning));
        out.element("div", "write", texts.say("sheet.card.cutAt"));
        out.close("td").open("td", "drawing");
        out.raw(new GreenMap(texts).draw(hole.drawing(), DRAWING_WIDTH, DRAWING_HEIGHT));
        out.close("td").close("tr");
    }

    private String yesterday(SheetHole hole, PlaceWords words) {
        return hole.yesterday()
                .map(place -> texts.say("sheet.card.plug", words.whole(place)))
                .orElseGet(() -> texts.say("sheet.card.plugUnknown"));
    }

    private Optional<String> warnings(SheetHole hole) {
        StringBuilder text = new StringBuilder();
        if (hole.verdict() == Verdict.CAUTION) {
            text.append(texts.say("sheet.care"));
        }
        for (RuleId rule : hole.setAside()) {
            text.append(text.length() > 0 ? " · " : "");
            text.append(texts.say("sheet.setAside", texts.say("rule." + rule.id())));
        }
        if (!hole.checked()) {
            text.append(text.length() > 0 ? " · " : "").append(texts.say("sheet.slopeNotChecked"));
        }
        return text.length() == 0 ? Optional.empty() : Optional.of(text.toString());
    }

    private void load(DaySheet day, Xhtml out) {
        Flags flags = new Flags(texts, day.policy());
        StringBuilder load = new StringBuilder();
        for (Third third : Third.values()) {
            long count = day.holes().stream()
                    .filter(hole ->
                            hole.place().map(place -> place.third() == third).orElse(false))
                    .count();
            load.append(load.length() > 0 ? " · " : "")
                    .append(count)
                    .append(" × ")
                    .append(flags.named(third));
        }
        out.element("p", "load", texts.say("sheet.card.load", load.toString()));
    }

    private void list(String prefix, List<String> keys, String cssClass, Xhtml out) {
        out.open("ul", cssClass);
        for (String key : keys) {
            out.element("li", cssClass, texts.say(prefix + key));
        }
        out.close("ul");
    }

    private void settings(DaySheet day, Xhtml out) {
        out.element("p", "note", texts.say("sheet.convention." + EnumNames.lowerCamel(day.convention())));
        String rim = day.policy().get(PaperPolicy.WHITE_RIM) ? "sheet.card.whiteRim" : "sheet.card.plainRim";
        out.element("p", "note", texts.say(rim));
        String ring = day.policy().get(PaperPolicy.RING);
        out.element(
                "p", "note", ring.isBlank() ? texts.say("sheet.card.ringBlank") : texts.say("sheet.card.ring", ring));
    }
}
