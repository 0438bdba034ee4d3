package org.cupwright.app.office.weeks;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.answers.ChangeText;
import org.cupwright.app.answers.WeeksText;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.plan.ChangeWeeks;
import org.cupwright.app.desk.plan.PlanWeeks;
import org.cupwright.app.desk.plan.SeenPlans;
import org.cupwright.app.desk.plan.UndoChange;
import org.cupwright.app.office.work.LongWork;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Weeks are planned, changed, and a change is taken back: as long work, which leads back to their page. */
@Controller
public final class WeeksWorkController {
    /** Chooses among equal plans, as the commands do. */
    private static final long SEED = 1;

    private final Works works;

    public WeeksWorkController(Works works) {
        this.works = works;
    }

    /**
     * Plans days together, from the day asked about on.
     *
     * @param seen the plans that stood on the page
     */
    @PostMapping("/weeks/plan")
    String plan(Visit visit, @RequestParam int days, @RequestParam(defaultValue = "") String seen) {
        SeenPlans plans = SeenField.read(seen, visit.date(), days);
        String back = "/weeks?date=" + visit.date();
        return begin(visit, "weeks.work.plan", new Way(back, back), (session, progress) -> {
            PlanWeeks weeks = new PlanWeeks(session, visit.version());
            return new WeeksText(visit.texts())
                    .found(weeks.plan(visit.question(), days, SEED, Optional.empty(), plans, progress));
        });
    }

    /**
     * Changes what is planned.
     *
     * @param asked among it {@code wish}, what was gathered; nothing: what the logbook says is taken up
     * @param most how many planned days may be changed; empty: all
     */
    @PostMapping("/weeks/change")
    String change(
            Visit visit,
            @RequestParam MultiValueMap<String, String> asked,
            @RequestParam Optional<Integer> most,
            @RequestParam String seen) {
        Wished wished = Wished.of(visit.date(), asked);
        LocalDate first = first(visit);
        SeenPlans plans = SeenField.read(seen, first, PlanWeeks.MOST_DAYS);
        Way way = new Way("/weeks?date=" + visit.date(), wished.address());
        return begin(visit, "weeks.work.change", way, (session, progress) -> {
            ChangeWeeks weeks = new ChangeWeeks(session, visit.version());
            return new ChangeText(visit.texts())
                    .lines(weeks.change(DayQuestion.of(first), wished.asked(session, most), plans, progress));
        });
    }

    @PostMapping("/weeks/undo")
    String undo(Visit visit, @RequestParam String seen) {
        SeenPlans plans = SeenField.read(seen, first(visit), PlanWeeks.MOST_DAYS);
        String back = "/weeks?date=" + visit.date();
        return begin(
                visit,
                "weeks.work.undo",
                new Way(back, back),
                (session, progress) -> new ChangeText(visit.texts()).undone(new UndoChange(session).undo(plans)));
    }

    /** What is past is not changed. */
    private static LocalDate first(Visit visit) {
        return visit.date().isBefore(visit.today()) ? visit.today() : visit.date();
    }

    private String begin(Visit visit, String title, Way way, LongWork work) {
        return "redirect:/work/"
                + works.begin(visit, visit.texts().say(title), way, work).id();
    }
}
