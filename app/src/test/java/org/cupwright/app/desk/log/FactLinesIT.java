package org.cupwright.app.desk.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.MadeSession;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.cupchange.CrewNote.NoteToNext;
import org.cupwright.cupchange.Fact;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A logbook's file with one invented entry very often. */
class FactLinesIT {
    private static final Instant WHEN = Instant.parse("2026-06-19T05:00:00Z");

    @TempDir
    Path data;

    private static InputStream lines(String course, int count) {
        UUID id = UUID.nameUUIDFromBytes("one".getBytes(StandardCharsets.UTF_8));
        Fact fact = new Fact(
                id, 1, WHEN, WHEN, Optional.empty(), "Ida", course, Optional.empty(), new NoteToNext("invented"));
        byte[] line = (FactJson.write(fact) + "\n").getBytes(StandardCharsets.UTF_8);
        return new SequenceInputStream(Collections.enumeration(Collections.nCopies(count, line).stream()
                .map(ByteArrayInputStream::new)
                .toList()));
    }

    @Test
    void moreEntriesThanAreTakenAtOnceAreRefused() throws IOException {
        Clock clock = Clock.fixed(WHEN, ZoneOffset.UTC);
        try (SqliteFolder folder = new SqliteFolder(data, clock)) {
            Writes.to(folder, stores -> stores.courses().add(new DemoCourse(1).course()));
            String course = new DemoCourse(1).course().id();
            FactLines log = new FactLines(MadeSession.in(folder, clock));
            SourceFile most = new SourceFile("log", () -> lines(course, 500_000));
            assertThat(log.read(most, false).added()).isEqualTo(1);
            SourceFile more = new SourceFile("log", () -> lines(course, 500_001));
            Problem refused = catchThrowableOfType(Problem.class, () -> log.read(more, false));
            assertThat(refused.what().key()).isEqualTo("problem.log.many");
        }
    }
}
