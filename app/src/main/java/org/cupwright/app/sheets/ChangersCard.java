package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Loop;
import org.cupwright.course.WholeLoops;

/**
 * The changer's card: a sheet printed on both sides and folded twice, so that it goes into a pocket. Quarter by
 * quarter: what to load and look at before leaving the shed; three holes each in round order, with where, how far off
 * is still good, yesterday's hole, a drawing and room to write; at last the hand work in short, and the cautions. A
 * course of more than eighteen holes has several cards, each with whole nines or eighteens; practice greens stand on
 * the last.
 */
public record ChangersCard(Texts texts) {
    private static final int QUARTERS = 4;
    private static final int HOLES_A_QUARTER = 3;

    /** So many have room on both sides of one sheet, where not too much is to be said of them. */
    private static final int HOLES_A_CARD = 18;

    /** The card as a PDF. */
    public byte[] pdf(DaySheet day) {
        return Pdf.of(xhtml(day), texts.say("sheet.card.title") + " " + day.course(), day.date());
    }

    String xhtml(DaySheet any) {
        DaySheet day = any.inRoundOrder(texts);
        Page page = day.page("card", "0", texts);
        List<List<Loop>> cards = WholeLoops.packed(day.blocks().all(), HOLES_A_CARD);
        for (int i = 0; i < cards.size(); i++) {
            sides(quarters(day, cards.get(i), i == cards.size() - 1, page), page);
        }
        return page.done();
    }

    private void sides(List<Runnable> quarters, Page page) {
        for (int from = 0; from < quarters.size(); from += QUARTERS) {
            page.open("div", "side", size(page.paper(), 1));
            for (int i = 0; i < QUARTERS; i++) {
                page.open("div", "quarter", place(page.paper(), i));
                quarters.get(from + i).run();
                page.close("div");
            }
            folds(page);
            if (from + QUARTERS < quarters.size()) { // the last side has all cautions
                page.say("div", "local", "sheet.localRules");
            }
            page.close("div");
        }
    }

    /** What writes a card's quarters, in reading order; those left over are room for notes. */
    private List<Runnable> quarters(DaySheet whole, List<Loop> blocks, boolean last, Page page) {
        DaySheet day = whole.of(
                blocks.stream().flatMap(block -> whole.holes(block).stream()).toList());
        ShedQuarter shed = new ShedQuarter(day, texts, page);
        CardHole card = new CardHole(day, texts, page);
        double height = (page.paper().heightMillimetres() / 2 - CardHole.AROUND_MILLIMETRES) / HOLES_A_QUARTER;
        NoticeBoxes boxes = NoticeBoxes.of(day.first(), shed.round(), page.paper());
        List<Runnable> quarters = new ArrayList<>(List.of(() -> shed.before(boxes.first())));
        boxes.further().forEach(notices -> quarters.add(() -> shed.firstGoesOn(notices)));
        for (Loop block : blocks) {
            for (List<SheetHole> holes : inQuarters(card, day.holes(block), height, page.paper())) {
                quarters.add(() -> {
                    page.heading(day.blocks().title(block));
                    holes.forEach(hole -> card.write(hole, height));
                });
            }
        }
        List<PracticeOnCard> practice = last ? PracticeOnCard.of(whole, page) : List.of();
        boolean apart = quarters.size() % QUARTERS != QUARTERS - 1
                || practice.size() > 1
                || !practice.stream().allMatch(PracticeOnCard::isShort);
        if (apart) {
            practice.forEach(green -> quarters.add(green::quarter));
        }
        while (quarters.size() % QUARTERS != QUARTERS - 1) {
            quarters.add(shed::notes);
        }
        quarters.add(() -> {
            shed.handWork();
            if (!apart) {
                practice.forEach(PracticeOnCard::inShort);
            }
        });
        return quarters;
    }

    /** Three holes a quarter; fewer where their notices need the room. */
    private static List<List<SheetHole>> inQuarters(
            CardHole card, List<SheetHole> holes, double height, PaperSize paper) {
        List<List<SheetHole>> quarters = new ArrayList<>();
        double used = 0;
        for (SheetHole hole : holes) {
            double needs = card.height(hole, height, paper.widthMillimetres() / 2);
            boolean full = used + needs > HOLES_A_QUARTER * height + 0.01;
            if (quarters.isEmpty() || full) {
                quarters.add(new ArrayList<>());
                used = 0;
            }
            quarters.get(quarters.size() - 1).add(hole);
            used += needs;
        }
        return quarters;
    }

    private static String size(PaperSize paper, int parts) {
        return "width: " + Page.millimetres(paper.widthMillimetres() / parts) + "; height: "
                + Page.millimetres(paper.heightMillimetres() / parts - (parts == 1 ? 0.2 : 0)) + ";";
    }

    private static String place(PaperSize paper, int quarter) {
        double left = quarter % 2 == 0 ? 0 : paper.widthMillimetres() / 2;
        double top = quarter < 2 ? 0 : paper.heightMillimetres() / 2;
        return size(paper, 2) + " left: " + Page.millimetres(left) + "; top: " + Page.millimetres(top) + ";";
    }

    /** Where to fold: dashed lines across the middle. */
    private static void folds(Page page) {
        double width = page.paper().widthMillimetres();
        double height = page.paper().heightMillimetres();
        String down = "left: " + Page.millimetres(width / 2) + "; height: " + Page.millimetres(height) + ";";
        String across = "top: " + Page.millimetres(height / 2) + "; width: " + Page.millimetres(width) + ";";
        page.open("div", "fold down", down).close("div");
        page.open("div", "fold across", across).close("div");
    }
}
