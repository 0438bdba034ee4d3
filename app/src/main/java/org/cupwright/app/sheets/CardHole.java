package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.OutlinedText;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.settingout.PacedPlace;

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

    /** What a hole says besides its notices, with a way from a mark and a person's word. */
    private static final double SAYS_MILLIMETRES = 31;

    private final Flags flags;
    private final Texts texts;
    private final PlaceWords words;
    private final Page page;

    CardHole(DaySheet day, Texts texts, Page page) {
        this.flags = new Flags(texts, day.policy());
        this.texts = texts;
        this.words = new PlaceWords(texts, day.paceMetres());
        this.page = page;
    }

    void write(SheetHole hole, double heightMillimetres) {
        page.open("div", "one", "min-height: " + Page.millimetres(heightMillimetres) + ";");
        drawing(hole, heightMillimetres - DRAWING_LESS);
        page.open("div", "says").open("div", "top").element("span", "hole", hole.hole());
        page.element("span", "where", words.where(hole)).close("div");
        hole.cut().filter(cut -> !hole.temporary()).ifPresent(cut -> cut(cut, hole.area()));
        page.element("div", "plug", plug(hole));
        hole.notices().forEach(notice -> page.element("div", "warning", notice));
        hole.cut().ifPresent(cut -> warnings(cut).forEach(warning -> page.element("div", "warning", warning)));
        toFillIn(hole);
        page.close("div").close("div");
    }

    /** How high a hole grows with its notices, mm: so high at least as it would be without. */
    static double height(SheetHole hole, double without, double quarterMillimetres) {
        double width = quarterMillimetres - BESIDE_MILLIMETRES;
        double said = hole.notices().stream()
                .mapToDouble(notice -> NOTICE_GAP + NOTICES.height(notice, width))
                .sum();
        return Math.max(without, SAYS_MILLIMETRES + said);
    }

    private void drawing(SheetHole hole, double height) {
        String size = "width: " + Page.millimetres(DRAWING_WIDTH) + "; height: " + Page.millimetres(height) + ";";
        String svg = new GreenMap(texts)
                .card(hole.drawing(), (int) (UNITS_A_MILLIMETRE * DRAWING_WIDTH), (int) (UNITS_A_MILLIMETRE * height));
        page.open("div", "drawing", size);
        page.raw(OutlinedText.of(svg).replaceFirst("<svg ", "<svg style=\"" + size + "\" "));
        page.close("div");
    }

    private void cut(SheetHole.Cut cut, Optional<String> area) {
        Optional<PacedPlace> paced = cut.directions().place();
        paced.ifPresent(place -> page.element("div", "paces", words.paces(place.metres())));
        page.open("div", "within");
        paced.ifPresent(place -> page.element("span", "flag", flags.named(place.third())));
        List<String> beside = new ArrayList<>();
        cut.directions()
                .leeway()
                .map(leeway -> words.within(leeway, cut.verdict()))
                .ifPresent(beside::add);
        paced.flatMap(words::fromBack).ifPresent(beside::add);
        area.ifPresent(beside::add);
        for (int i = 0; i < beside.size(); i++) {
            page.text(i == 0 ? "" : " · ").element("span", "whole", beside.get(i));
        }
        page.close("div");
        cut.withRoom()
                .map(place -> texts.say("sheet.roomAt", words.whole(place.metres())))
                .ifPresent(room -> page.element("div", "plug", room));
    }

    private String plug(SheetHole hole) {
        if (hole.temporary()) {
            return texts.say(
                    "sheet.card.toFill",
                    hole.lastHole().map(words::whole).orElseGet(() -> texts.say("sheet.card.unknown")));
        }
        if (hole.since().isPresent()) {
            return texts.say("sheet.card.stays", texts.day(hole.since().get()));
        }
        return hole.lastHole()
                .map(place -> texts.say("sheet.card.plug", words.whole(place)))
                .or(() -> hole.roughHole().map(part -> texts.say("sheet.card.plugRoughly", words.part(part))))
                .orElseGet(() -> texts.say("sheet.card.plugUnknown"));
    }

    private List<String> warnings(SheetHole.Cut cut) {
        List<String> warnings = new ArrayList<>();
        wayFromMark(cut, warnings);
        if (!cut.slopeChecked()) {
            warnings.add(texts.say("sheet.slopeNotChecked"));
        }
        cut.word().filter(word -> word.kind().speaksForAHole()).ifPresent(word -> warnings.add(goodWord(word)));
        return warnings;
    }

    private String goodWord(PersonsOpinion word) {
        return word.person()
                .map(person -> texts.say("sheet.saidToBeGoodBy", person))
                .orElseGet(() -> texts.say("sheet.saidToBeGood"));
    }

    /** Where words and paces do not lead to one place alone. */
    private void wayFromMark(SheetHole.Cut cut, List<String> warnings) {
        if (!cut.onePlace()) {
            String says = cut.directions().place().isPresent() ? "sheet.card.morePlaces" : "sheet.card.noPaces";
            String way = cut.directions()
                    .fromMark()
                    .map(words::fromMark)
                    .orElseGet(() -> texts.say("sheet.card.seeDrawing"));
            warnings.add(texts.say(says, way));
        }
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
