package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.UUID;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeMorning;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a phone carries of training and sends of a learner's round, on a planned morning of the invented course. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class LearningRouteIT {
    private static final String DAY = "2026-06-20";

    private InProcess commands;
    private OpenOffice office;
    private Caller phone;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        Path data = folder.resolve("data");
        MadeMorning.copyTo(data);
        commands = new InProcess(data);
        office = new OpenOffice(data, InProcess.CLOCK, true);
        phone = new Caller(office);
    }

    @AfterAll
    void close() throws Exception {
        office.close();
    }

    private JsonNode run(Object... arguments) {
        InProcess.Result result = commands.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return JsonMapper.shared().readTree(result.out());
    }

    private HttpResponse<String> send(UUID id, String says) {
        JsonNode who = JsonMapper.shared().readTree(phone.get("/round/who").body());
        String entry = "{\"day\": \"" + DAY + "\", \"at\": \"2026-06-20T05:10:00Z\", " + says + "}";
        String part = "--x\r\nContent-Disposition: form-data; name=\"entry\"\r\n\r\n" + entry + "\r\n--x--\r\n";
        return phone.send(HttpRequest.newBuilder(URI.create(office.at("/round/training/" + id)))
                .header("Content-Type", "multipart/form-data; boundary=x")
                .header(
                        who.path("markName").asString("X-None"),
                        who.path("mark").asString("none"))
                .POST(BodyPublishers.ofString(part, StandardCharsets.UTF_8))
                .build());
    }

    private JsonNode carried() {
        return JsonMapper.shared()
                .readTree(phone.get("/round/day?date=" + DAY).body())
                .path("training");
    }

    private static String tick(String how) {
        return "\"kind\": \"done\", \"learner\": \"Noor\", \"hole\": \"7\", \"skill\": \"cutting\", \"how\": \"" + how
                + "\"";
    }

    @Test
    void aTickIsKeptOnceHoweverOftenItIsSent() {
        UUID id = UUID.randomUUID();
        assertThat(send(id, tick("withHelp")).body()).contains("\"now\"");
        assertThat(send(id, tick("withHelp")).body()).contains("\"before\"");
        JsonNode records = run("training", "list", "Noor", "--json").path("records");
        assertThat(records.findValuesAsString("id")).containsOnlyOnce(id.toString());
        assertThat(records.findValuesAsString("how")).containsExactly("withHelp");
        assertThat(records.path(0).path("at").asString()).isEqualTo("2026-06-20T05:10:00Z");
    }

    @Test
    void whatIsNoPracticeIsRefusedInWordsAndNothingIsKept() {
        for (String wrong : new String[] {
            tick("backwards"),
            tick("alone").replace("\"7\"", "\"99\""),
            "\"kind\": \"practised\", \"exercise\": \"paces\", \"best\": 1, \"last\": 2",
            "\"kind\": \"signedOff\", \"skill\": \"cutting\"",
            "\"kind\": \"done\", \"learner\": \"Noor\", \"skill\": \"cutting\""
        }) {
            HttpResponse<String> answer = send(UUID.randomUUID(), wrong);
            assertThat(answer.statusCode()).as(wrong + answer.body()).isIn(404, 422);
            JsonNode told = JsonMapper.shared().readTree(answer.body());
            assertThat(told.path("error").asString()).as(wrong).isNotBlank();
            assertThat(told.path("tryThis").asString()).as(wrong).isNotBlank();
        }
    }

    /** On a phone that several share it waits until whoever wrote it is signed in. */
    @Test
    void whatSomebodyElseWroteIsNotTaken() {
        HttpResponse<String> answer = send(UUID.randomUUID(), tick("alone") + ", \"by\": \"Somebody Else\"");
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.body()).contains("problem.round.byAnother");
    }

    /** Who may cut for an event is told on its days alone, and counts by what is in force then. */
    @Test
    void onAnEventsDayThePhoneSaysWhoMayCut() {
        assertThat(carried().path("event").isMissingNode()).isTrue();
        commands.run("policy", "training.eventHoles=yes", "--date", DAY);
        assertThat(carried().at("/event/says").asString()).contains("nobody is signed off");
        run("training", "sign-off", "Ash", "event-holes", "--on", DAY, "--json");
        assertThat(carried().at("/event/says").asString()).isEqualTo("Event holes: Ash may cut.");
        assertThat(carried().at("/event/own").asString()).contains("You are not signed off");
        run("training", "sign-off", "Bo", "event-holes", "--on", DAY, "--json");
        assertThat(carried().at("/event/says").asString()).isEqualTo("Event holes: Ash and Bo may cut.");
        run("training", "withdraw", "Ash", "event-holes", "--reason", "invented", "--json");
        assertThat(carried().at("/event/says").asString()).isEqualTo("Event holes: Bo may cut.");
        commands.run("policy", "training.eventHoles=no", "--date", DAY);
        assertThat(carried().path("event").isMissingNode()).isTrue();
    }

    @Test
    void thePhoneCarriesTheStepsAndTheExercises() {
        JsonNode carried = carried();
        assertThat(carried.path("steps").size()).isEqualTo(7);
        assertThat(carried.path("steps").path(1).path("name").asString()).isEqualTo("Cutting straight and to depth");
        assertThat(carried.path("exercises").findValues("goal").toString()).isEqualTo("[10, 5, 3]");
        assertThat(carried.path("maySign").asBoolean()).isTrue();
    }
}
