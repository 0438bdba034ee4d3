package org.cupwright.app.wiring.server;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a phone shows to be known again, as its browser keeps it: no script reads it, and no form from elsewhere sends
 * it.
 *
 * @param encrypted whether the pages are: then it goes no other way, and is this host's alone
 */
record PhoneCookie(boolean encrypted) {
    /** As long as browsers keep any; the office says when it counts no more. */
    private static final int KEPT_SECONDS = (int) Duration.ofDays(400).toSeconds();

    String name() {
        return encrypted ? "__Host-cupwright-phone" : "cupwright-phone";
    }

    Optional<String> shown(HttpServletRequest request) {
        return Optional.ofNullable(request.getCookies())
                .map(Arrays::stream)
                .orElseGet(Stream::empty)
                .filter(cookie -> cookie.getName().equals(name()))
                .map(Cookie::getValue)
                .findFirst();
    }

    void show(HttpServletResponse response, String value) {
        response.addCookie(cookie(value, KEPT_SECONDS));
    }

    void takeAway(HttpServletResponse response) {
        response.addCookie(cookie("", 0));
    }

    private Cookie cookie(String value, int seconds) {
        Cookie cookie = new Cookie(name(), value);
        cookie.setMaxAge(seconds);
        cookie.setPath("/");
        cookie.setHttpOnly(true);
        cookie.setSecure(encrypted);
        cookie.setAttribute("SameSite", "Lax");
        return cookie;
    }
}
