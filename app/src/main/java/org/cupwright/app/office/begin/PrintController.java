package org.cupwright.app.office.begin;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Versions.Part;
import org.cupwright.app.visit.Visit;
import org.cupwright.policy.EnumNames;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;

/** Sixth step: the first plan and its papers. From here on Today is where the day begins. */
@Controller
public final class PrintController {
    /** Chooses among equal plans, as the commands do. */
    private static final long SEED = 1;

    private final Works works;

    public PrintController(Works works) {
        this.works = works;
    }

    /**
     * A day that can be planned.
     *
     * @param date the day
     * @param title in words
     * @param state how far its plan has come, by its key; empty where there is none
     * @param number which plan it is
     */
    record Day(LocalDate date, String title, String state, long number) {}

    @GetMapping("/begin/print")
    ModelAndView print(Visit visit) {
        List<Day> days =
                List.of(day(visit, visit.today()), day(visit, visit.today().plusDays(1)));
        Evening evening = new Evening(visit, Step.PRINT);
        return evening.page("begin-print", evening.form(Map.of())).addObject("days", days);
    }

    private static Day day(Visit visit, LocalDate date) {
        return visit.session().read(stores -> {
            Optional<StoredPlan> plan = PlanChoice.find(stores, visit.session().course(stores), date);
            String state =
                    plan.map(StoredPlan::state).map(EnumNames::lowerCamel).orElse("");
            long number = plan.map(StoredPlan::courseId)
                    .map(course -> stores.versions(course, date).of(Part.PLAN))
                    .orElse(0L);
            return new Day(date, visit.texts().day(date), state, number);
        });
    }

    @PostMapping("/begin/plan")
    String plan(Visit visit) {
        String print = Step.PRINT.address();
        String title = visit.texts().say("today.work.plan", visit.texts().weekday(visit.date()));
        return "redirect:"
                + works.soon(visit, title, new Way(print, print), (session, progress) -> {
                    new PlanDay(session, visit.version()).plan(visit.question(), SEED, progress);
                    return new Lines(visit.texts()).say("today.work.plan.done");
                });
    }
}
