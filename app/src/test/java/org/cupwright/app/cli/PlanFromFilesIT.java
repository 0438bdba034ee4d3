package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.cupwright.green.Jet;
import org.cupwright.green.MadeSurface;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Whole courses from their files to the plan, held against the files and the true ground they were made from.
 *
 * <p>The check has arithmetic of its own: distances from the squares' corners as they stand in the file, slopes from
 * the made surface by least squares over the disc. Nothing may be broken unless the plan lists it as set aside.
 */
class PlanFromFilesIT {
    private static final int GREENS = 3;
    private static final double APART = 100;
    private static final double EDGE_METRES = 4 * 0.914;
    private static final double CAP_PERCENT = 3;

    @TempDir
    Path files;

    /** Courses that were not looked at while the program was written. */
    @ParameterizedTest
    @ValueSource(longs = {70_001, 70_002, 70_003})
    void nothingIsBrokenThatIsNotListed(long seed) throws IOException {
        List<MadeSurface> truth = new ArrayList<>();
        for (int green = 0; green < GREENS; green++) {
            truth.add(MadeSurface.gentle(10 * seed + green, MadeCourse.SIDE / 2));
        }
        InProcess cupwright = new InProcess(files.resolve("data"));
        String outlines = MadeCourse.outlines(files, GREENS).toString();
        String points = survey(truth, seed).toString();
        assertThat(cupwright
                        .run("import", "--course", "made", "--outlines", outlines, "--elevation", points)
                        .status())
                .as("seed %d", seed)
                .isZero();
        JsonNode plan =
                JsonMapper.shared().readTree(cupwright.run("plan", "--json").out());
        JsonNode holes = plan.get("days").get(0).get("holes");

        assertThat(holes.size()).isEqualTo(GREENS);
        for (int green = 0; green < GREENS; green++) {
            check(holes.get(green), green, truth.get(green), cupwright, seed);
        }
    }

    private static void check(JsonNode hole, int green, MadeSurface truth, InProcess cupwright, long seed) {
        String as = "seed " + seed + ", hole " + hole;
        double east = hole.get("position").get("east").asDouble();
        double north = hole.get("position").get("north").asDouble();
        double x = east - MadeCourse.WEST - APART * green;
        double y = north - MadeCourse.SOUTH;
        String listed = hole.get("setAside").toString();
        assertThat(hole.get("verdict").asString()).as(as).isNotEqualTo("fail");
        double edge = Math.min(Math.min(x, MadeCourse.SIDE - x), Math.min(y, MadeCourse.SIDE - y));
        assertThat(edge >= EDGE_METRES - 0.002 || listed.contains("\"edge\""))
                .as(as)
                .isTrue();

        String at = String.format(Locale.ROOT, "%.4f,%.4f", east, north);
        String answer = cupwright
                .run("assess", "--hole", hole.get("hole").asString(), "--at", at, "--json")
                .out();
        JsonNode level = JsonMapper.shared().readTree(answer).get("rules").get(0);
        assertThat(level.get("rule").asString()).isEqualTo("level");
        double error = level.get("standardError").asDouble();
        double worst = worstSlopePercent(truth, x - MadeCourse.SIDE / 2, y - MadeCourse.SIDE / 2);
        assertThat(worst <= CAP_PERCENT + 2 * error || listed.contains("\"level\""))
                .as(as + ", true " + worst)
                .isTrue();
        assertThat(Math.abs(worst - level.get("value").asDouble()))
                .as("%s: slope %s", as, level)
                .isLessThanOrEqualTo(2 * error);
    }

    /** Six points a square metre with 8 mm of noise, of surfaces made about the greens' middles. */
    private Path survey(List<MadeSurface> truth, long seed) throws IOException {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder("x,y,z\n");
        Jet jet = new Jet();
        for (int green = 0; green < GREENS; green++) {
            for (int i = 0; i < 4000; i++) {
                double x = (MadeCourse.SIDE / 2 + 2) * (2 * random.nextDouble() - 1);
                double y = (MadeCourse.SIDE / 2 + 2) * (2 * random.nextDouble() - 1);
                truth.get(green).at(x, y, jet);
                text.append(String.format(
                        Locale.ROOT,
                        "%.3f,%.3f,%.4f%n",
                        MadeCourse.WEST + APART * green + MadeCourse.SIDE / 2 + x,
                        MadeCourse.SOUTH + MadeCourse.SIDE / 2 + y,
                        50 + jet.z + 0.008 * random.nextGaussian()));
            }
        }
        return Files.writeString(files.resolve("points.csv"), text);
    }

    /** The steepest plane over a disc about any spot within 0.6 m, in steps of 0.25 m. */
    private static double worstSlopePercent(MadeSurface truth, double x, double y) {
        double worst = 0;
        for (int i = -2; i <= 2; i++) {
            for (int j = -2; j <= 2; j++) {
                if (i * i + j * j <= 5) {
                    worst = Math.max(worst, slopePercent(truth, x + 0.25 * i, y + 0.25 * j));
                }
            }
        }
        return worst;
    }

    private static double slopePercent(MadeSurface truth, double x, double y) {
        double xz = 0;
        double yz = 0;
        double xx = 0;
        Jet jet = new Jet();
        for (double dx = -0.9; dx <= 0.901; dx += 0.05) {
            for (double dy = -0.9; dy <= 0.901; dy += 0.05) {
                if (dx * dx + dy * dy <= 0.91 * 0.91) {
                    truth.at(x + dx, y + dy, jet);
                    xz += dx * jet.z;
                    yz += dy * jet.z;
                    xx += dx * dx;
                }
            }
        }
        return 100 * Math.hypot(xz, yz) / xx;
    }
}
