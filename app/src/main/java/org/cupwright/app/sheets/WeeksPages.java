package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.desk.paper.WeeksPaper.PlanOfDay;
import org.cupwright.course.Loop;
import org.cupwright.course.WholeLoops;

/**
 * How weeks of plans stand on paper: which days and holes on which page, upright or lying, and how large. All pages of
 * one document are alike.
 *
 * @param lying whether the paper lies on its longer side
 * @param scale of all letters of the table; 1 is the smallest that is still read easily
 * @param dayMillimetres width of a day's column
 * @param rowMillimetres height of a hole's row
 * @param all the pages, in order
 */
record WeeksPages(boolean lying, double scale, double dayMillimetres, double rowMillimetres, List<OnePage> all) {
    /** What stands on one page. */
    record OnePage(List<PlanOfDay> days, List<Loop> blocks) {}

    /** Four weeks. */
    static final int MOST_DAYS = 28;

    static final int MOST_HOLES = 18;

    static final double SIDE_MARGIN_MILLIMETRES = 7;
    static final double END_MARGIN_MILLIMETRES = 5.5;
    static final double HOLE_MILLIMETRES = 6.5;

    /** Room for a cell in letters of scale 1, and as wide as words instead of letters need it. */
    private static final double DAY_MILLIMETRES = 9;

    private static final double ROW_MILLIMETRES = 9.1;
    private static final double WORDS_MILLIMETRES = 15.5;

    /** A part's name over its holes. */
    static final double BLOCK_ROWS = 0.5;

    /** Margins, and what parts heading, table and notes from each other. */
    private static final double AROUND_MILLIMETRES = 2 * END_MARGIN_MILLIMETRES + 5;

    /** Their letters, as the style sheet has them. */
    private static final PaperLines HEADING = new PaperLines(10.5, 1.25);

    private static final PaperLines NOTES = new PaperLines(6.8, 1.2);

    /** The table's own head and sums in letters of scale 1. */
    private static final double HEAD_AND_SUMS_MILLIMETRES = 18.6;

    /** Larger letters say no more. */
    private static final double LARGEST = 1.9;

    private static final double WIDEST_DAY_MILLIMETRES = 34;

    /** Of a row beside what its letters need. */
    private static final double TALLEST = 1.5;

    /** What stands above and below every table. */
    record Around(String heading, String notes) {
        double height(double width) {
            return AROUND_MILLIMETRES + HEADING.height(heading, width) + NOTES.height(notes, width);
        }
    }

    static WeeksPages of(List<PlanOfDay> days, BlockText blocks, PaperSize paper, Around around) {
        List<OnePage> pages = new ArrayList<>();
        boolean named =
                blocks.all().stream().anyMatch(block -> blocks.title(block).isPresent());
        List<List<Loop>> sheets = WholeLoops.packed(inEighteens(blocks.all()), MOST_HOLES);
        for (int from = 0; from < days.size(); from += MOST_DAYS) {
            List<PlanOfDay> some = days.subList(from, Math.min(days.size(), from + MOST_DAYS));
            sheets.forEach(sheet -> pages.add(new OnePage(some, sheet)));
        }
        int columns = Math.min(days.size(), MOST_DAYS);
        double rows =
                sheets.stream().mapToDouble(sheet -> rows(sheet, named)).max().orElse(1);
        Paper sized = new Paper(columns, rows, around);
        WeeksPages upright = sized.pages(false, paper.widthMillimetres(), paper.heightMillimetres(), pages);
        WeeksPages lying = sized.pages(true, paper.heightMillimetres(), paper.widthMillimetres(), pages);
        return lying.scale > upright.scale ? lying : upright;
    }

    /** Of every page, as style sheets write them. */
    static String margins() {
        return Page.millimetres(END_MARGIN_MILLIMETRES) + " " + Page.millimetres(SIDE_MARGIN_MILLIMETRES);
    }

    private static double rows(List<Loop> sheet, boolean named) {
        double rows = named ? BLOCK_ROWS * sheet.size() : 0;
        return rows + sheet.stream().mapToInt(block -> block.holes().size()).sum();
    }

    /** A part of more holes than a page has room for goes on over further pages. */
    private static List<Loop> inEighteens(List<Loop> blocks) {
        List<Loop> parts = new ArrayList<>();
        for (Loop block : blocks) {
            List<String> holes = block.holes();
            for (int from = 0; from < holes.size(); from += MOST_HOLES) {
                List<String> some = holes.subList(from, Math.min(holes.size(), from + MOST_HOLES));
                parts.add(new Loop(block.name(), some, block.practice()));
            }
        }
        return parts;
    }

    /** What has to find room on every page. */
    private record Paper(int columns, double rows, Around around) {
        WeeksPages pages(boolean lying, double width, double height, List<OnePage> all) {
            double inside = width - 2 * SIDE_MARGIN_MILLIMETRES;
            double room = height - around.height(inside);
            double day = (inside - 2 * HOLE_MILLIMETRES) / columns;
            double most = room / (rows * ROW_MILLIMETRES + HEAD_AND_SUMS_MILLIMETRES);
            double scale = Math.min(LARGEST, Math.min(day / DAY_MILLIMETRES, most));
            double row = (room - scale * HEAD_AND_SUMS_MILLIMETRES) / rows;
            return new WeeksPages(
                    lying,
                    scale,
                    Math.min(day, WIDEST_DAY_MILLIMETRES),
                    Math.min(row, TALLEST * scale * ROW_MILLIMETRES),
                    List.copyOf(all));
        }
    }

    /** Whether there is room for words instead of letters. */
    boolean words() {
        return dayMillimetres / scale >= WORDS_MILLIMETRES;
    }

    double tableMillimetres(OnePage page) {
        return page.days().size() * dayMillimetres + 2 * HOLE_MILLIMETRES;
    }
}
