package org.cupwright.app.visit;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What somebody chose for the pages on the machine in use; nothing of it is worth protecting. */
public final class Wishes {
    public static final String LANGUAGE = "cupwright-language";
    public static final String THEME = "cupwright-theme";
    public static final String COURSE = "cupwright-course";

    /** By which addresses and forms say of which course they are. */
    public static final String COURSE_FIELD = "course";

    private Wishes() {}

    static Optional<String> language(HttpServletRequest request) {
        return cookie(request, LANGUAGE).filter(wish -> wish.matches("[a-z]{2,3}"));
    }

    /** {@code light} or {@code dark}; empty: as the machine is set. */
    public static Optional<String> theme(HttpServletRequest request) {
        return cookie(request, THEME).filter(wish -> wish.equals("light") || wish.equals("dark"));
    }

    /**
     * The course that is asked about; the one that was chosen last counts only as long as it is there.
     *
     * @param known the ids of all courses
     */
    static Optional<String> course(HttpServletRequest request, List<String> known) {
        return Optional.ofNullable(request.getParameter(COURSE_FIELD))
                .filter(id -> !id.isBlank())
                .or(() -> cookie(request, COURSE).filter(known::contains));
    }

    private static Optional<String> cookie(HttpServletRequest request, String name) {
        return Optional.ofNullable(request.getCookies())
                .map(Arrays::stream)
                .orElseGet(Stream::empty)
                .filter(cookie -> cookie.getName().equals(name))
                .map(Cookie::getValue)
                .findFirst();
    }
}
