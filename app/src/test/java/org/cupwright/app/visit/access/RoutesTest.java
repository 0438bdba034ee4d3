package org.cupwright.app.visit.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.session.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.springframework.boot.webmvc.error.ErrorController;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.annotation.AnnotatedElementUtils;
import org.springframework.core.type.filter.AnnotationTypeFilter;
import org.springframework.core.type.filter.AssignableTypeFilter;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;

/** What pages answer and what the table allows are the same addresses. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoutesTest {
    /** Answered by what guards the doors, or by files that come with the program. */
    private static final Set<String> NOT_PAGES =
            Set.of("POST /sign-in", "POST /sign-out", "GET /assets/**", "GET /webjars/**", "GET /round/files/**");

    @Test
    void everyPageIsInTheTable_andNothingElse() throws ClassNotFoundException {
        Set<String> table = Routes.ALL.stream()
                .map(route -> route.method() + " " + route.pattern())
                .filter(address -> !NOT_PAGES.contains(address))
                .collect(Collectors.toSet());
        assertThat(answered()).isNotEmpty().containsExactlyInAnyOrderElementsOf(table);
    }

    @Test
    void noAddressStandsTwice() {
        List<String> addresses = Routes.ALL.stream()
                .map(route -> route.method() + " " + route.pattern())
                .toList();
        assertThat(addresses).doesNotHaveDuplicates();
    }

    /** Whatever changes something asks for a right; who only reads changes the own password, and stops own work. */
    @Test
    void aReaderChangesNothing() {
        List<String> reader = Routes.ALL.stream()
                .filter(route -> !route.method().equals("GET") && !route.open())
                .filter(route -> route.roles().contains(Role.READER))
                .map(Route::pattern)
                .toList();
        assertThat(reader).containsExactlyInAnyOrder("/sign-out", "/password", "/password/pin", "/work/{id}/stop");
    }

    private static Set<String> answered() throws ClassNotFoundException {
        var scanner = new ClassPathScanningCandidateComponentProvider(false);
        scanner.addIncludeFilter(new AnnotationTypeFilter(Controller.class));
        List<String> all = new ArrayList<>();
        scanner.addExcludeFilter(new AssignableTypeFilter(ErrorController.class)); // asked for by the server alone
        for (var bean : scanner.findCandidateComponents("org.cupwright.app")) {
            Stream.of(Class.forName(bean.getBeanClassName()).getDeclaredMethods())
                    .map(method -> AnnotatedElementUtils.findMergedAnnotation(method, RequestMapping.class))
                    .filter(mapping -> mapping != null)
                    .forEach(mapping -> Stream.of(mapping.path())
                            .forEach(path -> all.add(mapping.method()[0].name() + " " + path)));
        }
        return Set.copyOf(all);
    }
}
