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
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the office's pages say when the disk is full, nothing may be written, or the data is of a newer program. */
class OfficeTroubleIT {
    private static final String NAME = "Invented Person";
    private static final String PASSWORD = "an invented password";

    private static final Map<String, String> INVITED = Map.of("name", "Another Invented", "role", "READER");
    private static final Map<String, String> SEEN = Map.of("seen", "0");

    @TempDir
    Path files;

    private static void isTold(String what, HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(what).isEqualTo(503);
        assertThat(answer.body()).as(what).contains("newer").doesNotContain("defect");
    }

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
                told(caller, Map.of("/people/invite", INVITED, "/publish", SEEN), "The disk is full");
                Files.delete(filler);
                assertThat(EntriesByPage.isKept(page.speedRead(form))).isTrue();
                assertThat(kept(data)).isEqualTo(1);
            }
        });
    }

    /** Signing in would be written into the audit trail: whoever comes reads why that cannot be. */
    @Test
    @Tag("long")
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
                cannotComeIn(office);
            }
        });
    }

    private static void cannotComeIn(ServedOffice office) {
        HttpResponse<String> refused =
                new Caller(office::at).post("/sign-in", "/sign-in", Map.of("name", NAME, "password", PASSWORD));
        assertThat(refused.body()).contains("Nothing can be written").doesNotContain("defect");
    }

    /** Whoever is signed in already, and sends what was typed before the folder took nothing any more. */
    @Test
    void aFolderThatCannotBeWrittenAnyMore() throws IOException, InterruptedException {
        Mounted.onlyAsRoot();
        Mounted.on(files, "size=8m", mount -> {
            Path data = mount.resolve("data");
            course(data);
            Files.createFile(data.resolve("log")); // so that the office's log is elsewhere, and holds nothing open here
            try (ServedOffice office = ServedOffice.open(data, files.resolve("office.err"))) {
                Caller caller = signedIn(office);
                EntriesByPage page = new EntriesByPage(caller);
                UUID form = UUID.randomUUID();
                Mounted.again(mount, "ro");
                HttpResponse<String> refused = page.speedRead(form);
                assertThat(EntriesByPage.isKept(refused)).isFalse();
                assertThat(refused.body())
                        .contains("Nothing can be written", form.toString())
                        .doesNotContain("defect");
                told(caller, Map.of("/people/invite", INVITED, "/publish", SEEN), "Nothing can be written");
                assertThat(caller.get("/log").statusCode())
                        .as("what is there is read")
                        .isEqualTo(200);
                assertThat(kept(data)).isZero();
                cannotComeIn(office);
                Mounted.again(mount, "rw");
                assertThat(EntriesByPage.isKept(page.speedRead(form))).isTrue();
                assertThat(kept(data)).isEqualTo(1);
            }
        });
    }

    private static void told(Caller caller, Map<String, Map<String, String>> forms, String what) {
        forms.forEach((path, fields) -> {
            HttpResponse<String> refused = caller.post("/log", path, fields);
            assertThat(refused.statusCode()).as(path).isIn(422, 503);
            assertThat(refused.body()).as(path).contains("class=\"problem\"").doesNotContain("defect");
            if (fields == INVITED) {
                assertThat(refused.body()).as(path).contains(what);
            }
        });
    }

    @Test
    void dataOfANewerProgram() throws IOException, InterruptedException, SQLException {
        Path data = files.resolve("data");
        course(data);
        try (ServedOffice office = ServedOffice.open(data)) {
            Caller caller = signedIn(office);
            Map<String, String> token = caller.token("/log");
            try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + data.resolve("cupwright.db"))) {
                file.createStatement().execute("PRAGMA user_version = 99");
                file.createStatement().execute(EveryTable.NEWER_MIGRATION);
            }
            for (String path : new String[] {"/", "/log", "/green/1", "/people"}) {
                isTold(path, caller.get(path));
            }
            isTold("an entry", new EntriesByPage(caller, token).speedRead(UUID.randomUUID()));
            Caller stranger = new Caller(office::at);
            HttpResponse<String> door = stranger.get("/sign-in");
            assertThat(door.statusCode()).as("shows nothing of the data").isEqualTo(200);
            assertThat(door.body()).doesNotContain("defect");
            isTold("coming in", stranger.post("/sign-in", "/sign-in", Map.of("name", NAME, "password", PASSWORD)));
        }
    }
}
