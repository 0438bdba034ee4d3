package org.cupwright.app.office.today;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.FactText;
import org.cupwright.app.answers.FirstText;
import org.cupwright.app.answers.PlanText;
import org.cupwright.app.desk.Progress.Step;
import org.cupwright.app.desk.first.Notice;
import org.cupwright.app.desk.first.SpotNotices;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.log.HolesCut.HoleCut;
import org.cupwright.app.desk.paper.SheetLink;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.session.Right;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.Flags;
import org.cupwright.app.sheets.PlaceWords;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Loop;
import org.cupwright.cupchange.Fact;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;

/** The day in the words and the order of its page. */
record DayView(Visit visit) {
    /**
     * The page.
     *
     * @param title the day
     * @param speed the green speed that is judged for, and where it comes from
     * @param first what has to be known first, the gravest first
     * @param plan the day's plan; empty as long as there is none
     * @param mayPlan whether whoever looks may make and publish plans
     * @param seen which of the day's plans it is; 0: there is none
     */
    record Day(String title, String speed, List<String> first, Optional<Plan> plan, boolean mayPlan, long seen) {}

    /**
     * A plan.
     *
     * @param state how far it has come, by its key
     * @param says how far it has come, in words
     * @param flags how many of which flag to load
     * @param spread how the holes are spread
     * @param findings what could not be done
     * @param parts its holes in round order
     * @param done what has been done of it
     * @param byHand what is lost when the day is planned anew; empty where nobody changed anything by hand
     * @param round who cuts which holes, and by when
     * @param openSheet where everybody finds the day's sheet; empty where the course gives none out
     */
    record Plan(
            String state,
            String says,
            List<String> flags,
            Optional<String> spread,
            List<String> findings,
            List<Block> parts,
            DoneView.Done done,
            Optional<String> byHand,
            RoundView.Told round,
            Optional<String> openSheet) {
        public boolean draft() {
            return state.equals("draft");
        }

        public boolean published() {
            return state.equals("published");
        }
    }

    /** Some holes of the round, with what stands over them. */
    record Block(Optional<String> title, List<Row> rows) {}

    /**
     * One hole.
     *
     * @param id of its row
     * @param hole its name
     * @param where the part of the green, in words
     * @param paces how many on and from which side
     * @param flag which flag
     * @param within how far off is still as good
     * @param plays how hard it plays
     * @param verdict what the rules say, by its key
     * @param says what the rules say, in words
     * @param done what was done there, by its key; empty as long as nothing was
     * @param doneSays the same in words
     * @param locked whether somebody wanted it there
     * @param notices what to know at this hole, the gravest first
     */
    record Row(
            String id,
            String hole,
            String where,
            String paces,
            String flag,
            String within,
            String plays,
            String verdict,
            String says,
            String done,
            String doneSays,
            boolean locked,
            List<String> notices) {
        /** What stands below it. */
        public Optional<String> notice() {
            return notices.stream().findFirst();
        }

        /** What is a tap away. */
        public List<String> further() {
            return notices.stream().skip(1).toList();
        }
    }

    /**
     * How far judging the day's greens has come.
     *
     * @param says in words
     * @param done how many are judged
     * @param all how many there are; 0 as long as nothing is known
     */
    record Far(String says, int done, int all) {}

    static Far far(Visit visit, Step step) {
        Texts texts = visit.texts();
        String says = step.stage().isEmpty()
                ? texts.say("work.begins")
                : texts.say("progress." + step.stage(), step.done(), step.all());
        return new Far(says, step.done(), step.all());
    }

    Day of(ShowDay.Answer answer) {
        Texts texts = visit.texts();
        FirstText first = new FirstText(texts, answer.day());
        return new Day(
                texts.day(answer.day().date()),
                new DayText(texts).whence(answer.day().speed(), answer.day().rain()),
                answer.first().before().stream().map(first::says).toList(),
                answer.paper().map(paper -> plan(paper, answer.cut())),
                visit.may(Right.PLAN),
                answer.paper().map(paper -> number(paper.plan())).orElse(0L));
    }

    private Plan plan(DayPaper paper, HolesCut cut) {
        Texts texts = visit.texts();
        StoredPlan plan = paper.plan();
        DaySheet sheet = DaySheet.of(paper, texts).inRoundOrder(texts);
        PlanText said = new PlanText(texts);
        List<Block> parts = sheet.blocks().all().stream()
                .map(loop -> block(loop, sheet, paper, cut))
                .toList();
        return new Plan(
                EnumNames.lowerCamel(plan.state()),
                says(plan, sheet),
                new Flags(texts, sheet.policy()).load(sheet),
                said.spread(plan),
                said.findings(plan),
                parts,
                new DoneView(texts).of(plan, cut),
                byHand(plan),
                new RoundView(visit).of(paper.round(), sheet),
                openSheet(plan, sheet.policy()));
    }

    private Optional<String> openSheet(StoredPlan plan, Policy policy) {
        return SheetLink.path(policy).filter(path -> plan.date().equals(visit.today()) && plan.state() != State.DRAFT);
    }

    /** How far a plan has come; which of its holes are cut is said beside it. */
    private String says(StoredPlan plan, DaySheet sheet) {
        return sheet.soFar().all()
                ? sheet.state(visit.texts())
                : visit.texts().say("state." + EnumNames.lowerCamel(plan.state()));
    }

    /** What was asked for stays where it was asked for; all else of a draft is another one after it. */
    private Optional<String> byHand(StoredPlan plan) {
        List<String> asked = plan.asked().stream()
                .filter(one -> !one.isNothing())
                .map(Asked::hole)
                .toList();
        return asked.isEmpty() && plan.change().isEmpty()
                ? Optional.empty()
                : Optional.of(visit.texts().say("today.planAnew.asks", asked.size(), String.join(", ", asked)));
    }

    private long number(StoredPlan plan) {
        return visit.session()
                .read(stores -> stores.versions(plan.courseId(), plan.date()).of(Part.PLAN));
    }

    private Block block(Loop loop, DaySheet sheet, DayPaper paper, HolesCut cut) {
        List<Row> rows = sheet.holes(loop).stream()
                .map(hole -> row(hole, sheet, paper, cut))
                .toList();
        return new Block(sheet.blocks().title(loop), rows);
    }

    private Row row(SheetHole hole, DaySheet sheet, DayPaper paper, HolesCut cuts) {
        Optional<HoleCut> cut = cuts.find(hole.hole());
        Texts texts = visit.texts();
        Optional<StoredHole> planned = paper.plan().find(hole.hole());
        PlaceWords words = new PlaceWords(texts, sheet.paceMetres());
        String done = cut.map(was -> DoneView.key(was, planned)).orElse("");
        boolean left = done.equals(DoneView.LEFT);
        Optional<Verdict> verdict = hole.cut().map(SheetHole.Cut::verdict).filter(found -> !left);
        return new Row(
                "row-" + sheet.holes().indexOf(hole),
                hole.hole(),
                words.where(hole),
                hole.paced().map(place -> words.paces(place.metres())).orElse(""),
                hole.paced()
                        .map(place -> new Flags(texts, sheet.policy()).named(place.third()))
                        .orElse(""),
                hole.cut()
                        .flatMap(spot -> spot.directions().leeway().map(room -> words.within(room, spot.verdict())))
                        .orElse(""),
                planned.flatMap(one -> one.position().judgement().difficulty().rank())
                        .map(rank -> texts.say("difficulty." + EnumNames.lowerCamel(rank)))
                        .orElse(""),
                verdict.map(EnumNames::lowerCamel).orElse(""),
                verdict.map(found -> texts.say("verdict." + EnumNames.lowerCamel(found)))
                        .orElse(""),
                done,
                cut.map(was -> texts.say("today.done." + done, was.time().toString(), was.person()))
                        .orElse(""),
                planned.filter(StoredHole::locked).isPresent(),
                notices(paper, hole.hole(), left, cuts.several(hole.hole())));
    }

    /**
     * That a spot is to be used with care its verdict says; why, stands below it. Of a hole that was left where it was
     * the rules for a new one say nothing: it would be too near itself. Before all of it stands what several wrote of
     * one hole.
     */
    private List<String> notices(DayPaper paper, String hole, boolean left, List<Fact> several) {
        Texts texts = visit.texts();
        FirstText first = new FirstText(texts, paper.day());
        FactText words = new FactText(texts, paper.day().course(), paper.day().policy());
        Stream<String> told = paper.first().at(hole).stream()
                .filter(notice -> !(left && notice.kind() == Notice.Kind.CARE))
                .map(notice -> notice.says().key().equals(SpotNotices.CARE)
                        ? texts.show(notice.says().arguments().get(0))
                        : first.says(notice));
        return Stream.concat(several.isEmpty() ? Stream.of() : Stream.of(words.several(several)), told)
                .toList();
    }
}
