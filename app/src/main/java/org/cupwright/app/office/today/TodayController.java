package org.cupwright.app.office.today;

import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.office.visit.Visit;
import org.cupwright.app.session.Right;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The page of the day. */
@Controller
public final class TodayController {
    /** Chooses among equal plans, as the commands do. */
    private static final long SEED = 1;

    @GetMapping("/")
    String day(Visit visit, Model model) {
        if (visit.courses().isEmpty()) {
            return visit.may(Right.SURVEY) ? "redirect:/begin" : "no-course";
        }
        ShowDay.Answer answer = new ShowDay(visit.session()).of(visit.question(), Progress.unheard());
        model.addAttribute("day", new DayView(visit).of(answer));
        return "today";
    }

    /** @param seen the plan's number when it was looked at; 0: there was none */
    @PostMapping("/plan")
    String plan(Visit visit, @RequestParam long seen) {
        new PlanDay(visit.session(), visit.version()).plan(visit.question(), seen, SEED, Progress.unheard());
        return back(visit);
    }

    /** @param seen the plan's number when it was looked at */
    @PostMapping("/publish")
    String publish(Visit visit, @RequestParam long seen) {
        new PublishPlan(visit.session()).take(Step.PUBLISH, visit.date(), seen);
        return back(visit);
    }

    @PostMapping("/withdraw")
    String withdraw(Visit visit, @RequestParam long seen) {
        new PublishPlan(visit.session()).take(Step.WITHDRAW, visit.date(), seen);
        return back(visit);
    }

    private static String back(Visit visit) {
        return "redirect:/?date=" + visit.date();
    }
}
