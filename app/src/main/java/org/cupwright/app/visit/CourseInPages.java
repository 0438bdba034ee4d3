package org.cupwright.app.visit;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.springframework.web.servlet.support.RequestDataValueProcessor;

/**
 * Where there are several courses, every link, form and redirection of a page says of which course it is: what is sent
 * from one window is for the course that is seen there, whatever was chosen in another since.
 *
 * @param others what else comes into forms: the mark that they are ours
 */
public record CourseInPages(RequestDataValueProcessor others) implements RequestDataValueProcessor {
    private static final String WISH = "/wish";

    @Override
    public String processAction(HttpServletRequest request, String action, String method) {
        return others.processAction(request, action, method);
    }

    @Override
    public String processFormFieldValue(HttpServletRequest request, String name, String value, String type) {
        return others.processFormFieldValue(request, name, value, type);
    }

    @Override
    public Map<String, String> getExtraHiddenFields(HttpServletRequest request) {
        Map<String, String> fields = new LinkedHashMap<>();
        Optional.ofNullable(others.getExtraHiddenFields(request)).ifPresent(fields::putAll);
        course(request).ifPresent(id -> fields.put(Wishes.COURSE_FIELD, id));
        return fields;
    }

    @Override
    public String processUrl(HttpServletRequest request, String url) {
        String address = others.processUrl(request, url);
        return course(request)
                .filter(id -> isPage(address))
                .map(id -> address + (address.contains("?") ? "&" : "?") + Wishes.COURSE_FIELD + "="
                        + URLEncoder.encode(id, StandardCharsets.UTF_8))
                .orElse(address);
    }

    /** A page of ours that does not say its course yet; the wish for another course leads to that. */
    private static boolean isPage(String address) {
        return address.startsWith("/")
                && !address.startsWith("/assets/")
                && !address.startsWith("/webjars/")
                && !address.startsWith(WISH)
                && !address.contains("#")
                && !address.matches(".*[?&]" + Wishes.COURSE_FIELD + "=.*");
    }

    /** The course of the page, where there is another one. */
    private static Optional<String> course(HttpServletRequest request) {
        return VisitArgument.of(request)
                .filter(visit -> visit.courses().size() > 1)
                .flatMap(visit -> visit.session().course().id());
    }
}
