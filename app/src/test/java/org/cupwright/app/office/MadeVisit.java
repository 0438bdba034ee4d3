package org.cupwright.app.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.session.CourseChoice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Role;
import org.cupwright.app.session.Session;
import org.cupwright.app.session.Speech;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/** Visits of an invented person to an invented course of three greens, on the morning of {@link InProcess}. */
public final class MadeVisit {
    public static final String COURSE = "made";
    public static final LocalDate TODAY = LocalDate.of(2026, 6, 20);

    private MadeVisit() {}

    /** Puts the course into a folder that is not there yet, as the command does. */
    public static Path course(Path data) throws IOException {
        Path files = Files.createDirectories(data.resolveSibling("files"));
        InProcess.Result done =
                new InProcess(data).run("import", "--course", COURSE, "--outlines", MadeCourse.outlines(files, 3));
        assertThat(done.err()).isEmpty();
        return data;
    }

    public static Visit to(SqliteFolder folder, Role role) {
        return to(folder, role, "en");
    }

    /** A visit of somebody who reads a language. */
    public static Visit to(SqliteFolder folder, Role role, String language) {
        Speech speech = new Speech(Door.PAGES, language, UnitSystem.PACES, Paces.STANDARD_METRES);
        Session session = new Session(
                folder,
                new Person("Ida", role),
                new CourseChoice(Optional.of(COURSE)),
                InProcess.CLOCK,
                UUID::randomUUID,
                speech);
        Texts texts = Texts.find(language, Door.PAGES, speech.units(), speech.paceMetres())
                .orElseThrow();
        return new Visit(session, texts, TODAY, TODAY, List.of(COURSE), "Made", "test");
    }
}
