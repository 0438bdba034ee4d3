package org.cupwright.app.office.today;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.office.frame.Besides;
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

    private final AwaitedDays days;

    public TodayController(AwaitedDays days) {
        this.days = days;
    }

    /** The day; while its greens are judged, what is known before that, and how far it has come. */
    @GetMapping("/")
    String day(Visit visit, Model model, HttpServletRequest request, HttpServletResponse answer) {
        if (visit.courses().isEmpty()) {
            return visit.may(Right.SURVEY) ? "redirect:/begin" : "no-course";
        }
        boolean part = request.getHeader("HX-Request") != null;
        AwaitedDays.Outcome outcome = days.of(visit);
        if (outcome.answer().isPresent()) {
            if (part) {
                answer.setHeader("HX-Refresh", "true");
            }
            model.addAttribute("besides", new Besides(outcome.remarks()));
            model.addAttribute("day", new DayView(visit).of(outcome.answer().get()));
            return "today";
        }
        model.addAttribute("far", DayView.far(visit, outcome.step()));
        if (!part) {
            ShowDay.Answer known = new ShowDay(visit.session()).withoutPlan(visit.question());
            model.addAttribute("day", new DayView(visit).of(known));
        }
        answer.setHeader("Cache-Control", "no-store");
        return part ? "awaited :: far" : "awaited";
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
