package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Random;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Invented courses with settings and pasts drawn by chance, planned by the commands and checked in plain numbers. */
class MadeWeeksIT {
    @TempDir
    Path files;

    @Test
    void everyRuleAndEverySumHolds_orIsSaidNotTo() throws IOException {
        Random random = new Random(Suite.seed());
        int count = Suite.count("invented courses over weeks", 200, 10);
        long setAside = 0;
        for (int i = 0; i < count; i++) {
            MadeWeeksCourse course = new MadeWeeksCourse(random);
            InProcess cupwright = new InProcess(files.resolve("data" + i));
            course.tell(cupwright, files);
            Result planned = cupwright.run(
                    "plan", "--days", course.days, "--date", MadeWeeksCourse.FIRST, "--seed", i + 1, "--json");
            assertThat(planned.status()).as("case %s: %s", i, planned.err()).isZero();
            JsonNode plan = JsonMapper.shared().readTree(planned.out());
            MadeWeeksChecker checker = new MadeWeeksChecker(course, plan);
            assertThat(checker.faults()).as("case %s, %s", i, course.settings).isEmpty();
            setAside += checker.setAside();
            noticed(course, plan, i);
        }
        assertThat(setAside)
                .as("holes on resting ground, so that causes are checked too")
                .isPositive();
    }

    /** The checker sees what it is there for: a hole where yesterday's was, one off the green, one that is missing. */
    private static void noticed(MadeWeeksCourse course, JsonNode plan, int number) {
        JsonNode holes = plan.path("days").path(1).path("holes");
        JsonNode before = plan.path("days").path(0).path("holes").path(0).path("position");
        if (holes.isEmpty() || before.isMissingNode()) {
            return;
        }
        ObjectNode at = (ObjectNode) holes.path(0).path("position");
        JsonNode good = at.deepCopy();
        at.put("east", before.path("east").asDouble() + 0.1);
        at.put("north", before.path("north").asDouble());
        assertThat(new MadeWeeksChecker(course, plan).faults())
                .as("case %s", number)
                .isNotEmpty();
        at.put("east", 0.0);
        assertThat(new MadeWeeksChecker(course, plan).faults())
                .as("case %s", number)
                .anyMatch(fault -> fault.contains("from the edge"));
        at.setAll((ObjectNode) good);
        ((ArrayNode) holes).remove(0);
        assertThat(new MadeWeeksChecker(course, plan).faults())
                .as("case %s", number)
                .anyMatch(fault -> fault.contains("is there 0 times"));
    }
}
