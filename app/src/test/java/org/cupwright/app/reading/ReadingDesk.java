package org.cupwright.app.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.desk.MadeSession;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.drawn.DrawnFile;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.intake.ImportCourse;
import org.cupwright.app.desk.intake.ImportRequest;
import org.cupwright.app.desk.intake.ImportRequest.SurveyOptions;
import org.cupwright.app.desk.intake.ImportResult;
import org.cupwright.app.desk.log.PhotoReading;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.store.Documents;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.course.Course;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.items.GroundFile;
import org.cupwright.formats.items.GroundItems;
import org.cupwright.formats.items.ReadDrawn;
import org.cupwright.formats.points.PointCollector;
import org.cupwright.formats.points.PointRequest;
import org.cupwright.formats.points.PointsCsv;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import org.cupwright.units.LengthUnit;

/**
 * Everything that reads a file, beside an invented course of three greens. Every way reads only; what it finds must
 * have words, and what it takes must be kept as it was read.
 */
final class ReadingDesk implements AutoCloseable {
    static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T12:00:00Z"), ZoneOffset.UTC);
    private static final byte[] DATABASE = "SQLite format 3".getBytes(StandardCharsets.US_ASCII);
    private static final String COURSE = "made";
    private static final int PATCH = 4;

    private final Path files;
    private final SqliteFolder folder;
    private final Session session;
    private final Course course;
    private final Policy policy;
    private final byte[] backup;
    private final Words words = new Words();

    ReadingDesk(Path files) throws IOException {
        this.files = files;
        this.folder = new SqliteFolder(files.resolve("data"), CLOCK);
        this.session = MadeSession.in(folder, CLOCK);
        SourceFile map = SourceFile.at(MadeCourse.outlines(files, 3));
        courses(Optional.of(map), Optional.empty(), COURSE, false);
        this.course = session.read(session::course);
        this.policy = session.read(stores -> stores.policies().history(COURSE).at(today()));
        Path copy = files.resolve("sound.db");
        folder.upkeep().backup(copy, false);
        this.backup = Files.readAllBytes(copy);
    }

    private java.time.LocalDate today() {
        return java.time.LocalDate.ofInstant(CLOCK.instant(), ZoneOffset.UTC);
    }

    Session session() {
        return session;
    }

    Words words() {
        return words;
    }

    /** A backup of the folder as it is written. */
    byte[] backup() {
        return backup.clone();
    }

    static SourceFile file(byte[] bytes) {
        return new SourceFile("handed in", () -> new ByteArrayInputStream(bytes));
    }

    private ImportResult courses(Optional<SourceFile> map, Optional<SourceFile> levels, String id, boolean dryRun) {
        SurveyOptions survey = SurveyOptions.asTheFilesSay();
        return new ImportCourse(session, today())
                .run(
                        new ImportRequest(
                                id, ZoneOffset.UTC, map, Map.of(), List.of(), levels, Optional.empty(), survey, dryRun),
                        Progress.unheard());
    }

    void outlines(byte[] bytes) {
        ImportResult result = courses(Optional.of(file(bytes)), Optional.empty(), "fresh", true);
        result.findings().forEach(found -> words.check(found.finding()));
        String kept = Documents.write(result.course());
        assertThat(Documents.write(Documents.read(kept, Course.class))).isEqualTo(kept);
    }

    void levels(byte[] bytes) {
        courses(Optional.empty(), Optional.of(file(bytes)), COURSE, true)
                .findings()
                .forEach(found -> words.check(found.finding()));
    }

    void drawn(byte[] bytes) {
        DrawnFile drawn = DrawnFile.read(file(bytes), course, policy);
        drawn.findings().forEach(found -> words.check(found.finding()));
        DrawnOnCourse all = session.read(stores -> stores.drawn().of(COURSE));
        for (ReadDrawn.Item item : drawn.items()) {
            all = all.with(item);
        }
        String kept = Documents.write(all);
        assertThat(Documents.write(Documents.read(kept, DrawnOnCourse.class))).isEqualTo(kept);
    }

    void ground(byte[] bytes) {
        GroundItems items = FileReading.read(file(bytes), in -> GroundFile.read(in, course));
        items.findings().forEach(words::check);
        if (!items.findings().isEmpty()) {
            throw FileReading.problem(items.findings().get(0), "handed in");
        }
    }

    /** As points of the course's frame, of degrees, in feet and of one class, in turn. */
    void points(byte[] bytes) {
        PointRequest own = PointRequest.asTheCourse();
        List<PointRequest> ways = List.of(
                own, own.in(CoordinateFrame.of(CoordinateFrame.WGS84)), own.in(LengthUnit.FOOT), own.ofClasses(2));
        PointCollector collector =
                new PointCollector(course, ways.get(Math.floorMod(Arrays.hashCode(bytes), 16) % 13 % 4));
        FileReading.read(file(bytes), in -> {
            PointsCsv.read(in, Optional.empty(), collector);
            return null;
        });
        try {
            collector.finish().findings().forEach(words::check);
        } catch (UnreadableFile unreadable) {
            throw FileReading.problem(unreadable.finding(), "handed in");
        }
    }

    void photo(byte[] bytes) {
        PhotoReading.read(file(bytes));
    }

    /** A backup of any bytes; what the program refuses must leave nothing behind. */
    void backup(byte[] bytes) {
        Path handedIn = files.resolve("handed-in.db");
        Path into = files.resolve("into");
        try {
            Files.write(handedIn, bytes);
            try (SqliteFolder fresh = new SqliteFolder(into, CLOCK)) {
                fresh.upkeep().restore(handedIn);
            } catch (Problem refused) {
                assertThat(into).doesNotExist();
                throw refused;
            } finally {
                remove(into);
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    /**
     * A backup from few bytes: a database where they are one, else the sound backup with some of its bytes exchanged,
     * each by its place (three bytes) and what stands there.
     */
    byte[] patchedBackup(byte[] bytes) {
        if (bytes.length < DATABASE.length || Arrays.mismatch(bytes, DATABASE) >= DATABASE.length) {
            byte[] patched = backup();
            for (int i = 0; i + PATCH <= bytes.length; i += PATCH) {
                int place = (bytes[i] & 0xFF) << 16 | (bytes[i + 1] & 0xFF) << 8 | bytes[i + 2] & 0xFF;
                patched[place % patched.length] = bytes[i + 3];
            }
            return patched;
        }
        return bytes;
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    @Override
    public void close() {
        folder.close();
    }
}
