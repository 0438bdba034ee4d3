package org.cupwright.app.wiring.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import org.cupwright.app.visit.Visits;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What stands in the office's log after a defect, and that it does not grow without end. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class OfficeLogIT {
    private static final String NAME = "Somebody Unheard";
    private static final String OTHER = "Another Unheard";
    private static final String PASSWORD = "a password unheard of";
    private static final Pattern REFERENCE = Pattern.compile("reference ([0-9a-f]{8})");
    private static final int MOST_BYTES = 10 << 20;

    private final SetClock clock = new SetClock();
    private Path logs;
    private OpenOffice office;
    private SeenCookies cookies;
    private Caller caller;
    private String code;

    @BeforeAll
    void open(@TempDir Path folder) throws InterruptedException {
        logs = folder.resolve("data").resolve("log");
        office = new OpenOffice(folder.resolve("data"), clock, false);
        code = office.code();
        assertThat(new Caller(office).join(code, NAME, PASSWORD)).isEqualTo("/sign-in?joined");
    }

    @BeforeEach
    void somebodyComes() {
        cookies = new SeenCookies();
        caller = new Caller(office::at, HttpClient.newBuilder().cookieHandler(cookies));
        assertThat(new Caller(office).signIn(OTHER, PASSWORD)).isEqualTo("/sign-in?refused");
        assertThat(caller.signIn(NAME, PASSWORD)).isEqualTo("/");
    }

    @AfterAll
    void close() throws InterruptedException {
        office.close();
    }

    /** In a page, and at the doors before any page: names, password, code, cookie and token are in what was asked. */
    @ParameterizedTest
    @ValueSource(classes = {Visits.class, StillIn.class})
    void aDefectStandsThereUnderItsReference_andNobodyDoes(Class<?> where) throws IOException {
        String token = caller.token("/password").get("_csrf");
        Map<String, String> fields = Map.of("_csrf", token, "name", OTHER, "role", "READER", "password", PASSWORD);
        clock.failFor(where, "of " + NAME + " who typed " + PASSWORD);
        String query = "?name=" + URLEncoder.encode(OTHER, StandardCharsets.UTF_8) + "&code=" + code;
        List<String> references = new ArrayList<>();
        for (HttpResponse<String> answer :
                List.of(caller.get("/people" + query), caller.postAsItIs("/people/invite" + query, fields))) {
            assertThat(answer.statusCode()).isEqualTo(500);
            Matcher found = REFERENCE.matcher(answer.body());
            assertThat(found.find()).as("a reference on the page").isTrue();
            references.add(found.group(1));
        }
        clock.failFor(null, "");
        String all = Files.readString(logs.resolve("office.log"));
        assertThat(all).doesNotContain(NAME, OTHER, "Unheard", PASSWORD, code, token, cookies.value("cupwright"));
        assertThat(all).doesNotContain("generated security password");
        List<JsonNode> lines = read(all.lines());
        for (String reference : references) {
            assertThat(lines)
                    .filteredOn(line -> line.path("message").asString("").equals("reference " + reference))
                    .singleElement()
                    .satisfies(OfficeLogIT::isWhole);
        }
    }

    private static void isWhole(JsonNode line) {
        assertThat(line.path("log.level").asString()).isEqualTo("ERROR");
        assertThat(line.path("@timestamp").asString()).matches("\\d{4}-\\d\\d-\\d\\dT.*Z");
        assertThat(line.path("error.stack_trace").asString())
                .contains(IllegalStateException.class.getName(), "\tat " + SetClock.class.getName());
    }

    /** What was refused stands there as it is called in the table of addresses, and by whom it was asked does not. */
    @Test
    void aRefusalStandsThere() throws IOException {
        assertThat(caller.postAsItIs("/people/invite?name=Unheard", Map.of("name", OTHER))
                        .statusCode())
                .isEqualTo(403);
        String all = Files.readString(logs.resolve("office.log"));
        assertThat(all).doesNotContain("Unheard");
        assertThat(read(all.lines()))
                .extracting(line -> line.path("message").asString(""))
                .contains("refused: POST /people/invite");
    }

    /** Each line is a document of its own. */
    private static List<JsonNode> read(Stream<String> lines) {
        return lines.map(line -> JsonMapper.shared().readTree(line)).toList();
    }

    /** What was written until it is too large goes into a file of its own, whole. */
    @Test
    void itIsDividedByItsSize() throws Exception {
        System.Logger log = System.getLogger("org.cupwright.app.invented");
        String long1000 = "x".repeat(1000);
        int written = MOST_BYTES / 1000 + 1;
        for (int i = 0; i < written; i++) {
            log.log(System.Logger.Level.WARNING, i + long1000);
        }
        for (int i = 0; i < 2; i++) {
            log.log(System.Logger.Level.WARNING, "after it");
        }
        Path now = logs.resolve("office.log");
        assertThat(Files.size(now)).isLessThan(MOST_BYTES / 2);
        List<Path> before = packed();
        assertThat(before).hasSize(1);
        long kept = lines(before.get(0)) + Files.readString(now).lines().count();
        assertThat(kept).isGreaterThanOrEqualTo(written + 2L);
    }

    /** It is packed beside the running office. */
    private List<Path> packed() throws IOException, InterruptedException {
        List<Path> found = List.of();
        for (int i = 0; i < 100; i++) {
            try (Stream<Path> files = Files.list(logs)) {
                found = files.filter(file -> !file.endsWith("office.log")).toList();
            }
            if (!found.isEmpty()
                    && found.stream().allMatch(file -> file.toString().endsWith(".gz"))) {
                return found;
            }
            Thread.sleep(100);
        }
        return found;
    }

    private static long lines(Path packed) throws IOException {
        try (InputStream in = new GZIPInputStream(Files.newInputStream(packed));
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return read(reader.lines()).size();
        }
    }
}
