package org.cupwright.app.office.today;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.office.frame.Besides;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.session.Right;
import org.cupwright.app.visit.Visit;
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
    private final Works works;

    public TodayController(AwaitedDays days, Works works) {
        this.days = days;
        this.works = works;
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
            model.addAttribute("live", Live.of(visit));
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

    /**
     * What others did meanwhile, for a page of today that stands open.
     *
     * @param seen the number of the plan that stands there
     * @param seenRound the number of what stands there of the round
     * @param as how far all had come when it was last looked at
     */
    @GetMapping("/now")
    String now(
            Visit visit,
            @RequestParam long seen,
            @RequestParam(defaultValue = "0") long seenRound,
            @RequestParam String as,
            Model model,
            HttpServletResponse answer) {
        answer.setHeader("Cache-Control", "no-store");
        Optional<String> part = meanwhile(visit, seen, seenRound, as, model);
        if (part.isEmpty()) {
            answer.setStatus(HttpServletResponse.SC_NO_CONTENT);
        }
        return part.orElse(null);
    }

    /** What is sent of the page; empty where nothing came, or its greens are being judged: it asks again. */
    Optional<String> meanwhile(Visit visit, long seen, long seenRound, String as, Model model) {
        Live live = Live.of(visit);
        if (!live.isToday() || live.as().equals(as)) {
            return Optional.empty();
        }
        if (live.plan() != seen) {
            return Optional.of("today-live :: another");
        }
        if (live.round() != seenRound) {
            return Optional.of("today-live :: anotherRound");
        }
        AwaitedDays.Outcome outcome = days.of(visit);
        return outcome.answer().map(day -> {
            model.addAttribute("besides", new Besides(outcome.remarks()));
            model.addAttribute("day", new DayView(visit).of(day));
            model.addAttribute("live", live);
            return "today-live :: rows";
        });
    }

    /** @param seen the plan's number when it was looked at; 0: there was none */
    @PostMapping("/plan")
    String plan(Visit visit, @RequestParam long seen) {
        String day = "/?date=" + visit.date();
        String title = visit.texts().say("today.work.plan", visit.texts().weekday(visit.date()));
        return "redirect:"
                + works.soon(visit, title, new Way(day, day), (session, progress) -> {
                    new PlanDay(session, visit.version()).plan(visit.question(), seen, SEED, progress);
                    return new Lines(visit.texts()).say("today.work.plan.done");
                });
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
