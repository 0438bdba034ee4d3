package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The main job in one command, as a newcomer meets it. */
class DemoIT {
    private static final List<String> THIRDS = List.of("front", "middle", "back");

    @TempDir
    private Path files;

    private Result demo(String data, String out) throws Exception {
        Result result =
                RealProcess.cupwright("demo", "--json", "--data", files.resolve(data), "--out", files.resolve(out));
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private byte[] paper(String out, String name) throws Exception {
        return Files.readAllBytes(files.resolve(out).resolve(name));
    }

    /** In a reduced run the other one is made within this process. */
    @Test
    void theSameMorningComesOutWheneverItIsAskedFor() throws Exception {
        Result first = demo("data", "first");
        if (Suite.full()) {
            assertSame(demo("other", "elsewhere").out(), "elsewhere", first);
            assertSame(demo("data", "again").out(), "again", first);
        } else {
            InProcess elsewhere = new InProcess(files.resolve("other"));
            InProcess.Result other = elsewhere.run("demo", "--json", "--out", files.resolve("elsewhere"));
            assertSame(other.out(), "elsewhere", first);
        }
        holdsAFullPlan(first.out());
    }

    private void assertSame(String said, String out, Result first) throws Exception {
        assertThat(said).isEqualTo(first.out());
        for (String name : List.of("hole-locations.pdf", "changers-card.pdf")) {
            assertThat(paper(out, name)).as(name).isEqualTo(paper("first", name));
        }
    }

    private static void holdsAFullPlan(String json) {
        JsonNode day = JsonMapper.shared().readTree(json).path("days").path(0);
        assertThat(day.path("date").asString()).isEqualTo("2026-06-20");
        assertThat(day.path("holes").size()).isEqualTo(18);
        int[] thirds = new int[3];
        for (JsonNode hole : day.path("holes")) {
            thirds[THIRDS.indexOf(hole.path("position").path("third").asString())]++;
            assertThat(hole.path("setAside").size()).isZero();
            assertThat(hole.path("reasons").size()).isPositive();
        }
        assertThat(thirds).containsExactly(6, 6, 6);
    }
}
