package org.cupwright.app.office.people;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.cupwright.app.desk.training.ShowTraining;
import org.cupwright.app.office.training.TrainingView;
import org.cupwright.app.people.ChangePassword;
import org.cupwright.app.people.Passwords;
import org.cupwright.app.people.SetPin;
import org.cupwright.app.people.SlowDown;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One's own password, and the PIN for shared phones. */
@Controller
public final class PasswordController {
    private final Passwords passwords;
    private final SlowDown slowDown;

    /** @param slowDown the one of the doors: tries at this page and at signing in count together */
    public PasswordController(Passwords passwords, SlowDown slowDown) {
        this.passwords = passwords;
        this.slowDown = slowDown;
    }

    @GetMapping("/password")
    String page(Visit visit, Model model, HttpServletRequest request) {
        model.addAttribute("pinKept", request.getParameter("pin") != null);
        return page(visit, model, Optional.empty());
    }

    private String page(Visit visit, Model model, Optional<Problem> problem) {
        model.addAttribute("pinSet", new SetPin(visit.session(), passwords, slowDown).isSet());
        model.addAttribute(
                "problem", problem.map(found -> visit.texts().say(found.what())).orElse(""));
        model.addAttribute(
                "tryThis",
                problem.map(found -> visit.texts().say(found.tryThis())).orElse(""));
        model.addAttribute("training", new TrainingView(visit.texts()).of(new ShowTraining(visit.session()).mine()));
        return "password";
    }

    /** The digits by which the person is told from others on a shared phone. */
    @PostMapping("/password/pin")
    String pin(
            Visit visit, Model model, HttpServletRequest request, @RequestParam String old, @RequestParam String pin) {
        try {
            new SetPin(visit.session(), passwords, slowDown).set(old, pin, request.getRemoteAddr());
            return "redirect:/password?pin";
        } catch (Problem problem) {
            return page(visit, model, Optional.of(problem));
        }
    }

    /** The account is another afterwards: whoever was signed in with it signs in anew, here and elsewhere. */
    @PostMapping("/password")
    String change(
            Visit visit,
            Model model,
            HttpServletRequest request,
            @RequestParam String old,
            @RequestParam String fresh) {
        try {
            new ChangePassword(visit.session(), passwords, slowDown).change(old, fresh, request.getRemoteAddr());
            return "redirect:/";
        } catch (Problem problem) {
            return page(visit, model, Optional.of(problem));
        }
    }
}
