package org.cupwright.app.sheets;

import java.util.List;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.OutlinedText;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Loop;
import org.cupwright.green.GreenFrame;

/** A practice green on the changer's card: its holes are the changer's to choose, away from where holes were. */
record PracticeOnCard(DaySheet day, Loop block, Page page, Texts texts) {
    private static final PaperLines LETTERS = new PaperLines(8, 1.3);
    private static final double BESIDE_MILLIMETRES = 13;

    /** What is left under the hand work, in whole: three lines. */
    private static final double SHORT_MILLIMETRES = 12;

    private static final int DRAWING_WIDTH = 86;
    private static final int DRAWING_HEIGHT = 62;
    private static final int UNITS_A_MILLIMETRE = 10;

    static List<PracticeOnCard> of(DaySheet day, Page page) {
        Texts texts = day.blocks().texts();
        return day.blocks().all().stream()
                .filter(Loop::practice)
                .map(block -> new PracticeOnCard(day, block, page, texts))
                .toList();
    }

    /** With a drawing of what rests, and a line to write each hole on. */
    void quarter() {
        page.heading();
        inShort();
        drawing();
        page.element("p", "answer", resting());
        for (String hole : block.holes()) {
            page.open("div", "write", "font-size: 10pt; margin-top: 3mm;").element("span", "boxed", hole);
            page.line("middling").text(" " + texts.say("sheet.card.practiceFrom") + " ");
            page.line("middling").close("div");
        }
    }

    /** Whether the words alone have room under the hand work. */
    boolean isShort() {
        double width = page.paper().widthMillimetres() / 2 - BESIDE_MILLIMETRES;
        return LETTERS.height(title() + " " + String.join(" ", holes()), width) <= SHORT_MILLIMETRES;
    }

    /** The words alone, where the card has no room for more. */
    void inShort() {
        page.open("p", "answer", "margin-top: 1.5mm; line-height: 1.3;");
        page.open("span", "title", "font-weight: 700;").text(title()).close("span");
        for (String hole : holes()) {
            page.text(" ")
                    .open("span", "place", "white-space: nowrap;")
                    .text(hole)
                    .close("span");
        }
        page.close("p");
    }

    private String title() {
        String old = anyKnown() ? "sheet.card.practicePlugs" : "sheet.card.practiceUnknown";
        String key = anyCut() ? "sheet.card.practiceCut" : old;
        return texts.say(key, day.blocks().name(block), day.blocks().yours(block));
    }

    private boolean anyCut() {
        return day.holes(block).stream().anyMatch(hole -> hole.cut().isPresent());
    }

    private boolean anyKnown() {
        return day.holes(block).stream()
                .anyMatch(
                        hole -> hole.lastHole().isPresent() || hole.roughHole().isPresent());
    }

    /** Where its holes are, or where those are that are to be filled; nothing where neither is known of any. */
    private List<String> holes() {
        if (!anyCut() && !anyKnown()) {
            return List.of();
        }
        PlaceWords words = new PlaceWords(texts, day.paceMetres());
        boolean cut = anyCut();
        String last = block.holes().get(block.holes().size() - 1);
        return day.holes(block).stream()
                .map(hole -> hole.hole() + " " + (cut ? words.cut(hole) : words.lastHole(hole))
                        + (hole.hole().equals(last) ? "" : ";"))
                .toList();
    }

    /** All that rests, the newest first; on a green without a line of play the drawing has to do. */
    private String resting() {
        PlaceWords words = new PlaceWords(texts, day.paceMetres());
        GreenDrawing drawing = day.holes(block).get(0).drawing();
        List<String> places = GreenFrame.of(drawing.hole(), day.convention()).stream()
                .flatMap(frame -> drawing.oldHoles().stream().map(old -> words.paces(frame.place(old.at()))))
                .toList();
        return places.isEmpty()
                ? texts.say("sheet.card.practiceAway")
                : texts.say("sheet.card.practiceAwayFrom", String.join("; ", places));
    }

    private void drawing() {
        String size =
                "width: " + Page.millimetres(DRAWING_WIDTH) + "; height: " + Page.millimetres(DRAWING_HEIGHT) + ";";
        SheetHole any = day.holes(block).get(0);
        String svg = new GreenMap(texts)
                .card(any.drawing(), UNITS_A_MILLIMETRE * DRAWING_WIDTH, UNITS_A_MILLIMETRE * DRAWING_HEIGHT);
        page.open("div", "ground", size);
        page.raw(OutlinedText.of(svg).replaceFirst("<svg ", "<svg style=\"" + size + "\" "));
        page.close("div");
    }
}
