package org.cupwright.app.sheets;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.WeatherText;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.WeeksPaper;
import org.cupwright.app.desk.paper.WeeksPaper.PlanOfDay;
import org.cupwright.app.sheets.WeeksPages.OnePage;
import org.cupwright.app.storage.StoredPlan.Basis;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;

/**
 * Weeks of plans for the wall of the shed: holes by days, each with its third in a letter that is read from a step
 * away, and in paces for whoever stands before it.
 */
public record WeeksSheet(Texts texts) {
    private static final String SEPARATED = " · ";

    /** The sheet as a PDF. */
    public byte[] pdf(WeeksPaper paper) {
        String title = texts.say("sheet.weeks.title") + " " + paper.course().name();
        return Pdf.of(xhtml(paper), title, paper.first());
    }

    String xhtml(WeeksPaper paper) {
        Policy policy = paper.policy();
        BlockText blocks = new BlockText(texts, paper.course());
        WeeksPages pages = WeeksPages.of(paper.days(), blocks, policy.get(PaperPolicy.PAPER), around(paper));
        WeeksTable table = new WeeksTable(texts, blocks, pages, policy.get(PlacePolicy.PACE_METRES));
        Page page = new Page(
                "weeks", WeeksPages.margins(), paper.course().name(), paper.first(), policy, texts, pages.lying());
        for (OnePage one : pages.all()) {
            page.open("div", "sheet");
            heading(paper, one.days(), page);
            table.write(one, page);
            page.element("p", "note", notes(paper)).close("div");
        }
        return page.done();
    }

    private WeeksPages.Around around(WeeksPaper paper) {
        return new WeeksPages.Around(title(paper) + " " + stretch(paper.days()), notes(paper));
    }

    private void heading(WeeksPaper paper, List<PlanOfDay> days, Page page) {
        page.open("div", "heading")
                .element("span", "course", title(paper))
                .text(" " + stretch(days))
                .close("div");
    }

    private String title(WeeksPaper paper) {
        return paper.course().name() + SEPARATED + texts.say("sheet.weeks.title");
    }

    private String stretch(List<PlanOfDay> days) {
        String last = texts.day(days.get(days.size() - 1).date());
        return texts.say("sheet.weeks.span", texts.weekday(days.get(0).date()), last) + SEPARATED + states(days);
    }

    private String written(WeeksPaper paper) {
        String day = texts.day(paper.writtenOn());
        return paper.writtenBy().isBlank()
                ? texts.say("sheet.weeks.written", day)
                : texts.say("sheet.weeks.writtenBy", day, paper.writtenBy());
    }

    /** How many of its days are drafts, published, done. */
    private String states(List<PlanOfDay> days) {
        return Arrays.stream(State.values())
                .filter(state -> count(days, state) > 0)
                .map(state -> texts.say("sheet.weeks.days." + EnumNames.lowerCamel(state), count(days, state)))
                .collect(Collectors.joining(SEPARATED));
    }

    private static long count(List<PlanOfDay> days, State state) {
        return days.stream().filter(day -> day.plan().state() == state).count();
    }

    /** The speed they were judged at with where it comes from; of days judged apart, from the least to the most. */
    private String speed(List<PlanOfDay> days) {
        List<Basis> bases = days.stream().map(day -> day.plan().basis()).toList();
        DayText says = new DayText(texts);
        Basis first = bases.get(0);
        if (bases.stream().allMatch(basis -> sameDay(basis, first))) {
            return says.whence(first.daySpeed(), first.dayRain());
        }
        double least = bases.stream().mapToDouble(Basis::speedFeet).min().orElseThrow();
        double most = bases.stream().mapToDouble(Basis::speedFeet).max().orElseThrow();
        return texts.say("sheet.weeks.speeds", texts.number(least, 1), texts.number(most, 1));
    }

    private static boolean sameDay(Basis one, Basis other) {
        return one.daySpeed().equals(other.daySpeed()) && one.dayRain().equals(other.dayRain());
    }

    /** What the table's letters and signs mean, and what it rests on. */
    private String notes(WeeksPaper paper) {
        Policy policy = paper.policy();
        return String.join(
                " ",
                texts.say("sheet.weeks.letters"),
                texts.say("sheet.weeks.signs"),
                texts.say("sheet.convention." + EnumNames.lowerCamel(policy.get(PlacePolicy.ON_CONVENTION))),
                texts.say("sheet.pace", texts.number(policy.get(PlacePolicy.PACE_METRES), 3)),
                texts.say("sheet.weeks.speed", speed(paper.days())),
                new WeatherText(texts).basis(paper.weather()),
                texts.say("sheet.weeks.anew"),
                written(paper));
    }
}
