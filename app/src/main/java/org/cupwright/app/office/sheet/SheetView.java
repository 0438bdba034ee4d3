package org.cupwright.app.office.sheet;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.log.HolesCut.Became;
import org.cupwright.app.desk.paper.PublicSheet;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.Flags;
import org.cupwright.app.sheets.PlaceWords;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Loop;
import org.cupwright.policy.EnumNames;

/** The sheet in the words and the order of its page; nobody's name stands in it. */
record SheetView(Texts texts) {
    /**
     * The page.
     *
     * @param course its name
     * @param day the day
     * @param state whether the holes are where they were planned or where they were cut; that there is none yet
     * @param otherwise where paper that was printed before is wrong; empty: nowhere
     * @param parts the holes in round order
     * @param convention from where paces are counted
     * @param asOf when all of this was known
     */
    record Page(
            String course,
            String day,
            String state,
            Optional<String> otherwise,
            List<Part> parts,
            String convention,
            String asOf) {}

    /** Some holes of the round, with what stands over them. */
    record Part(Optional<String> title, List<Row> rows) {}

    /**
     * One hole.
     *
     * @param hole its name
     * @param where the part of the green, in words
     * @param paces how many on and from which side
     * @param flag which flag
     * @param became planned, or cut when; empty where the same stands over the page for all of them
     * @param otherwise whether it is elsewhere than planned
     */
    record Row(String hole, String where, String paces, String flag, String became, boolean otherwise) {}

    Page of(PublicSheet.Answer today) {
        String asOf = texts.say("publicSheet.asOf", today.now().toString());
        return today.paper()
                .map(paper -> page(today, paper, asOf))
                .orElseGet(() -> new Page(
                        today.course(),
                        texts.day(today.date()),
                        texts.say("publicSheet.none"),
                        Optional.empty(),
                        List.of(),
                        "",
                        asOf));
    }

    private Page page(PublicSheet.Answer today, DayPaper paper, String asOf) {
        DaySheet sheet = DaySheet.of(paper, texts);
        BecameView became = new BecameView(texts, paper, today.cut());
        return new Page(
                today.course(),
                texts.day(today.date()),
                became.state(sheet),
                became.otherwise(),
                sheet.blocks().all().stream()
                        .map(block -> part(block, sheet, became))
                        .toList(),
                texts.say("sheet.convention." + EnumNames.lowerCamel(sheet.convention())),
                asOf);
    }

    private Part part(Loop block, DaySheet sheet, BecameView became) {
        PlaceWords words = new PlaceWords(texts, sheet.paceMetres());
        Flags flags = new Flags(texts, sheet.policy());
        return new Part(
                sheet.blocks().title(block),
                sheet.holes(block).stream()
                        .map(hole -> row(hole, words, flags, became))
                        .toList());
    }

    private static Row row(SheetHole hole, PlaceWords words, Flags flags, BecameView became) {
        return new Row(
                hole.hole(),
                words.where(hole),
                hole.paced().map(place -> words.paces(place.metres())).orElse(""),
                hole.paced().map(place -> flags.named(place.third())).orElse(""),
                became.says(hole),
                became.find(hole.hole()).filter(was -> was != Became.CUT).isPresent());
    }
}
