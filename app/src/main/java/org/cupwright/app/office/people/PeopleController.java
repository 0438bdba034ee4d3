package org.cupwright.app.office.people;

import jakarta.servlet.http.HttpServletResponse;
import java.security.SecureRandom;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.people.ChangeRole;
import org.cupwright.app.people.Deactivate;
import org.cupwright.app.people.Erase;
import org.cupwright.app.people.Invite;
import org.cupwright.app.people.NewCode;
import org.cupwright.app.people.PhonesOfAll;
import org.cupwright.app.session.Role;
import org.cupwright.app.visit.Visit;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The page of the people. */
@Controller
public final class PeopleController {
    private final SecureRandom random;

    public PeopleController(SecureRandom random) {
        this.random = random;
    }

    @GetMapping("/people")
    String page(Visit visit, Model model) {
        return page(visit, model, Optional.empty(), "");
    }

    private static String page(Visit visit, Model model, Optional<NewCode> made, String wrong) {
        model.addAttribute("people", new PeopleView(visit).of(made));
        model.addAttribute("wrong", wrong);
        return "people";
    }

    /** The code is said this once: nobody can look it up again. */
    @PostMapping("/people/invite")
    String invite(Visit visit, Model model, @RequestParam String name, @RequestParam Role role) {
        return page(visit, model, Optional.of(new Invite(visit.session(), random).person(name, role)), "");
    }

    @PostMapping("/people/role")
    String role(Visit visit, @RequestParam String name, @RequestParam Role role) {
        new ChangeRole(visit.session()).of(name, role);
        return "redirect:/people";
    }

    @PostMapping("/people/remove")
    String remove(Visit visit, @RequestParam String name) {
        new Deactivate(visit.session()).person(name);
        return "redirect:/people";
    }

    /** Ends one phone, or all of them. */
    @PostMapping("/people/phones/end")
    String endPhone(Visit visit, @RequestParam Optional<UUID> phone) {
        PhonesOfAll phones = new PhonesOfAll(visit.session());
        phone.ifPresentOrElse(phones::end, phones::endAll);
        return "redirect:/people";
    }

    /**
     * Erases a name for good, so a click is not enough.
     *
     * @param typed the name once more, as somebody typed it
     */
    @PostMapping("/people/erase")
    String erase(
            Visit visit,
            Model model,
            HttpServletResponse response,
            @RequestParam String name,
            @RequestParam(defaultValue = "") String typed) {
        if (!typed.strip().equals(name)) {
            response.setStatus(HttpStatus.UNPROCESSABLE_CONTENT.value());
            return page(visit, model, Optional.empty(), visit.texts().say("people.page.eraseNot", typed.strip(), name));
        }
        new Erase(visit.session()).person(name);
        return "redirect:/people";
    }
}
