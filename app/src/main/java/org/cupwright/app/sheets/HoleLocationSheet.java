package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Loop;
import org.cupwright.policy.EnumNames;
import org.cupwright.settingout.PacedPlace;

/**
 * The day's hole locations for golf shop and players: one line a hole, words first, then paces; the flag's letter
 * stands beside its colour's name.
 */
public record HoleLocationSheet(Texts texts) {
    /** So many holes stand on one page, as large as its height allows; of more rows the last go to a second page. */
    private static final int ON_A_PAGE = 18;

    /** So many rows stand on one page where the course has parts, which stay whole. */
    private static final int MOST_ON_A_PAGE = 26;

    private static final String FURTHER = "page-break-before: always; margin-bottom: 3mm;";
    private static final String HEAD =
            "font-weight: 700; font-size: 11pt; vertical-align: bottom; border-bottom: 1pt solid #25221d;";

    /** Of a page's height, what goes to margins, heading and notes. */
    private static final double AROUND_MILLIMETRES = 97;

    /** The sheet as a PDF. */
    public byte[] pdf(DaySheet day) {
        return Pdf.of(xhtml(day), texts.say("sheet.locations.title") + " " + day.course(), day.date());
    }

    String xhtml(DaySheet day) {
        Page page = day.page("locations", "13mm 16mm 11mm 16mm", texts);
        Optional<LinkOnPaper> link = LinkOnPaper.of(day.policy(), texts);
        page.heading();
        link.ifPresent(known -> known.code(page));
        page.say("h1", "title", "sheet.locations.title");
        page.open("p", "state").element("span", "state", day.state(texts));
        page.text(" · " + DaySheet.speed(day.speed(), texts)).close("p");
        link.ifPresent(known -> known.words(page));
        double around =
                AROUND_MILLIMETRES + link.map(LinkOnPaper::moreMillimetres).orElse(0.0);
        List<List<Loop>> pages = pages(day.blocks().all());
        int rows = Math.max(
                ON_A_PAGE,
                pages.stream().mapToInt(HoleLocationSheet::rows).max().orElse(0));
        boolean parts = day.blocks().all().size() > 1;
        String height = Page.millimetres((page.paper().heightMillimetres() - around) / (parts ? rows : ON_A_PAGE));
        for (int i = 0; i < pages.size(); i++) {
            if (i > 0) {
                page.open("div", "further", FURTHER).heading().close("div");
            }
            table(pages.get(i), height, day, page);
        }
        page.say("p", "note", "sheet.convention." + EnumNames.lowerCamel(day.convention()));
        String pace = texts.say("sheet.pace", texts.number(day.paceMetres(), 3));
        page.element("p", "note", String.join(" ", texts.say("sheet.depth"), pace, texts.say("sheet.letters")));
        return page.say("p", "note", "sheet.localRules").done();
    }

    /** Which parts stand on which page. */
    private static List<List<Loop>> pages(List<Loop> blocks) {
        List<List<Loop>> pages = new ArrayList<>(List.of(new ArrayList<>()));
        for (Loop block : blocks) {
            List<Loop> last = pages.get(pages.size() - 1);
            if (!last.isEmpty() && rows(last) + rows(List.of(block)) > MOST_ON_A_PAGE) {
                last = new ArrayList<>();
                pages.add(last);
            }
            last.add(block);
        }
        return pages;
    }

    /** With a head for each part. */
    private static int rows(List<Loop> blocks) {
        return blocks.stream().mapToInt(block -> 1 + block.holes().size()).sum();
    }

    private void table(List<Loop> blocks, String height, DaySheet day, Page page) {
        page.open("table", "holes").open("thead").open("tr");
        List.of("hole", "where", "paces", "depth", "flag").forEach(key -> page.say("th", key, "sheet.head." + key));
        page.close("tr").close("thead").open("tbody");
        for (Loop block : blocks) {
            day.blocks().title(block).ifPresent(title -> {
                page.open("tr")
                        .raw("<td class=\"block\" colspan=\"5\" style=\"height: " + height + "; " + HEAD + "\">");
                page.text(title).close("td").close("tr");
            });
            day.holes(block).forEach(hole -> row(hole, block.practice(), height, day, page));
        }
        page.close("tbody").close("table");
    }

    private void row(SheetHole hole, boolean practice, String height, DaySheet day, Page page) {
        PlaceWords words = new PlaceWords(texts, day.paceMetres());
        page.open("tr").open("td", "hole", "height: " + height + ";").text(hole.hole());
        page.close("td").open("td", "where").text(where(hole, practice, words));
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

    private String where(SheetHole hole, boolean practice, PlaceWords words) {
        return practice && hole.cut().isEmpty() ? texts.say("sheet.onTheDay") : words.where(hole);
    }

    private static void paces(PacedPlace place, PlaceWords words, Page page) {
        page.text(words.paces(place.metres()));
        words.fromBack(place).ifPresent(back -> page.element("span", "back", "(" + back + ")"));
    }
}
