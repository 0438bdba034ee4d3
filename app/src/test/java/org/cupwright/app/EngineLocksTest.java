package org.cupwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The engine spreads its work over the threads of parallel streams, and a thread of theirs that waits at a lock is
 * missing to whoever holds it: {@code Once} is there for what is worked out once. So the engine has no locks; the
 * classes named here keep what is worked out in a moment by the asking thread alone.
 */
class EngineLocksTest {
    private static final Path ENGINE = Path.of("..", "engine", "src", "main", "java");
    private static final Pattern LOCK =
            Pattern.compile("\\bsynchronized\\b|\\bReentrant\\w*Lock\\b|\\bStampedLock\\b|\\bSemaphore\\b");
    private static final Pattern COMPUTED = Pattern.compile("\\bConcurrent(Skip|Hash)\\w*");
    private static final List<String> OF_A_MOMENT =
            List.of("RestDays.java", "SlopeTies.java", "SurveySpline.java", "Unit.java");
    private static final int FEWEST_FILES = 300;

    @Test
    void theEngineHoldsNoLock() throws IOException {
        assertThat(with(LOCK)).isEmpty();
    }

    @Test
    void whatIsComputedInAMapUnderItsLockIsNamedHere() throws IOException {
        assertThat(with(COMPUTED)).containsExactlyElementsOf(OF_A_MOMENT);
    }

    private static List<String> with(Pattern pattern) throws IOException {
        List<String> found = new ArrayList<>();
        List<Path> sources;
        try (Stream<Path> all = Files.walk(ENGINE)) {
            sources = all.filter(path -> path.toString().endsWith(".java")).toList();
        }
        assertThat(sources).hasSizeGreaterThan(FEWEST_FILES);
        for (Path source : sources) {
            if (pattern.matcher(Files.readString(source)).find()) {
                found.add(source.getFileName().toString());
            }
        }
        return found.stream().sorted().toList();
    }
}
