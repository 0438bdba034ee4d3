package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeMorning;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a phone loads for the round and sends of it, on a planned morning of the invented course. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoundIT {
    private static final String DAY = "2026-06-20";
    private static final Instant MORNING = Instant.parse("2026-06-20T05:10:00Z");

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

    private static JsonNode json(HttpResponse<String> answer) {
        return JsonMapper.shared().readTree(answer.body());
    }

    private JsonNode day() {
        HttpResponse<String> answer = phone.get("/round/day?date=" + DAY);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Cache-Control")).contains("no-store");
        return json(answer);
    }

    private HttpResponse<String> send(UUID id, String entry) {
        JsonNode who = json(phone.get("/round/who"));
        String part = "--x\r\nContent-Disposition: form-data; name=\"entry\"\r\n\r\n" + entry + "\r\n--x--\r\n";
        return phone.send(HttpRequest.newBuilder(URI.create(office.at("/round/entries/" + id)))
                .header("Content-Type", "multipart/form-data; boundary=x")
                .header(
                        who.path("markName").asString("X-None"),
                        who.path("mark").asString("none"))
                .POST(BodyPublishers.ofString(part, StandardCharsets.UTF_8))
                .build());
    }

    private static String entry(String hole, Instant at, Duration behind, String says) {
        return "{\"kind\": \"cupChanged\", \"hole\": \"" + hole + "\", \"day\": \"" + DAY + "\", \"at\": \"" + at
                + "\", \"clockBehind\": " + behind.toMillis() + ", " + says + "}";
    }

    private static String asPlanned(String hole) {
        return entry(hole, MORNING, Duration.ZERO, "\"asPlanned\": true");
    }

    /** What the logbook has of a hole's changes that day. */
    private List<JsonNode> kept(String hole) {
        InProcess.Result log = commands.run("log", "list", "--date", DAY, "--json");
        assertThat(log.status()).as(log.err()).isZero();
        List<JsonNode> kept = new ArrayList<>();
        JsonMapper.shared().readTree(log.out()).path("facts").forEach(one -> {
            if (one.at("/payload/kind").asString().equals("cupChanged")
                    && one.path("happenedAt").asString().startsWith(DAY)
                    && one.path("hole").asString().equals(hole)) {
                kept.add(one);
            }
        });
        return kept;
    }

    @Test
    void aDayHasEighteenHolesInRoundOrderWithAllThatTheRoundNeeds() {
        JsonNode day = day();
        assertThat(day.path("date").asString()).isEqualTo(DAY);
        List<String> holes = new ArrayList<>();
        JsonNode plan = JsonMapper.shared()
                .readTree(commands.run("explain", "--hole", "7", "--date", DAY, "--json")
                        .out());
        day.path("parts")
                .forEach(part -> part.path("holes").forEach(hole -> {
                    holes.add(hole.path("hole").asString());
                    assertThat(hole.path("paces").asString())
                            .containsPattern("^[0-9½]+ on · [0-9½]+ from (left|right)$");
                    assertThat(hole.path("map").asString()).startsWith("<svg");
                    assertThat(hole.path("flag").asString()).isNotBlank();
                    assertThat(hole.path("plug").asString()).isNotBlank();
                }));
        assertThat(holes)
                .isEqualTo(
                        IntStream.rangeClosed(1, 18).mapToObj(Integer::toString).toList());
        JsonNode seventh = day.path("parts").path(0).path("holes").path(6);
        assertThat(seventh.path("where").asString())
                .contains(plan.findValue("position").path("third").asString());
        assertThat(day.path("ticks").size()).isGreaterThan(8);
        assertThat(day.path("cautions").size()).isGreaterThan(5);
        assertThat(day.path("words").path("round.asPlanned").asString()).isEqualTo("Cut as planned");
    }

    @Test
    void anEntryIsKeptOnceHoweverOftenItIsSent() {
        UUID id = UUID.randomUUID();
        assertThat(json(send(id, asPlanned("7"))).path("kept").asString()).isEqualTo("now");
        assertThat(json(send(id, asPlanned("7"))).path("kept").asString()).isEqualTo("before");
        assertThat(kept("7")).hasSize(1);
        assertThat(kept("7").get(0).path("id").asString()).isEqualTo(id.toString());
        assertThat(day().path("parts")
                        .path(0)
                        .path("holes")
                        .path(6)
                        .path("done")
                        .asString())
                .startsWith("cut ");
    }

    /** Neither asks the other, hours later, which of them is meant. */
    @Test
    void whatTwoPhonesSayOfOneHoleIsBothKept() {
        assertThat(send(UUID.randomUUID(), asPlanned("3")).statusCode()).isEqualTo(200);
        String other = entry("3", MORNING.plusSeconds(600), Duration.ZERO, "\"place\": \"12,R4\"");
        assertThat(send(UUID.randomUUID(), other).statusCode()).isEqualTo(200);
        assertThat(kept("3")).hasSize(2);
        assertThat(phone.awaited("/?date=" + DAY).body())
                .contains(
                        "2 records of this hole; the last one counts: 05:10 cup changed · as planned",
                        "; 05:20 cup changed");
    }

    /** Nobody's telephone puts right what somebody else wrote on another. */
    @Test
    void thatAHoleWasLeftStandsBesideWhatAnotherWrote() {
        InProcess.Result cut = commands.run(
                "log", "add", "cup-changed", "--hole", "12", "--as-planned", "--date", DAY, "--person", "Robin Marlow");
        assertThat(cut.status()).as(cut.err()).isZero();
        String left = "{\"kind\": \"leftInOldHole\", \"hole\": \"12\", \"day\": \"" + DAY + "\", \"at\": \"" + MORNING
                + "\"}";
        assertThat(send(UUID.randomUUID(), left).statusCode()).isEqualTo(200);
        assertThat(kept("12")).hasSize(1);
        assertThat(phone.awaited("/?date=" + DAY).body()).contains("2 records of this hole", "Robin Marlow");
    }

    /** A phone whose clock is a day behind, which it has known since it loaded the day: both times are kept. */
    @Test
    void aClockThatIsWrongIsPutRightAndBothTimesAreKept() {
        Instant shown = MORNING.minus(Duration.ofDays(1));
        send(UUID.randomUUID(), entry("9", shown, Duration.ofDays(1), "\"asPlanned\": true"));
        JsonNode kept = kept("9").get(0);
        assertThat(Instant.parse(kept.path("happenedAt").asString())).isEqualTo(MORNING);
        assertThat(Instant.parse(kept.path("recordedAtDevice").asString())).isEqualTo(shown);
        assertThat(phone.get("/log?date=" + DAY).body())
                .contains("the telephone showed 2026-06-19 05:10, the office 2026-06-20 05:10");
    }

    @Test
    void whatIsNoEntryIsRefusedInWordsAndNothingIsKept() {
        Map<String, String> wrong = Map.of(
                "no JSON",
                "cut it",
                "no kind",
                "{\"day\": \"2026-06-20\", \"at\": \"2026-06-20T05:10:00Z\"}",
                "no such hole",
                asPlanned("99"),
                "no such place",
                entry("5", MORNING, Duration.ZERO, "\"place\": \"by the tree\""));
        wrong.forEach((name, entry) -> {
            HttpResponse<String> answer = send(UUID.randomUUID(), entry);
            assertThat(answer.statusCode()).as(name + answer.body()).isIn(404, 422);
            assertThat(json(answer).path("error").asString()).as(name).isNotBlank();
            assertThat(json(answer).path("tryThis").asString()).as(name).isNotBlank();
        });
        assertThat(kept("5")).isEmpty();
    }

    @Test
    void thePageBringsItsFilesAndTheWorkerKnowsThem() {
        assertThat(phone.get("/round").body()).contains("/round/files/round.js", "\"round.title\"");
        HttpResponse<String> worker = phone.get("/round/worker.js");
        assertThat(worker.headers().firstValue("Content-Type").orElse("")).startsWith("text/javascript");
        String files = worker.body().replaceFirst("(?s).*const FILES = \\[(.*?)].*", "$1");
        for (String file : files.replace("'", "").split(", ")) {
            assertThat(phone.get(file).statusCode()).as(file).isEqualTo(200);
        }
    }
}
