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

/** The training commands from end to end on a folder of its own; all names are invented. */
class TrainingCommandsIT {
    private static final int LEAST_COST = 4;

    @TempDir
    Path files;

    private InProcess cupwright;

    @BeforeEach
    void setUp() {
        cupwright = new InProcess(files.resolve("data"));
    }

    private Result run(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private void joins(String name) throws IOException {
        JsonNode made =
                PublishedShapes.checked("people-invite", run("people", "invite", name, "--role", "changer", "--json"));
        try (SqliteFolder folder = new SqliteFolder(files.resolve("data"), InProcess.CLOCK)) {
            new TakeCode(folder, InProcess.CLOCK, UUID::randomUUID, new Passwords(new SecureRandom(), LEAST_COST))
                    .take(made.path("code").asString(), name, "three invented words");
        }
    }

    private JsonNode skill(JsonNode person, String skill) {
        for (JsonNode one : person.path("skills")) {
            if (one.path("skill").asString().equals(skill)) {
                return one;
            }
        }
        throw new AssertionError("no " + skill);
    }

    @Test
    void everyCommandKeepsItsShape() throws IOException {
        joins("Ash");
        JsonNode signed = PublishedShapes.checked(
                "training-sign-off",
                run("training", "sign-off", "ash", "event-holes", "--on", "2026-06-01", "--person", "Ida", "--json"));
        assertThat(signed.path("person").asString()).isEqualTo("Ash");
        assertThat(signed.at("/stands/refresher").asString()).isEqualTo("2027-06-01");
        JsonNode all = PublishedShapes.checked("training", run("training", "--json"));
        assertThat(all.path("people")).hasSize(1);
        assertThat(skill(all.path("people").path(0), "eventHoles")
                        .path("counts")
                        .asBoolean())
                .isTrue();
        String id = signed.at("/record/id").asString();
        PublishedShapes.checked(
                "training-correct",
                run("training", "correct", id, "--on", "2025-06-01", "--reason", "an invented slip", "--json"));
        JsonNode overdue = PublishedShapes.checked("training", run("training", "list", "--json"));
        assertThat(skill(overdue.path("people").path(0), "eventHoles")
                        .path("stands")
                        .asString())
                .isEqualTo("overdue");
        PublishedShapes.checked(
                "training-withdraw",
                run("training", "withdraw", "Ash", "eventHoles", "--reason", "invented", "--json"));
        PublishedShapes.checked("training-trainer", run("training", "trainer", "Ash", "--json"));
        JsonNode records = PublishedShapes.checked("training-person", run("training", "list", "Ash", "--json"));
        assertThat(records.path("records").findValuesAsString("what"))
                .containsExactlyInAnyOrder("signedOff", "corrected", "withdrawn", "trainer");
        JsonNode audit = PublishedShapes.checked("people-audit", run("people", "audit", "--json"));
        assertThat(audit.path("lines").findValuesAsString("what"))
                .containsExactly(
                        "personInvited",
                        "personJoined",
                        "signedOff",
                        "trainingCorrected",
                        "signOffWithdrawn",
                        "trainerNamed");
    }

    @Test
    void theWordsSayWhoMayAndWhatIsOverdue() {
        assertThat(run("training").out()).contains("Nobody has learnt anything here yet");
        assertThat(run("training", "sign-off", "Noor", "cutting", "--on", "2025-05-31", "--person", "Ida")
                        .out())
                .contains(
                        "Cutting straight and to depth: refresher overdue since Sun 31 May 2026", "licensed practice");
        assertThat(run("training", "sign-off", "Noor", "plug", "--person", "Ida")
                        .out())
                .contains("refresher by");
        run("training", "withdraw", "noor", "plug", "--reason", "plugs too high", "--person", "Ida");
        assertThat(run("training").out())
                .contains("Noor", "Plug level and kept: withdrawn on", "by Ida: plugs too high", "not signed off yet");
        assertThat(run("--lang", "es", "training").out()).contains("Cortar recto y a profundidad", "repaso vencido");
        assertThat(run("training", "list", "Noor").out()).contains("signed off for \"Plug level and kept\"");
    }

    /** Whoever learns may have no account: the name goes all the same, and what was learnt stays. */
    @Test
    void aLearnersNameIsErased() throws IOException {
        run("training", "sign-off", "Noor", "plug", "--person", "Ida");
        String neutral = PublishedShapes.checked("people-erase", run("people", "erase", "noor", "--yes", "--json"))
                .path("name")
                .asString();
        assertThat(neutral).startsWith("erased-");
        assertThat(run("training").out()).contains(neutral, "by Ida").doesNotContain("Noor");
        assertThat(run("people", "audit").out()).contains(neutral).doesNotContain("Noor");
        assertThat(cupwright.run("people", "erase", "Noor", "--yes").err()).contains("Nobody is called Noor");
    }

    /** The refresher's months are a setting. */
    @Test
    void theCourseSaysAfterHowManyMonths() {
        run("policy", "training.refresherMonths=24");
        assertThat(run("training", "sign-off", "Noor", "cup", "--on", "2025-05-31")
                        .out())
                .contains("31 May 2027");
    }

    @Test
    void whatCannotBeDoneIsSaid() {
        assertThat(cupwright.run("training", "sign-off", "Noor", "juggling").status())
                .isEqualTo(2);
        Result later = cupwright.run("training", "sign-off", "Noor", "cup", "--on", "2030-01-01");
        assertThat(later.status()).isEqualTo(1);
        assertThat(later.err()).contains("has not come yet");
        assertThat(cupwright.run("training", "trainer", "Noor").err()).contains("Nobody who may sign in as a changer");
        assertThat(cupwright.run("training", "withdraw", "Noor", "cup").status())
                .isEqualTo(2);
        assertThat(cupwright
                        .run("training", "withdraw", "Noor", "cup", "--reason", "none")
                        .err())
                .contains("is not signed off");
    }
}
