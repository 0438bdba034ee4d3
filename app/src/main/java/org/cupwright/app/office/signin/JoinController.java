package org.cupwright.app.office.signin;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.cupwright.app.people.Passwords;
import org.cupwright.app.people.TakeCode;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Visits;
import org.cupwright.message.Problem;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The page where somebody with a code gets an account. */
@Controller
public final class JoinController {
    private final OfficeHouse house;
    private final Passwords passwords;

    public JoinController(OfficeHouse house, Passwords passwords) {
        this.house = house;
        this.passwords = passwords;
    }

    @GetMapping("/join")
    String page(HttpServletRequest request, Model model) {
        return page(Visits.words(request), model, "", Optional.empty());
    }

    private static String page(Texts words, Model model, String name, Optional<Problem> problem) {
        model.addAttribute("words", words);
        model.addAttribute("name", name);
        model.addAttribute(
                "problem", problem.map(found -> words.say(found.what())).orElse(""));
        model.addAttribute(
                "tryThis", problem.map(found -> words.say(found.tryThis())).orElse(""));
        return "join";
    }

    /** What was typed wrong is said above the form; a code counts until it was taken. */
    @PostMapping("/join")
    String join(
            HttpServletRequest request,
            Model model,
            @RequestParam String code,
            @RequestParam String name,
            @RequestParam String password) {
        try {
            asked(take -> take.take(code, name, password));
            return "redirect:/sign-in?joined";
        } catch (Problem problem) {
            return page(Visits.words(request), model, name, Optional.of(problem));
        }
    }

    private <T> T asked(Function<TakeCode, T> work) {
        try (DataFolder folder = house.folders().get()) {
            return work.apply(new TakeCode(folder, house.clock(), UUID::randomUUID, passwords));
        }
    }
}
