package org.cupwright.browser;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.Assertions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The office's logbook as its command lists it. */
final class KeptLog {
    private KeptLog() {}

    /** Entries since the first day of the tests, up to now. */
    static List<JsonNode> of(Path data) throws IOException, InterruptedException {
        String until = LocalDate.now(ZoneOffset.UTC).plusDays(1).toString();
        List<JsonNode> facts = new ArrayList<>();
        JsonMapper.shared()
                .readTree(run(data, "log", "list", "--json", "--from", Days.FIRST, "--to", until))
                .path("facts")
                .forEach(facts::add);
        return facts;
    }

    /** How often an entry is kept. */
    static long times(List<JsonNode> log, String id) {
        return log.stream()
                .filter(fact -> fact.path("id").asString().equals(id))
                .count();
    }

    /** Runs a command; what it prints. */
    static String run(Path data, String... command) throws IOException, InterruptedException {
        Path out = Files.createTempFile("cupwright", ".out");
        Path err = Files.createTempFile("cupwright", ".err");
        List<String> line = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                RunningOffice.JAR.toString()));
        line.addAll(List.of(command));
        line.addAll(List.of("--data", data.toString()));
        Process running = new ProcessBuilder(line)
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        Assertions.assertThat(running.waitFor())
                .as(Files.readString(err, StandardCharsets.UTF_8))
                .isZero();
        return Files.readString(out, StandardCharsets.UTF_8);
    }
}
