package org.cupwright.app.visit;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.web.servlet.support.RequestDataValueProcessor;

/** Where there are several courses, pages say of which they are; which is meant where they do not. */
class CourseInPagesTest {
    @TempDir
    private Path path;

    private final CourseInPages pages = new CourseInPages(new Marks());

    /** What whoever guards the doors puts into forms. */
    private static final class Marks implements RequestDataValueProcessor {
        @Override
        public String processAction(HttpServletRequest request, String action, String method) {
            return action;
        }

        @Override
        public String processFormFieldValue(HttpServletRequest request, String name, String value, String type) {
            return value;
        }

        @Override
        public Map<String, String> getExtraHiddenFields(HttpServletRequest request) {
            return Map.of("mark", "ours");
        }

        @Override
        public String processUrl(HttpServletRequest request, String url) {
            return url;
        }
    }

    /** A request for a page, with what comes with it. */
    private static HttpServletRequest request(Map<String, Object> comesWith) {
        return (HttpServletRequest) Proxy.newProxyInstance(
                CourseInPagesTest.class.getClassLoader(),
                new Class<?>[] {HttpServletRequest.class},
                (proxy, method, arguments) -> switch (method.getName()) {
                    case "getAttribute", "getParameter" -> comesWith.get((String) arguments[0]);
                    case "getCookies" -> comesWith.get("cookies");
                    default -> throw new UnsupportedOperationException(method.getName());
                });
    }

    private HttpServletRequest page(String... courses) {
        Visit visit = MadeVisit.to(new SqliteFolder(path, InProcess.CLOCK), Role.READER);
        Visit of = new Visit(
                visit.session(), visit.texts(), visit.today(), visit.date(), List.of(courses), "Made", "test");
        return request(Map.of(VisitArgument.class.getName() + ".visit", of));
    }

    @Test
    void linksAndFormsSayTheCourseWhereThereIsAnother() {
        HttpServletRequest two = page(MadeVisit.COURSE, "other");
        assertThat(pages.processUrl(two, "/green/7")).isEqualTo("/green/7?course=made");
        assertThat(pages.processUrl(two, "/log?date=2026-06-20")).isEqualTo("/log?date=2026-06-20&course=made");
        assertThat(pages.processUrl(two, "/log?course=other")).isEqualTo("/log?course=other");
        assertThat(pages.processUrl(two, "/wish")).isEqualTo("/wish");
        assertThat(pages.processUrl(two, "/assets/office.css")).isEqualTo("/assets/office.css");
        assertThat(pages.getExtraHiddenFields(two)).isEqualTo(Map.of("mark", "ours", "course", "made"));
    }

    @Test
    void whereThereIsOneNothingIsSaid() {
        HttpServletRequest one = page(MadeVisit.COURSE);
        assertThat(pages.processUrl(one, "/green/7")).isEqualTo("/green/7");
        assertThat(pages.getExtraHiddenFields(one)).isEqualTo(Map.of("mark", "ours"));
        assertThat(pages.processUrl(request(new HashMap<>()), "/sign-in")).isEqualTo("/sign-in");
    }

    /** The page's own word goes before the choice of before; a choice of a course that is gone is none. */
    @Test
    void theCourseThatIsMeant() {
        Cookie[] chosen = {new Cookie(Wishes.COURSE, "moor")};
        List<String> known = List.of("links", "moor");
        assertThat(Wishes.course(request(Map.of("cookies", chosen)), known)).isEqualTo(Optional.of("moor"));
        assertThat(Wishes.course(request(Map.of("cookies", chosen, "course", "links")), known))
                .isEqualTo(Optional.of("links"));
        assertThat(Wishes.course(request(Map.of("cookies", chosen)), List.of("links")))
                .isEmpty();
        assertThat(Wishes.course(request(Map.of()), known)).isEmpty();
    }
}
