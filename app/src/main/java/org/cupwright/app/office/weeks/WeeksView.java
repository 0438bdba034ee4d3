package org.cupwright.app.office.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.answers.WeeksText;
import org.cupwright.app.desk.plan.PlanWeeks;
import org.cupwright.app.desk.plan.ShowWeeks;
import org.cupwright.app.desk.plan.ShowWeeks.OfDay;
import org.cupwright.app.office.frame.Paragraph;
import org.cupwright.app.session.Right;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Loop;
import org.cupwright.policy.EnumNames;

/** The weeks in the words and the order of their page. */
record WeeksView(Visit visit, ShowWeeks.Answer answer, Wished wished) {
    /**
     * The page.
     *
     * @param planned how many days are planned
     * @param decide what could not be kept to and what stays as it is: to be decided about
     * @param even how even the plans are
     * @param since what is not in the plans
     * @param last the last change; empty where there was none
     * @param heads the days
     * @param parts the holes, in round order
     * @param plan what the form for planning begins with
     * @param inARow how many days from the first on have a plan, one after another
     * @param seen the plans that stand here, as forms carry them
     * @param wishes what was gathered to be changed
     * @param bounds how near the plans are to what no plan is better than
     * @param legend what letters and signs in the table mean
     * @param mayPlan whether whoever looks may plan and change
     * @param mayChange whether there is something to be changed, too
     * @param changes what to press for it: what was gathered is changed, else what came since is taken up; empty where
     *     there is neither
     */
    record Page(
            String planned,
            List<Paragraph> decide,
            String even,
            List<String> since,
            Optional<String> last,
            List<Head> heads,
            List<Part> parts,
            PlanForm plan,
            int inARow,
            String seen,
            List<Listed> wishes,
            List<BoundsRows.Row> bounds,
            String legend,
            boolean mayPlan,
            boolean mayChange,
            Optional<String> changes) {}

    /**
     * A day over its column.
     *
     * @param state by its key; empty without a plan
     * @param says how far it has come, where that is more than a draft
     * @param full the whole day in words
     */
    record Head(LocalDate date, String weekday, String day, String state, String says, String full) {}

    /** Some holes of the round, with what stands over them. */
    record Part(Optional<String> title, List<Row> rows) {}

    /** A hole and its days. */
    record Row(String hole, List<WeeksCells.Cell> cells) {}

    /** What the form for planning begins with. */
    record PlanForm(LocalDate from, LocalDate earliest, int days, int most) {}

    /**
     * One thing to be changed.
     *
     * @param says what, in words
     * @param without the page's address without it
     */
    record Listed(String text, String says, String without) {}

    private static final int FORTNIGHT = 14;

    /** Of a cell on the page. */
    static String id(LocalDate date, String hole) {
        return "c-" + date + "-" + hole.replaceAll("[^\\p{L}\\p{N}]", "_");
    }

    Page page() {
        List<StoredPlan> plans = answer.plans();
        List<Paragraph> standing = plans.isEmpty()
                ? List.of()
                : Paragraph.all(new WeeksText(visit.texts())
                        .standing(plans, answer.day().policy()));
        boolean mayPlan = visit.may(Right.PLAN);
        boolean drafts = plans.stream()
                .anyMatch(plan -> plan.state() == State.DRAFT && !plan.date().isBefore(visit.today()));
        return new Page(
                planned(plans),
                standing.stream().limit(Math.max(0, standing.size() - 1)).toList(),
                standing.isEmpty() ? "" : standing.get(standing.size() - 1).whole(),
                since(),
                last(),
                answer.days().stream().map(this::head).toList(),
                parts(),
                planForm(),
                answer.inARow(),
                SeenField.of(answer.seen()),
                wished.all().stream().map(this::listed).toList(),
                new BoundsRows(visit.texts()).of(plans),
                visit.texts().say("weeks.legend") + " " + new SignText(visit.texts()).legend(),
                mayPlan,
                mayPlan && drafts,
                changes());
    }

    private Optional<String> changes() {
        if (!wished.all().isEmpty()) {
            return Optional.of(visit.texts().say("weeks.change"));
        }
        return since().isEmpty() ? Optional.empty() : Optional.of(visit.texts().say("weeks.takeUp"));
    }

    private String planned(List<StoredPlan> plans) {
        Texts texts = visit.texts();
        if (plans.isEmpty()) {
            return texts.say("weeks.none", texts.day(visit.date()));
        }
        long published =
                plans.stream().filter(plan -> plan.state() != State.DRAFT).count();
        LocalDate last = plans.get(plans.size() - 1).date();
        String planned = texts.say("weeks.planned", plans.size(), texts.weekday(last), published);
        int without = answer.days().size() - plans.size();
        return without == 0 ? planned : planned + " " + texts.say("weeks.without", without);
    }

    private List<String> since() {
        List<String> since = new ArrayList<>();
        if (answer.since().settings() > 0) {
            since.add(visit.texts().say("weeks.since.settings", answer.since().settings()));
        }
        if (answer.since().entries() > 0) {
            since.add(visit.texts().say("weeks.since.entries", answer.since().entries()));
        }
        return since;
    }

    private Optional<String> last() {
        return answer.last()
                .map(change -> visit.texts()
                        .say(
                                "weeks.since.change",
                                change.person(),
                                visit.texts()
                                        .moment(change.at(), answer.day().log().zone()),
                                change.days().size()));
    }

    private Head head(OfDay day) {
        Texts texts = visit.texts();
        String state =
                day.plan().map(plan -> EnumNames.lowerCamel(plan.state())).orElse("");
        String says = day.plan().isEmpty()
                ? texts.say("weeks.notPlanned")
                : state.equals("draft") ? "" : texts.say("weeks.state." + state);
        return new Head(
                day.date(),
                texts.dayOfWeek(day.date()),
                texts.dayOfMonth(day.date()),
                state,
                says,
                texts.day(day.date()));
    }

    private List<Part> parts() {
        BlockText blocks = new BlockText(visit.texts(), answer.day().course());
        WeeksCells cells = new WeeksCells(visit, answer.day().policy(), wished);
        return blocks.all().stream()
                .filter(block -> !block.practice())
                .map(block -> new Part(blocks.title(block), rows(block, cells)))
                .toList();
    }

    private List<Row> rows(Loop block, WeeksCells cells) {
        return block.holes().stream()
                .map(hole -> new Row(
                        hole,
                        answer.days().stream().map(day -> cells.of(hole, day)).toList()))
                .toList();
    }

    private PlanForm planForm() {
        LocalDate from = visit.date().isBefore(visit.today()) ? visit.today() : visit.date();
        return new PlanForm(from, visit.today(), FORTNIGHT, PlanWeeks.MOST_DAYS);
    }

    private Listed listed(Wish wish) {
        return new Listed(
                wish.text(),
                new WishText(visit.texts()).says(wish),
                wished.without(wish).address());
    }
}
