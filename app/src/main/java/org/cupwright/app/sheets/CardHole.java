package org.cupwright.app.sheets;

import java.util.List;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.OutlinedText;
import org.cupwright.app.texts.Texts;

/** One hole on the changer's card: a third of a quarter of the sheet. */
final class CardHole {
    /** Of a quarter's height, what goes to margins, heading and foot. */
    static final double AROUND_MILLIMETRES = 23;

    private static final int DRAWING_WIDTH = 34;
    private static final double UNITS_A_MILLIMETRE = 10;
    private static final double DRAWING_LESS = 2.6;
    private static final PaperLines NOTICES = new PaperLines(7.5, 1.2);
    private static final double NOTICE_GAP = 0.5;
    private static final double BESIDE_MILLIMETRES = 49;

    /** With the style itself, so that paper on which nobody is named stays what it was, byte for byte. */
    private static final String BY = "font-size: 9pt; font-weight: 600; line-height: 1.25;";

    /** Who and by when; where nothing is warned of, there is room for it in what a hole says. */
    private static final double BY_MILLIMETRES = 4.5;

    /** What a hole says besides its notices, with a way from a mark and a person's word. */
    private static final double SAYS_MILLIMETRES = 31;

    private final Texts texts;
    private final CardWords words;
    private final WhoAndWhen by;
    private final Page page;

    CardHole(DaySheet day, Texts texts, Page page) {
        this.texts = texts;
        this.words = new CardWords(day, texts);
        this.by = WhoAndWhen.of(day, texts);
        this.page = page;
    }

    void write(SheetHole hole, double heightMillimetres) {
        page.open("div", "one", "min-height: " + Page.millimetres(heightMillimetres) + ";");
        drawing(hole, heightMillimetres - DRAWING_LESS);
        page.open("div", "says").open("div", "top").element("span", "hole", hole.hole());
        page.element("span", "where", words.where(hole)).close("div");
        by.line(hole).ifPresent(line -> page.open("div", "by", BY).text(line).close("div"));
        if (hole.cut().isPresent() && !hole.temporary()) {
            cut(hole);
        }
        page.element("div", "plug", words.plug(hole));
        hole.notices().forEach(notice -> page.element("div", "warning", notice));
        words.warnings(hole).forEach(warning -> page.element("div", "warning", warning));
        toFillIn(hole);
        page.close("div").close("div");
    }

    /** How high a hole grows with its notices, mm: so high at least as it would be without. */
    double height(SheetHole hole, double without, double quarterMillimetres) {
        double width = quarterMillimetres - BESIDE_MILLIMETRES;
        double said = hole.notices().stream()
                .mapToDouble(notice -> NOTICE_GAP + NOTICES.height(notice, width))
                .sum();
        boolean warned = !words.warnings(hole).isEmpty();
        double by = warned && this.by.line(hole).isPresent() ? BY_MILLIMETRES : 0;
        return Math.max(without, SAYS_MILLIMETRES + said + by);
    }

    private void drawing(SheetHole hole, double height) {
        String size = "width: " + Page.millimetres(DRAWING_WIDTH) + "; height: " + Page.millimetres(height) + ";";
        String svg = new GreenMap(texts)
                .card(hole.drawing(), (int) (UNITS_A_MILLIMETRE * DRAWING_WIDTH), (int) (UNITS_A_MILLIMETRE * height));
        page.open("div", "drawing", size);
        page.raw(OutlinedText.of(svg).replaceFirst("<svg ", "<svg style=\"" + size + "\" "));
        page.close("div");
    }

    private void cut(SheetHole hole) {
        words.paces(hole).ifPresent(paces -> page.element("div", "paces", paces));
        page.open("div", "within");
        words.flag(hole).ifPresent(flag -> page.element("span", "flag", flag));
        List<String> beside = words.beside(hole);
        for (int i = 0; i < beside.size(); i++) {
            page.text(i == 0 ? "" : " · ").element("span", "whole", beside.get(i));
        }
        page.close("div");
        words.room(hole).ifPresent(room -> page.element("div", "plug", room));
    }

    private void toFillIn(SheetHole hole) {
        page.open("div", "write");
        if (hole.stays()) {
            page.box(texts.say("sheet.card.moved")).line("middling");
            page.text(" " + texts.say("sheet.card.time")).line("short").close("div");
            return;
        }
        if (hole.temporary()) {
            page.box(texts.say("sheet.card.filled"));
        } else {
            page.box(texts.say("sheet.card.asPlanned")).text(" ");
            page.box(texts.say("sheet.card.moved")).line("middling");
        }
        page.close("div");
        page.open("div", "write").text(texts.say("sheet.card.soil") + " ");
        for (String soil : List.of("none", "in", "out")) {
            page.box(texts.say("sheet.card.soil." + soil)).text(" ");
        }
        page.text(texts.say("sheet.card.time")).line("short").close("div");
    }
}
