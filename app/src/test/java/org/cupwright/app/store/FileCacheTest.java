package org.cupwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FileCacheTest {
    private static final Instant NOON = Instant.parse("2026-06-20T12:00:00Z");

    @TempDir
    private Path data;

    private FileCache cache(String build, Instant now) {
        return new FileCache(data, Optional.of(build), Clock.fixed(now, ZoneOffset.UTC));
    }

    private long files() throws IOException {
        try (Stream<Path> all = Files.walk(data)) {
            return all.filter(Files::isRegularFile).count();
        }
    }

    @Test
    void whatWasKeptIsFoundUnderItsNameAlone() {
        FileCache cache = cache("one", NOON);
        assertThat(cache.find("a")).isEmpty();
        cache.keep("a", new byte[] {1, 2});
        cache.keep("a", new byte[] {1, 2, 3});
        assertThat(cache.find("a")).hasValue(new byte[] {1, 2, 3});
        assertThat(cache.find("b")).isEmpty();
    }

    @Test
    void anotherBuildFindsNothingAndClearsWhatItCannotUse() throws IOException {
        cache("one", NOON).keep("a", new byte[] {1});
        FileCache newer = cache("two", NOON);
        assertThat(newer.find("a")).isEmpty();
        newer.keep("b", new byte[] {2});
        assertThat(files()).isEqualTo(1);
        assertThat(cache("one", NOON).find("a")).isEmpty();
    }

    @Test
    void theResultsLongestUnusedGoWhenThereAreTooMany() throws IOException {
        for (int i = 0; i < FileCache.MOST_RESULTS; i++) {
            cache("one", NOON.plus(Duration.ofMinutes(i))).keep("result" + i, new byte[] {1});
        }
        cache("one", NOON.plus(Duration.ofDays(1))).find("result0"); // of use again
        cache("one", NOON.plus(Duration.ofDays(2))).keep("newest", new byte[] {2});
        assertThat(files()).isEqualTo(FileCache.MOST_RESULTS);
        assertThat(cache("one", NOON).find("result1")).isEmpty();
        assertThat(cache("one", NOON).find("result0")).isPresent();
        assertThat(cache("one", NOON).find("newest")).isPresent();
    }

    @Test
    void aMissingFolderIsNotMadeAndAnUnknownBuildKeepsNothing() throws IOException {
        Path missing = data.resolve("missing");
        new FileCache(missing, Optional.of("one"), Clock.systemUTC()).keep("a", new byte[] {1});
        assertThat(missing).doesNotExist();
        FileCache unknown = new FileCache(data, Optional.empty(), Clock.systemUTC());
        unknown.keep("a", new byte[] {1});
        assertThat(unknown.find("a")).isEmpty();
        assertThat(files()).isZero();
    }

    @Test
    void theBuildIsKnownByItsClasses() throws IOException {
        assertThat(EngineBuild.current())
                .hasValueSatisfying(build -> assertThat(build).matches("[0-9a-f]{16}"));
        Path classes = Files.createDirectory(data.resolve("classes"));
        Files.write(classes.resolve("A.class"), new byte[] {1});
        String before = EngineBuild.of(classes);
        assertThat(EngineBuild.of(classes)).isEqualTo(before);
        Files.write(classes.resolve("A.class"), new byte[] {2});
        assertThat(EngineBuild.of(classes)).isNotEqualTo(before);
    }
}
