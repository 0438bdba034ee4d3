package org.cupwright.app.field.cases;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.function.Supplier;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The files of cases are what the slow way comes to, line by line; {@code -Dcupwright.cases=write} makes them anew. */
class MadeCasesTest {
    static Set<String> files() {
        return MadeCases.all().keySet();
    }

    @ParameterizedTest
    @MethodSource("files")
    void aFileIsWhatTheSlowWayComesTo(String name) throws IOException {
        Supplier<String> made = MadeCases.all().get(name);
        Path file = Case.FILES.resolve(name);
        if ("write".equals(System.getProperty("cupwright.cases"))) {
            Files.writeString(file, made.get());
        }
        assertThat(Files.readString(file)).isEqualTo(made.get());
    }
}
