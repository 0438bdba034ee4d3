package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.OutlinedText;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;

/** One hole on the changer's card: a third of a quarter of the sheet. */
final class CardHole {
    /** Of a quarter's height, what goes to margins, heading and foot. */
    static final double AROUND_MILLIMETRES = 23;

    private static final int DRAWING_WIDTH = 34;
    private static final double UNITS_A_MILLIMETRE = 10;
    private static final double DRAWING_LESS = 2.6;

    private final DaySheet day;
    private final Texts texts;
    private final PlaceWords words;

    CardHole(DaySheet day, Texts texts) {
        this.day = day;
        this.texts = texts;
        this.words = new PlaceWords(texts, day.paceMetres());
    }

    void write(SheetHole hole, double heightMillimetres, Xhtml out) {
        out.open("div", "one", "min-height: " + Page.millimetres(heightMillimetres) + ";");
        drawing(hole, heightMillimetres - DRAWING_LESS, out);
        out.open("div", "says");
        String where = hole.cut().map(cut -> words.area(cut.directions())).orElseGet(() -> texts.say("sheet.noHole"));
        out.open("div", "top").element("span", "hole", hole.hole()).element("span", "where", where);
        out.close("div");
        hole.cut().ifPresent(cut -> cut(cut, out));
        out.element("div", "plug", plug(hole));
        hole.cut().ifPresent(cut -> warnings(cut).forEach(warning -> out.element("div", "warning", warning)));
        write(out);
        out.close("div").close("div");
    }

    private void drawing(SheetHole hole, double height, Xhtml out) {
        String size = "width: " + Page.millimetres(DRAWING_WIDTH) + "; height: " + Page.millimetres(height) + ";";
        String svg = new GreenMap(texts)
                .card(hole.drawing(), (int) (UNITS_A_MILLIMETRE * DRAWING_WIDTH), (int) (UNITS_A_MILLIMETRE * height));
        out.open("div", "drawing", size);
        out.raw(OutlinedText.of(svg).replaceFirst("<svg ", "<svg style=\"" + size + "\" "));
        out.close("div");
    }

    private void cut(SheetHole.Cut cut, Xhtml out) {
        List<String> beside = new ArrayList<>();
        cut.directions().leeway().ifPresent(leeway -> beside.add(words.within(leeway)));
        cut.directions().place().ifPresent(place -> {
            out.element("div", "paces", words.paces(place.metres()));
            words.fromBack(place).ifPresent(beside::add);
        });
        out.open("div", "within");
        cut.directions()
                .place()
                .ifPresent(place -> out.element("span", "flag", new Flags(texts, day.policy()).named(place.third())));
        for (int i = 0; i < beside.size(); i++) {
            out.text(i == 0 ? "" : " · ").element("span", "whole", beside.get(i));
        }
        out.close("div");
    }

    private String plug(SheetHole hole) {
        return hole.lastHole()
                .map(place -> texts.say("sheet.card.plug", words.whole(place)))
                .orElseGet(() -> texts.say("sheet.card.plugUnknown"));
    }

    private List<String> warnings(SheetHole.Cut cut) {
        List<String> warnings = new ArrayList<>();
        wayFromMark(cut, warnings);
        if (cut.verdict() == Verdict.CAUTION) {
            warnings.add(texts.say("sheet.care"));
        }
        for (RuleId rule : cut.setAside()) {
            warnings.add(texts.say("sheet.setAside", texts.say("rule." + rule.id())));
        }
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

    private void write(Xhtml out) {
        out.open("div", "write").box(texts.say("sheet.card.asPlanned")).text(" ");
        out.box(texts.say("sheet.card.moved")).line("middling").close("div");
        out.open("div", "write").text(texts.say("sheet.card.soil")).text(" ");
        for (String soil : List.of("none", "in", "out")) {
            out.box(texts.say("sheet.card.soil." + soil)).text(" ");
        }
        out.text(texts.say("sheet.card.time")).line("short").close("div");
    }
}
