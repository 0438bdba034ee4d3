package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.texts.Texts;

/**
 * The changer's card: a sheet printed on both sides and folded twice, so that it goes into a pocket. Quarter by
 * quarter: what to load and look at before leaving the shed; three holes each in round order, with where, how far off
 * is still good, yesterday's hole, a drawing and room to write; at last the hand work in short, and the cautions.
 */
public final class ChangersCard {
    private static final int QUARTERS = 4;
    private static final int HOLES_A_QUARTER = 3;

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
        Xhtml out = page.start("card", "0");
        List<Consumer<Xhtml>> quarters = quarters(day, page);
        for (int from = 0; from < quarters.size(); from += QUARTERS) {
            out.open("div", "side", size(page.paper(), 1));
            for (int i = 0; i < QUARTERS; i++) {
                out.open("div", "quarter", place(page.paper(), i));
                quarters.get(from + i).accept(out);
                out.close("div");
            }
            folds(page.paper(), out);
            if (from + QUARTERS < quarters.size()) { // the last side has all cautions
                out.element("div", "local", texts.say("sheet.localRules"));
            }
            out.close("div");
        }
        return page.end(out);
    }

    /** The quarters in reading order; those left over are room for notes. */
    private List<Consumer<Xhtml>> quarters(DaySheet day, Page page) {
        ShedQuarter shed = new ShedQuarter(day, texts);
        List<Consumer<Xhtml>> quarters = new ArrayList<>();
        quarters.add(out -> shed.before(page, out));
        for (int from = 0; from < day.holes().size(); from += HOLES_A_QUARTER) {
            List<SheetHole> holes =
                    day.holes().subList(from, Math.min(day.holes().size(), from + HOLES_A_QUARTER));
            quarters.add(out -> holes(holes, day, page, out));
        }
        while (quarters.size() % QUARTERS != QUARTERS - 1) {
            quarters.add(out -> shed.notes(page, out));
        }
        quarters.add(out -> shed.handWork(page, out));
        return quarters;
    }

    private void holes(List<SheetHole> holes, DaySheet day, Page page, Xhtml out) {
        page.heading(out);
        CardHole card = new CardHole(day, texts);
        double height = (page.paper().heightMillimetres() / 2 - CardHole.AROUND_MILLIMETRES) / HOLES_A_QUARTER;
        holes.forEach(hole -> card.write(hole, height, out));
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
    private static void folds(PaperSize paper, Xhtml out) {
        String middle = Page.millimetres(paper.widthMillimetres() / 2);
        String half = Page.millimetres(paper.heightMillimetres() / 2);
        out.open(
                        "div",
                        "fold down",
                        "left: " + middle + "; height: " + Page.millimetres(paper.heightMillimetres()) + ";")
                .close("div");
        out.open("div", "fold across", "top: " + half + "; width: " + Page.millimetres(paper.widthMillimetres()) + ";")
                .close("div");
    }
}
