package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.app.wiring.server.Caller;
import org.cupwright.app.wiring.server.OpenOffice;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/** Commands and the office write into one data folder at once: nothing is lost, and nothing refused in silence. */
class CommandsAndOfficeIT {
    private static final String NAME = "Invented Person";
    private static final String PASSWORD = "an invented password";

    /** Every so many writes one changes a setting, the others are entries. */
    private static final int A_SETTING_EVERY = 5;

    private static final String KEY = "place.paceMetres";

    @TempDir
    Path files;

    private Path data;

    /** What somebody was told. */
    private record Told(Set<UUID> kept, int settings, int refused) {}

    @AfterEach
    void othersNeedNoneOfIt() {
        System.clearProperty(OpenOffice.AHEAD);
    }

    @Test
    void allThatWasAcknowledgedIsThereOnce() throws Exception {
        data = files.resolve("data");
        Path outlines = MadeCourse.outlines(files, 2);
        InProcess.Result made =
                new InProcess(data).run("import", "--course", FactWriter.COURSE, "--outlines", outlines);
        assertThat(made.status()).as(made.err()).isZero();
        int writes = Suite.count("mixed writes of commands and office", 200, 60);
        List<Told> told = new ArrayList<>();
        System.setProperty(OpenOffice.AHEAD, "true"); // an office that is at work besides
        try (OpenOffice office = new OpenOffice(data, Clock.systemUTC(), false)) {
            Caller caller = new Caller(office::at);
            assertThat(caller.join(office.code(), NAME, PASSWORD)).isEqualTo("/sign-in?joined");
            assertThat(caller.signIn(NAME, PASSWORD)).isEqualTo("/");
            List<Callable<Told>> writers = List.of(
                    () -> byCommands(writes / 2),
                    () -> byPages(caller, writes / 4, 1),
                    () -> byPages(caller, writes / 4, 2));
            ExecutorService atOnce = Executors.newFixedThreadPool(writers.size());
            for (Future<Told> writer : atOnce.invokeAll(writers)) {
                told.add(writer.get());
            }
            atOnce.shutdown();
        }
        Set<UUID> kept = new HashSet<>();
        told.forEach(each -> kept.addAll(each.kept()));
        int settings = told.stream().mapToInt(Told::settings).sum();
        int refused = told.stream().mapToInt(Told::refused).sum();
        System.out.println("commands and office at once: " + kept.size() + " entries and " + settings
                + " settings kept, " + refused + " refused and told so, of " + writes);
        assertThat(kept.size() + settings + refused).isEqualTo(writes / 2 + 2 * (writes / 4));
        Kept.assertSound(data, "after all writes");
        try (SqliteFolder folder = Kept.folder(data)) {
            List<UUID> there =
                    Kept.facts(folder).stream().map(fact -> fact.id()).toList();
            assertThat(there).containsExactlyInAnyOrderElementsOf(kept);
            long changed =
                    folder
                            .read(stores -> stores.audit()
                                    .between(Instant.EPOCH, Instant.now().plusSeconds(60)))
                            .stream()
                            .filter(line -> line.what() == AuditKind.POLICY_CHANGED)
                            .count();
            assertThat(changed).isEqualTo(settings);
        }
    }

    private Told byCommands(int writes) throws IOException, InterruptedException {
        Set<UUID> kept = new HashSet<>();
        int settings = 0;
        int refused = 0;
        for (int write = 0; write < writes; write++) {
            boolean setting = write % A_SETTING_EVERY == 0;
            Result result = setting
                    ? RealProcess.typed("policy", KEY + "=" + value(0, write), "--data", data)
                    : RealProcess.typed("log", "add", "speed-read", "--set", "feet=10", "--json", "--data", data);
            if (result.status() != 0) {
                assertThat(result.err()).contains("try:");
                refused++;
            } else if (setting) {
                settings++;
            } else {
                JsonMapper.shared().readTree(result.out()).findValuesAsString("id").stream()
                        .map(UUID::fromString)
                        .forEach(kept::add);
            }
        }
        return new Told(kept, settings, refused);
    }

    private static Told byPages(Caller caller, int writes, int writer) {
        EntriesByPage page = new EntriesByPage(caller);
        Map<String, String> token = caller.token("/log");
        Set<UUID> kept = new HashSet<>();
        int settings = 0;
        int refused = 0;
        for (int write = 0; write < writes; write++) {
            UUID form = UUID.randomUUID();
            boolean setting = write % A_SETTING_EVERY == 0;
            HttpResponse<String> answer = setting ? setting(caller, token, value(writer, write)) : page.speedRead(form);
            if (answer.statusCode() != 302) {
                assertThat(answer.body()).as("what is said of it").contains("class=\"problem");
                refused++;
            } else if (setting) {
                settings++;
            } else {
                kept.add(form);
            }
        }
        return new Told(kept, settings, refused);
    }

    /** Each writer's are others, and none is set twice. */
    private static String value(int writer, int write) {
        return "0." + (6 + writer) + String.format(Locale.ROOT, "%03d", write);
    }

    private static HttpResponse<String> setting(Caller caller, Map<String, String> token, String value) {
        Map<String, String> fields = new TreeMap<>(token);
        fields.putAll(Map.of(
                "key",
                KEY,
                "value",
                value,
                "from",
                LocalDate.now(ZoneOffset.UTC).toString()));
        return caller.postAsItIs("/course/settings", fields);
    }
}
