package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What a telephone could not send, handed in as the file that its page saved. */
class TakeRoundIT {
    private static final String DAY = "2026-06-20";
    private static final String FIRST = "0b0e1c52-5f0a-4c3e-9a51-6f2f5d5b7a01";
    private static final String SECOND = "0b0e1c52-5f0a-4c3e-9a51-6f2f5d5b7a02";

    @TempDir
    private Path folder;

    private InProcess commands;

    @BeforeEach
    void begin() throws Exception {
        Path data = folder.resolve("data");
        MadeMorning.copyTo(data);
        commands = new InProcess(data);
    }

    private static String entry(String id, String hole) {
        return "{\"id\": \"" + id + "\", \"course\": \"wrenfold-moor\", \"says\": {\"kind\": \"cupChanged\", "
                + "\"asPlanned\": true, \"parts\": {}, \"hole\": \"" + hole + "\", \"day\": \"" + DAY
                + "\", \"at\": \"2026-06-20T05:10:00Z\", \"clockBehind\": 0}}";
    }

    private InProcess.Result take(String text, String... more) throws IOException {
        Path file = Files.writeString(folder.resolve("round.json"), text);
        String[] command = {"log", "take", file.toString(), "--person", "Robin Marlow"};
        return commands.run(
                Stream.of(List.of(command), List.of(more)).flatMap(List::stream).toArray(String[]::new));
    }

    private List<String> kept() {
        JsonNode facts = JsonMapper.shared()
                .readTree(commands.run("log", "list", "--date", DAY, "--json").out())
                .path("facts");
        return facts.valueStream().map(fact -> fact.path("id").asString()).toList();
    }

    @Test
    void whatIsHandedInIsKeptOnceAndWhatCannotBeKeepsNothingBack() throws IOException {
        String file = "{\"round\": 1, \"entries\": [" + entry(FIRST, "99") + ", " + entry(SECOND, "7") + "]}";
        InProcess.Result first = take(file);
        assertThat(first.status()).as(first.err()).isZero();
        assertThat(first.out()).contains("One entry kept; none was there already.", "Hole 99 was not taken:");
        assertThat(kept()).contains(SECOND).doesNotContain(FIRST);
        assertThat(take(file).out()).contains("No entries kept; one was there already.");
        assertThat(kept().stream().filter(SECOND::equals)).hasSize(1);
        assertThat(take(file, "--lang", "es").out()).contains("No se aceptó lo del hoyo 99");
    }

    @Test
    void whatIsPractisedIsHandedInBesides() throws IOException {
        String says = "{\"kind\": \"practised\", \"by\": \"Robin Marlow\", \"exercise\": \"levelPlugs\", \"best\": 10, "
                + "\"last\": 3, \"day\": \"" + DAY + "\", \"at\": \"2026-06-20T05:40:00Z\", \"clockBehind\": 0}";
        String practice = "{\"id\": \"" + FIRST + "\", \"course\": \"wrenfold-moor\", \"to\": \"training\", \"says\": "
                + says + "}";
        String file = "{\"round\": 1, \"entries\": [" + practice + ", " + entry(SECOND, "7") + "]}";
        assertThat(take(file).out()).contains("2 entries kept");
        assertThat(take(file).out()).contains("No entries kept; 2 were there already.");
        assertThat(commands.run("training", "list", "Robin Marlow").out()).contains("10");
    }

    @Test
    void anotherFileIsRefusedAndSaysWhichOneIsWanted() throws IOException {
        for (String other : List.of(
                "",
                "Hole 7 was cut",
                "{\"round\": 2, \"entries\": []}",
                "{\"round\": 1, \"entries\": {}}",
                "{\"round\": 1, \"entries\": [{\"id\": \"seven\"}]}",
                "[" + entry(FIRST, "7") + "]")) {
            InProcess.Result refused = take(other);
            assertThat(refused.status()).as(other).isNotZero();
            assertThat(refused.err()).contains("not one that the page of the round saved", "Save to a file");
            assertThat(kept()).doesNotContain(FIRST);
        }
        assertThat(commands.run("log", "take", folder.resolve("none.json").toString())
                        .err())
                .contains("There is no such file");
    }
}
