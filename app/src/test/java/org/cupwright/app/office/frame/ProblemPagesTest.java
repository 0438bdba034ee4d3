package org.cupwright.app.office.frame;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.servlet.DispatcherType;
import jakarta.servlet.RequestDispatcher;
import jakarta.servlet.http.Cookie;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.cupwright.app.office.MadeOffice;
import org.cupwright.app.visit.Failure;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Told;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.TypeMismatchException;
import org.springframework.web.servlet.ModelAndView;

/** A failure of ours has a reference by which the log can be searched, and says nothing of what failed. */
class ProblemPagesTest {
    private static final IllegalStateException FAILURE = new IllegalStateException("the boiler burst");

    @TempDir
    Path data;

    private final Logger logger = Logger.getLogger(Failure.class.getName());
    private final List<LogRecord> written = new ArrayList<>();
    private final Handler listening = new Handler() {
        @Override
        public void publish(LogRecord line) {
            written.add(line);
        }

        @Override
        public void flush() {
            // nothing is held back
        }

        @Override
        public void close() {
            // nothing is open
        }
    };

    @BeforeEach
    void listen() {
        logger.addHandler(listening);
        logger.setUseParentHandlers(false);
    }

    @AfterEach
    void leave() {
        logger.removeHandler(listening);
        logger.setUseParentHandlers(true);
    }

    private ProblemPages pages() {
        return new ProblemPages(new FrameAround(new OfficeHouse(() -> null, MadeOffice.CLOCK, "made", false)));
    }

    /** A request of somebody who reads Spanish. */
    private static HttpServletRequest request(Map<String, Object> attributes) {
        Map<String, Object> answers = new HashMap<>(Map.of(
                "getMethod",
                "GET",
                "getRequestURI",
                "/weeks",
                "getDispatcherType",
                DispatcherType.REQUEST,
                "getCookies",
                new Cookie[] {new Cookie("cupwright-language", "es")}));
        return proxy(
                HttpServletRequest.class,
                (name, first) -> name.equals("getAttribute") ? attributes.get(first) : answers.get(name));
    }

    private static HttpServletResponse response() {
        return proxy(HttpServletResponse.class, (name, first) -> name.equals("isCommitted") ? false : null);
    }

    private interface Answers {
        Object of(String name, Object first);
    }

    private static <T> T proxy(Class<T> type, Answers answers) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(),
                new Class<?>[] {type},
                (self, method, given) -> answers.of(method.getName(), given == null ? null : given[0])));
    }

    private void isTold(ModelAndView page) {
        Told told = (Told) page.getModel().get("told");
        assertThat(page.getStatus().value()).isEqualTo(500);
        assertThat(written).hasSize(1);
        String reference = written.get(0).getMessage().replace("reference ", "");
        assertThat(reference).matches("[0-9a-f]{8}");
        assertThat(written.get(0).getThrown()).isSameAs(FAILURE);
        assertThat(told.tryThis()).contains(reference).contains("registro");
        assertThat(told.toString()).doesNotContain("boiler").doesNotContain("Exception");
    }

    @Test
    void aFailureOfOursHasAReference() {
        isTold(pages().failed(FAILURE, request(Map.of()), response()));
    }

    @Test
    void soHasOneWhileAPageIsLaidOut() {
        Map<String, Object> failed =
                Map.of(RequestDispatcher.ERROR_STATUS_CODE, 500, RequestDispatcher.ERROR_EXCEPTION, FAILURE);
        isTold(new RefusalPage().refused(request(failed)));
    }

    /** What stands in an address and is no number, no day and no name there is, is no failure of ours. */
    @Test
    void anAddressThatIsNoneIsNoFailure() {
        ModelAndView page =
                pages().failed(new TypeMismatchException("7", Integer.class), request(Map.of()), response());
        assertThat(page.getStatus().value()).isEqualTo(400);
        assertThat(written).isEmpty();
    }
}
