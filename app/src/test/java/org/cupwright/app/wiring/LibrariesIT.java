package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What is shipped beside the program is what docs/libraries.md has looked at, to the version. */
class LibrariesIT {
    private static final String OWN = "cupwright-";

    /** A row of the page: libraries of one version, or of a version each. */
    private record Row(List<String> libraries, List<String> versions, LocalDate lookedAt, String weaknesses) {
        static Row of(String line) {
            List<String> cells =
                    Arrays.stream(line.split("\\|")).map(String::strip).toList();
            return new Row(list(cells.get(1)), list(cells.get(2)), LocalDate.parse(cells.get(4)), cells.get(5));
        }

        private static List<String> list(String cell) {
            return List.of(cell.split(", "));
        }

        Stream<String> jars() {
            return Stream.iterate(0, i -> i < libraries.size(), i -> i + 1)
                    .map(i -> libraries.get(i) + "-" + versions.get(versions.size() == 1 ? 0 : i) + ".jar");
        }
    }

    private static List<Row> rows() throws IOException {
        return Files.readAllLines(Path.of("..", "docs", "libraries.md")).stream()
                .filter(line -> line.startsWith("| ") && !line.startsWith("| library "))
                .map(Row::of)
                .toList();
    }

    private static List<String> shipped() throws IOException {
        Path lib = Path.of(System.getProperty("cupwright.jar")).resolveSibling("lib");
        try (Stream<Path> all = Files.list(lib)) {
            return all.map(jar -> jar.getFileName().toString())
                    .filter(name -> !name.startsWith(OWN))
                    .toList();
        }
    }

    /** Of the solver's native parts a folder has those of some machines, or none. */
    private static boolean ofOneMachine(String jar) {
        return jar.startsWith("ortools-") && !jar.startsWith("ortools-java");
    }

    @Test
    void everyLibraryWasLookedAtInItsVersion() throws IOException {
        List<String> listed = rows().stream().flatMap(Row::jars).toList();
        assertThat(shipped())
                .as("a library or version that docs/libraries.md does not have: look whether it has known weaknesses")
                .isSubsetOf(listed);
        assertThat(shipped())
                .containsAll(listed.stream().filter(jar -> !ofOneMachine(jar)).toList());
    }

    @Test
    void everyRowSaysWhatIsKnown() throws IOException {
        assertThat(rows()).isNotEmpty().allMatch(row -> row.weaknesses().length() > 10);
    }

    @Test
    void thereIsOneJackson() throws IOException {
        assertThat(shipped().stream().filter(name -> name.startsWith("jackson-databind")))
                .hasSize(1);
    }
}
