package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Map;
import java.util.UUID;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.store.sqlite.EveryTable;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.server.Caller;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the office's pages say when the disk is full, nothing may be written, or the data is of a newer program. */
class OfficeTroubleIT {
    private static final String NAME = "Invented Person";
    private static final String PASSWORD = "an invented password";

    @TempDir
    Path files;

    private void course(Path data) throws IOException {
        Path outlines = MadeCourse.outlines(files, 2);
        InProcess.Result made =
                new InProcess(data).run("import", "--course", FactWriter.COURSE, "--outlines", outlines);
        assertThat(made.status()).as(made.err()).isZero();
    }

    private static Caller signedIn(ServedOffice office) {
        Caller caller = new Caller(office::at);
        assertThat(caller.join(office.code(), NAME, PASSWORD)).isEqualTo("/sign-in?joined");
        assertThat(caller.signIn(NAME, PASSWORD)).isEqualTo("/");
        return caller;
    }

    private static int kept(Path data) {
        try (SqliteFolder folder = Kept.folder(data)) {
            return Kept.facts(folder).size();
        }
    }

    /** An entry that could not be kept stands in its form still, and is kept when there is room. */
    @Test
    void aFullDisk() throws IOException, InterruptedException {
        Mounted.onlyAsRoot();
        Mounted.on(files, "size=4m", mount -> {
            Path data = mount.resolve("data");
            course(data);
            try (ServedOffice office = ServedOffice.open(data)) {
                Caller caller = signedIn(office);
                EntriesByPage page = new EntriesByPage(caller);
                Path filler = mount.resolve("filler");
                Files.write(filler, new byte[(int) Files.getFileStore(mount).getUsableSpace()]);
                UUID form = UUID.randomUUID();
                HttpResponse<String> refused = page.speedRead(form);
                assertThat(EntriesByPage.isKept(refused)).isFalse();
                assertThat(refused.body()).contains("The disk is full", "Make room on the disk", form.toString());
                assertThat(caller.get("/log").statusCode())
                        .as("what is there is read")
                        .isEqualTo(200);
                assertThat(kept(data)).isZero();
                Files.delete(filler);
                assertThat(EntriesByPage.isKept(page.speedRead(form))).isTrue();
                assertThat(kept(data)).isEqualTo(1);
            }
        });
    }

    /** Signing in would be written into the audit trail: whoever comes reads why that cannot be. */
    @Test
    void aFolderThatCannotBeWritten() throws IOException, InterruptedException {
        Mounted.onlyAsRoot();
        Mounted.on(files, "size=8m", mount -> {
            Path data = mount.resolve("data");
            course(data);
            try (ServedOffice office = ServedOffice.open(data)) {
                signedIn(office);
            }
            Mounted.again(mount, "ro");
            try (ServedOffice office = ServedOffice.open(data, files.resolve("office.err"))) {
                HttpResponse<String> refused =
                        new Caller(office::at).post("/sign-in", "/sign-in", Map.of("name", NAME, "password", PASSWORD));
                assertThat(refused.body()).contains("Nothing can be written").doesNotContain("defect");
            }
        });
    }

    @Test
    void dataOfANewerProgram() throws IOException, InterruptedException, SQLException {
        Path data = files.resolve("data");
        course(data);
        try (ServedOffice office = ServedOffice.open(data)) {
            Caller caller = signedIn(office);
            try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + data.resolve("cupwright.db"))) {
                file.createStatement().execute("PRAGMA user_version = 99");
                file.createStatement().execute(EveryTable.NEWER_MIGRATION);
            }
            for (String path : new String[] {"/", "/log", "/green/1", "/sign-in"}) {
                HttpResponse<String> page = caller.get(path);
                if (page.statusCode() != 200) {
                    assertThat(page.body()).as(path).contains("newer").doesNotContain("defect");
                }
            }
            assertThat(caller.get("/").statusCode()).isNotEqualTo(200);
        }
    }
}
