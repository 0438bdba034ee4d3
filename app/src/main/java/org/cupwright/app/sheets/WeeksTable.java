package org.cupwright.app.sheets;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.answers.WeekCell;
import org.cupwright.app.answers.WeekCell.Sign;
import org.cupwright.app.desk.paper.WeeksPaper.PlanOfDay;
import org.cupwright.app.sheets.WeeksPages.OnePage;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Loop;
import org.cupwright.green.Third;
import org.cupwright.policy.EnumNames;

/** The table of a page of weeks: holes down, days across, sums below. */
record WeeksTable(Texts texts, BlockText blocks, WeeksPages pages, double paceMetres) {
    /** Of the smallest letters at scale 1; on a wall less than 6.5 is hard to read (our choice). */
    private static final double POINTS = 6.6;

    private static final double MILLIMETRES_A_POINT = 25.4 / 72;

    /** Of a cell, in letters: the third's, as the style sheet has it, and two of paces. */
    private static final double LINES = 3.7;

    /** What a cell leaves free, and how far its lines are apart, in letters. */
    private static final double CLEAR_MILLIMETRES = 0.7;

    private static final double CLOSEST = 0.95;
    private static final double WIDEST = 1.25;

    /** The line between two rows takes room too. */
    private static final double RULE_MILLIMETRES = 0.12;

    private static final String BLANK = "\u00a0";

    void write(OnePage one, Page page) {
        page.open("table", pages.words() ? "grid words" : "grid", width(pages.tableMillimetres(one)) + size());
        columns(one, page);
        head(one, page);
        page.open("tbody");
        for (Loop block : one.blocks()) {
            blocks.title(block).ifPresent(title -> name(title, one, page));
            block.holes().forEach(hole -> row(hole, one, page));
        }
        sums(one, page);
        page.close("tbody").close("table");
    }

    /** The letters, and lines as far apart as a row has room for. */
    private String size() {
        double points = POINTS * Math.max(1, pages.scale());
        double lines = LINES * points * MILLIMETRES_A_POINT;
        double apart = (pages.rowMillimetres() - CLEAR_MILLIMETRES) / lines;
        double leading = Math.max(CLOSEST, Math.min(WIDEST, apart));
        return String.format(Locale.ROOT, " font-size: %.1fpt; line-height: %.3f;", points, leading);
    }

    private static String width(double millimetres) {
        return "width: " + Page.millimetres(millimetres) + ";";
    }

    private void columns(OnePage one, Page page) {
        page.open("colgroup");
        column(WeeksPages.HOLE_MILLIMETRES, page);
        one.days().forEach(day -> column(pages.dayMillimetres(), page));
        column(WeeksPages.HOLE_MILLIMETRES, page);
        page.close("colgroup");
    }

    private static void column(double millimetres, Page page) {
        page.raw("<col style=\"" + width(millimetres) + "\"/>");
    }

    private void head(OnePage one, Page page) {
        page.open("thead").open("tr").element("th", "hole", "");
        for (PlanOfDay day : one.days()) {
            page.open(
                    "th",
                    kind("day", day) + " " + EnumNames.lowerCamel(day.plan().state()));
            page.element("div", "weekday", texts.dayOfWeek(day.date()));
            page.element("div", "date", texts.dayOfMonth(day.date()));
            page.element("div", "state", state(day.plan().state())).close("th");
        }
        page.element("th", "hole", "").close("tr").close("thead");
    }

    private String state(State state) {
        return texts.say((pages.words() ? "state." : "weeks.state.") + EnumNames.lowerCamel(state));
    }

    /** Weeks begin on Monday (ISO 8601). */
    private static String kind(String kind, PlanOfDay day) {
        return day.date().getDayOfWeek() == DayOfWeek.MONDAY ? kind + " monday" : kind;
    }

    private void name(String title, OnePage one, Page page) {
        double height = WeeksPages.BLOCK_ROWS * pages.rowMillimetres();
        page.open("tr").raw("<td class=\"block\" colspan=\"" + (one.days().size() + 2) + "\"");
        page.raw(" style=\"height: " + Page.millimetres(height) + ";\">").text(title);
        page.close("td").close("tr");
    }

    private void row(String hole, OnePage one, Page page) {
        String height = Page.millimetres(pages.rowMillimetres() - RULE_MILLIMETRES);
        page.open("tr").open("td", "hole", "height: " + height + ";");
        page.text(hole).close("td");
        for (PlanOfDay day : one.days()) {
            page.open("td", kind("cell", day));
            cell(new WeekCell(texts, day.plan().find(hole)), page);
            page.close("td");
        }
        page.element("td", "hole", hole).close("tr");
    }

    private void cell(WeekCell cell, Page page) {
        page.open("div", "area");
        if (pages.words()) {
            page.text(cell.numbered());
        } else if (cell.number().isPresent()) {
            page.text(cell.number().get());
        } else {
            page.text(cell.letter());
            page.element("span", "lateral", cell.lateral());
        }
        String signs = cell.signs().stream().map(cell::say).collect(Collectors.joining());
        if (!signs.isEmpty()) {
            page.element("span", "sign", signs);
        }
        page.close("div");
        cell.on(paceMetres).ifPresent(on -> page.element("div", "paces", on));
        side(cell).ifPresent(side -> page.element("div", "paces", side));
    }

    private Optional<String> side(WeekCell cell) {
        return pages.words() ? cell.side(paceMetres) : cell.sideShort(paceMetres);
    }

    /** How the holes of this page are spread on each day, and of how many something is out of the usual. */
    private void sums(OnePage one, Page page) {
        List<List<String>> days = one.days().stream().map(day -> sums(one, day)).toList();
        List<String> heads = List.of(
                texts.say("weeks.sums.thirds"), texts.say("weeks.sums.laterals"), texts.say("weeks.sums.signs"));
        for (int line = 0; line < heads.size(); line++) {
            page.open("tr", line == 0 ? "sums first" : "sums").element("td", "hole", heads.get(line));
            for (int day = 0; day < days.size(); day++) {
                page.element(
                        "td", kind("sum", one.days().get(day)), days.get(day).get(line));
            }
            page.element("td", "hole", heads.get(line)).close("tr");
        }
    }

    private List<String> sums(OnePage one, PlanOfDay day) {
        List<WeekCell> cells = one.blocks().stream()
                .flatMap(block -> block.holes().stream())
                .map(hole -> new WeekCell(texts, day.plan().find(hole)))
                .toList();
        List<String> thirds = new ArrayList<>();
        for (Third third : Third.values()) {
            thirds.add(count(cells.stream()
                    .filter(cell -> cell.third().filter(third::equals).isPresent())));
        }
        List<String> laterals = Stream.of("left", "centre", "right")
                .map(way -> texts.say("weeks.lateral." + way))
                .map(way -> count(cells.stream().filter(cell -> cell.lateral().equals(way))))
                .toList();
        List<String> signs = Stream.of(Sign.CARE, Sign.SET_ASIDE)
                .map(sign -> count(cells.stream().filter(cell -> cell.signs().contains(sign))))
                .toList();
        return Stream.of(thirds, laterals, signs)
                .map(numbers -> String.join(BLANK, numbers))
                .toList();
    }

    private static String count(Stream<WeekCell> cells) {
        return Long.toString(cells.count());
    }
}
