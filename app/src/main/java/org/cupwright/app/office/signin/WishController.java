package org.cupwright.app.office.signin;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Map;
import org.cupwright.app.visit.Wishes;
import org.cupwright.course.Course;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Language and light of the pages, and the course they are of, kept on the machine that shows them. */
@Controller
public final class WishController {
    private static final int KEPT_SECONDS = (int) Duration.ofDays(400).toSeconds();

    @PostMapping("/wish")
    String wish(
            @RequestParam Map<String, String> wishes,
            @RequestParam(defaultValue = "/") String back,
            HttpServletRequest request,
            HttpServletResponse response) {
        wishes.forEach((name, value) -> {
            if (name.equals(Wishes.LANGUAGE) && value.matches("[a-z]{2,3}")
                    || name.equals(Wishes.THEME) && value.matches("light|dark|machine")
                    || name.equals(Wishes.COURSE) && value.matches(Course.ID_PATTERN)) {
                response.addCookie(cookie(name, value, request.isSecure()));
            }
        });
        return "redirect:" + (back.matches("/[^/\\\\].*|/") ? back : "/");
    }

    private static Cookie cookie(String name, String value, boolean secure) {
        Cookie cookie = new Cookie(name, value);
        cookie.setMaxAge(KEPT_SECONDS);
        cookie.setPath("/");
        cookie.setHttpOnly(true);
        cookie.setSecure(secure);
        cookie.setAttribute("SameSite", "Lax");
        return cookie;
    }
}
