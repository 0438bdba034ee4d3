package org.cupwright.app.office.sheet;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.paper.PublicSheet;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.Flags;
import org.cupwright.app.sheets.PlaceWords;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Loop;
import org.cupwright.policy.EnumNames;

/** The sheet in the words and the order of its page. */
record SheetView(Texts texts) {
    /**
     * The page.
     *
     * @param course its name
     * @param day the day
     * @param state whether the holes are where they were planned or where they were cut; that there is none yet
     * @param parts the holes in round order
     * @param convention from where paces are counted
     */
    record Page(String course, String day, String state, List<Part> parts, String convention) {}

    /** Some holes of the round, with what stands over them. */
    record Part(Optional<String> title, List<Row> rows) {}

    /**
     * One hole.
     *
     * @param hole its name
     * @param where the part of the green, in words
     * @param paces how many on and from which side
     * @param flag which flag
     */
    record Row(String hole, String where, String paces, String flag) {}

    Page of(PublicSheet.Answer today) {
        return today.paper()
                .map(paper -> page(today, paper))
                .orElseGet(() -> new Page(
                        today.course(), texts.day(today.date()), texts.say("publicSheet.none"), List.of(), ""));
    }

    private Page page(PublicSheet.Answer today, DayPaper paper) {
        DaySheet sheet = DaySheet.of(paper, texts);
        return new Page(
                today.course(),
                texts.day(today.date()),
                sheet.state(texts),
                sheet.blocks().all().stream().map(block -> part(block, sheet)).toList(),
                texts.say("sheet.convention." + EnumNames.lowerCamel(sheet.convention())));
    }

    private Part part(Loop block, DaySheet sheet) {
        PlaceWords words = new PlaceWords(texts, sheet.paceMetres());
        Flags flags = new Flags(texts, sheet.policy());
        return new Part(
                sheet.blocks().title(block),
                sheet.holes(block).stream().map(hole -> row(hole, words, flags)).toList());
    }

    private static Row row(SheetHole hole, PlaceWords words, Flags flags) {
        return new Row(
                hole.hole(),
                words.where(hole),
                hole.paced().map(place -> words.paces(place.metres())).orElse(""),
                hole.paced().map(place -> flags.named(place.third())).orElse(""));
    }
}
