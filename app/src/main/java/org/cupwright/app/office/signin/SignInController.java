package org.cupwright.app.office.signin;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import org.cupwright.app.visit.PhoneInUse;
import org.cupwright.app.visit.Visits;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The page where people come in. */
@Controller
public final class SignInController {
    private final PhoneInUse phones;

    public SignInController(PhoneInUse phones) {
        this.phones = phones;
    }

    private static final String[] SAID = {"refused", "ended", "joined"};

    @GetMapping("/sign-in")
    String page(HttpServletRequest request, Model model, @RequestParam Optional<Integer> wait) {
        model.addAttribute("words", Visits.words(request));
        model.addAttribute("wait", wait.orElse(0));
        model.addAttribute(
                "mayBeKept",
                PhoneInUse.mayBeKept(request) && phones.names(request).isEmpty());
        for (String said : SAID) {
            model.addAttribute(said, request.getParameter(said) != null);
        }
        return "sign-in";
    }
}
