package org.cupwright.app.office.signin;

import jakarta.servlet.http.HttpServletRequest;
import org.cupwright.app.office.visit.Visits;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;

/** The page where people come in. */
@Controller
public final class SignInController {
    @GetMapping("/sign-in")
    String page(HttpServletRequest request, Model model) {
        model.addAttribute("words", Visits.words(request));
        model.addAttribute("refused", request.getParameter("refused") != null);
        return "sign-in";
    }
}
