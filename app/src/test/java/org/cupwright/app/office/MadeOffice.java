package org.cupwright.app.office;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.intake.ImportCourse;
import org.cupwright.app.desk.intake.ImportRequest;
import org.cupwright.app.desk.intake.ImportRequest.SurveyOptions;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.Visit;
import org.cupwright.units.UnitSystem;

/** An office over a folder of a test's own, with an invented course of a few greens, and people who come to it. */
public final class MadeOffice {
    public static final String COURSE = "made";
    public static final LocalDate TODAY = LocalDate.of(2026, 6, 20);
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-06-20T05:00:00Z"), ZoneOffset.UTC);
    public static final Texts TEXTS =
            Texts.find("en", Door.PAGES, UnitSystem.METRIC, 1).orElseThrow();

    private MadeOffice() {}

    public static OfficeHouse house(Path data, Clock clock) {
        return new OfficeHouse(() -> new SqliteFolder(data, clock), clock, "made", false);
    }

    /** Brings in the map of so many square greens that are level and a hundred metres apart. */
    public static void course(Path data, int greens) throws IOException {
        byte[] map = Files.readAllBytes(MadeCourse.outlines(Files.createTempDirectory("made"), greens));
        SourceFile file = new SourceFile("made", () -> new ByteArrayInputStream(map));
        try (DataFolder folder = new SqliteFolder(data, CLOCK)) {
            Visit maker = visit(folder, CLOCK, "the maker", Role.SUPERINTENDENT, TODAY);
            new ImportCourse(maker.session(), TODAY).run(request(file), Progress.unheard());
        }
    }

    private static ImportRequest request(SourceFile map) {
        return new ImportRequest(
                COURSE,
                ZoneOffset.UTC,
                Optional.of(map),
                Map.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                SurveyOptions.asTheFilesSay(),
                false);
    }

    /** Somebody who is signed in; the same name is the same person. */
    public static Person person(String name, Role role) {
        UUID account = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        return new Person(Optional.of(account), name, role);
    }

    /** What comes with a request of somebody. */
    public static Visit visit(DataFolder folder, Clock clock, String name, Role role, LocalDate date) {
        Session session = new Session(
                folder,
                person(name, role),
                new CourseChoice(Optional.of(COURSE)),
                clock,
                UUID::randomUUID,
                new Speech(Door.PAGES, "en", UnitSystem.METRIC, 1));
        return new Visit(session, TEXTS, TODAY, date, List.of(COURSE), "Made", "made");
    }
}
