package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.UUID;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.people.Passwords;
import org.cupwright.app.people.TakeCode;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The people commands from end to end on a folder of its own; all names are invented. */
class PeopleCommandsIT {
    private static final int LEAST_COST = 4;

    @TempDir
    Path files;

    private Path data;
    private InProcess cupwright;

    @BeforeEach
    void setUp() {
        data = files.resolve("data");
        cupwright = new InProcess(data);
    }

    private Result run(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private void joins(String name, String role) throws IOException {
        JsonNode made =
                PublishedShapes.checked("people-invite", run("people", "invite", name, "--role", role, "--json"));
        assertThat(made.path("role").asString()).isEqualTo(role);
        try (SqliteFolder folder = new SqliteFolder(data, InProcess.CLOCK)) {
            Passwords passwords = new Passwords(new SecureRandom(), LEAST_COST);
            new TakeCode(folder, InProcess.CLOCK, UUID::randomUUID, passwords)
                    .take(made.path("code").asString(), name, "three invented words");
        }
    }

    @Test
    void everyCommandKeepsItsShape() throws IOException {
        joins("Ida Made", "superintendent");
        joins("Bo", "changer");
        run("people", "invite", "Kim", "--role", "reader");
        JsonNode all = PublishedShapes.checked("people", run("people", "--json"));
        assertThat(all.path("people")).hasSize(2);
        assertThat(all.path("invited").path(0).path("name").asString()).isEqualTo("Kim");
        PublishedShapes.checked("people-role", run("people", "role", "Bo", "official", "--json"));
        PublishedShapes.checked("people-remove", run("people", "remove", "Bo", "--json"));
        JsonNode erased = PublishedShapes.checked("people-erase", run("people", "erase", "Bo", "--yes", "--json"));
        assertThat(erased.path("name").asString()).startsWith("erased-");
        JsonNode audit = PublishedShapes.checked("people-audit", run("people", "audit", "--json"));
        assertThat(audit.path("lines").findValuesAsString("what"))
                .containsExactly(
                        "personInvited",
                        "personJoined",
                        "personInvited",
                        "personJoined",
                        "personInvited",
                        "roleChanged",
                        "personRemoved",
                        "personErased");
        assertThat(audit.toString()).doesNotContain("\"Bo\"");
        assertThat(PublishedShapes.checked("check", run("check", "--json"))
                        .path("sound")
                        .asBoolean())
                .isTrue();
    }

    @Test
    void theWordsSayWhoAndWhat() throws IOException {
        assertThat(run("people").out()).contains("Nobody has an account yet");
        joins("Ida Made", "superintendent");
        String invited = run("people", "invite", "Bo", "--role", "CHANGER").out();
        assertThat(invited)
                .contains("Code for Bo, changer", "21 Jun 2026")
                .containsPattern("[2-9A-Z]{4}(-[2-9A-Z]{4}){3}");
        assertThat(run("people").out()).contains("Ida Made: superintendent", "Bo: has a code to come as changer");
        run("policy", "desk.units=imperial");
        String audit =
                run("people", "audit", "--from", "2026-06-20", "--to", "today").out();
        assertThat(audit).contains("set desk.units to imperial, before paces", "Ida Made: came with a code");
        assertThat(run("people", "audit", "--to", "yesterday").out()).contains("Nothing was changed");
    }

    @Test
    void whatCannotBeDoneIsSaid() throws IOException {
        joins("Ida Made", "superintendent");
        Result last = cupwright.run("people", "remove", "ida made");
        assertThat(last.status()).isEqualTo(1);
        assertThat(last.err()).contains("only superintendent", "superintendent first");
        assertThat(cupwright.run("people", "role", "Nobody", "reader").err()).contains("Nobody is called Nobody");
        assertThat(cupwright.run("people", "invite", "Bo").status()).isEqualTo(2);
        assertThat(cupwright.run("people", "invite", "Bo", "--role", "king").status())
                .isEqualTo(2);
        assertThat(cupwright.run("people", "erase", "Ida Made").status()).isEqualTo(1);
        assertThat(cupwright
                        .run("people", "invite", "\u202eBo", "--role", "reader")
                        .err())
                .contains("not seen")
                .doesNotContain("\u202e");
    }
}
