package org.cupwright.app.office.weeks;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.app.answers.ReasonText;
import org.cupwright.app.answers.WeekCell;
import org.cupwright.app.desk.plan.ShowWeeks;
import org.cupwright.app.desk.plan.ShowWeeks.OfDay;
import org.cupwright.app.session.Right;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.green.PlacePolicy;

/** One hole on one day: where, why there, and what can be wished of it. */
record CellView(Visit visit, ShowWeeks.Answer answer) {
    /** So far about its spot a hole is kept off where nobody says: our choice. */
    private static final int USUAL_PACES = 2;

    /**
     * What is shown of it.
     *
     * @param title hole and day
     * @param cell its place in the table, by its id
     * @param where the spot; empty where the plan has none
     * @param verdict what the rules say
     * @param notes what is out of the usual
     * @param reasons why it is there, the most telling first
     * @param instead where else it could have been, and why not
     * @param others the days with which its spot may be exchanged; empty where nothing may be wished
     * @param mayWish whether it may be wished otherwise
     * @param unit in which it is typed how far about its spot it is not to be
     * @param usual so far about it where nobody says
     */
    record Chosen(
            LocalDate on,
            String hole,
            String cell,
            String title,
            String where,
            String verdict,
            List<String> notes,
            List<String> reasons,
            Optional<Instead> instead,
            List<Other> others,
            boolean mayWish,
            String unit,
            String usual) {}

    /** A spot that was not taken. */
    record Instead(String where, List<String> whyNot) {}

    /** Another day of the same hole. */
    record Other(LocalDate date, String says) {}

    /** @param cell as {@code 2026-06-21:7}; empty for one that is not on the page */
    Optional<Chosen> of(String cell) {
        String hole = cell.substring(cell.indexOf(':') + 1);
        return answer.day()
                .course()
                .find(hole)
                .flatMap(known -> answer.days().stream()
                        .filter(day -> cell.startsWith(day.date() + ":"))
                        .findFirst()
                        .map(day -> chosen(day, hole)));
    }

    private Chosen chosen(OfDay day, String hole) {
        Texts texts = visit.texts();
        Optional<StoredHole> planned = day.plan().flatMap(plan -> plan.find(hole));
        boolean mayWish = mayBeElsewhere(day) && visit.may(Right.PLAN);
        return new Chosen(
                day.date(),
                hole,
                WeeksView.id(day.date(), hole),
                texts.say("weeks.cell", hole, texts.day(day.date())),
                planned.map(this::where).orElseGet(() -> texts.say("weeks.cell.none")),
                planned.map(one -> judgements().verdict(one.position().judgement()))
                        .orElse(""),
                planned.map(one -> new SignText(texts).all(new WeekCell(texts, planned), one))
                        .orElse(List.of()),
                planned.map(new ReasonText(texts, pace())::all).orElse(List.of()),
                planned.flatMap(StoredHole::alternative)
                        .map(other -> new Instead(
                                judgements().where(other.position()),
                                other.whyNot().stream().map(texts::say).toList())),
                mayWish && planned.isPresent() ? others(day, hole) : List.of(),
                mayWish && planned.isPresent(),
                texts.say(visit.unit().key()),
                visit.unit().usual(USUAL_PACES));
    }

    private boolean mayBeElsewhere(OfDay day) {
        return day.plan().filter(plan -> plan.state() == State.DRAFT).isPresent()
                && !day.date().isBefore(visit.today());
    }

    private List<Other> others(OfDay day, String hole) {
        return answer.days().stream()
                .filter(other -> !other.equals(day) && mayBeElsewhere(other))
                .flatMap(other -> other.plan().orElseThrow().find(hole).stream()
                        .map(spot -> new Other(other.date(), visit.texts().weekday(other.date()) + ": " + where(spot))))
                .toList();
    }

    private String where(StoredHole hole) {
        return judgements().where(hole.position());
    }

    private JudgementText judgements() {
        return new JudgementText(visit.texts(), pace());
    }

    private double pace() {
        return answer.day().policy().get(PlacePolicy.PACE_METRES);
    }
}
