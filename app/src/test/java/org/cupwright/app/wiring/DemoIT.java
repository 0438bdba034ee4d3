package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.cli.MadeMorning;
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

    /** In a reduced run the other one is what the tests' own process came to. */
    @Test
    void theSameMorningComesOutWheneverItIsAskedFor() throws Exception {
        Result first = demo("data", "first");
        if (Suite.full()) {
            assertThat(demo("other", "elsewhere").out()).isEqualTo(first.out());
            assertSamePaper(files.resolve("elsewhere"));
            assertThat(demo("data", "again").out()).isEqualTo(first.out());
            assertSamePaper(files.resolve("again"));
        } else {
            assertThat(MadeMorning.told()).isEqualTo(first.out());
            assertSamePaper(MadeMorning.folder().resolve("paper"));
        }
        holdsAFullPlan(first.out());
    }

    private void assertSamePaper(Path other) throws Exception {
        for (String name : List.of("hole-locations.pdf", "changers-card.pdf")) {
            assertThat(other.resolve(name))
                    .hasSameBinaryContentAs(files.resolve("first").resolve(name));
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
