package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Bad input to the real program: it says what is wrong, where, and what to try, gives status 1, and leaves the data
 * folder as it was, both where there was none and where there was a course in it.
 */
class BadInputIT {
    private static final double W = MadeCourse.WEST;
    private static final double S = MadeCourse.SOUTH;

    @TempDir
    static Path files;

    private static Path outlines;
    private static Path filled;

    @BeforeAll
    static void aFolderWithACourse() throws IOException, InterruptedException {
        outlines = MadeCourse.outlines(files, 2);
        filled = files.resolve("filled");
        Result result = RealProcess.typed("import", "--course", "made", "--outlines", outlines, "--data", filled);
        assertThat(result.status()).as(result.err()).isZero();
    }

    /** One bad import: what it is called, the arguments, and words that the answer must hold. */
    private record Bad(String name, List<Object> arguments, List<String> words) {}

    private static Bad outlines(String name, String text, String... words) throws IOException {
        Path file = MadeCourse.write(files.resolve(name.replace(' ', '-') + ".geojson"), text);
        return new Bad(name, List.of("--outlines", file), List.of(words));
    }

    private static Bad points(String name, String text, List<String> options, String... words) throws IOException {
        Path file = MadeCourse.write(files.resolve(name.replace(' ', '-') + ".csv"), text);
        List<Object> arguments = new ArrayList<>(List.of("--outlines", outlines, "--elevation", file));
        arguments.addAll(options);
        return new Bad(name, arguments, List.of(words));
    }

    private static List<Bad> badImports() throws IOException {
        String utm = "EPSG:32626";
        List<String> crs = List.of("--crs", utm);
        String closed = MadeCourse.green("1", W);
        List<Bad> bad = new ArrayList<>();
        bad.add(new Bad("missing file", List.of("--outlines", files.resolve("none.geojson")), List.of("no such file")));
        bad.add(new Bad("folder for a file", List.of("--outlines", files), List.of("cannot be read")));
        bad.add(outlines("empty outlines", "", "empty"));
        bad.add(outlines("garbled outlines", "{\"type\":\"Feat", "cannot be read"));
        bad.add(outlines("no greens", MadeCourse.collection(""), "there is no green"));
        bad.add(outlines(
                "coordinate that is no number",
                MadeCourse.collection(closed.replace("[500000.000,", "[NaN,")),
                "cannot be read"));
        bad.add(outlines(
                "open outline",
                MadeCourse.collection(MadeCourse.polygon("1", W, S, W + 20, S, W + 20, S + 20, W, S + 20)),
                "not closed"));
        bad.add(outlines(
                "crossing outline",
                MadeCourse.collection(MadeCourse.polygon("1", W, S, W + 20, S + 20, W + 20, S, W, S + 20, W, S)),
                "crosses itself"));
        bad.add(points("empty points", "", crs, "empty"));
        bad.add(points("garbled points", "\u0000\u0001\u0002\u0003garbled", crs, "not text"));
        bad.add(points("points that are no numbers", "x,y,z\nNaN,NaN,NaN\n", crs, "is not a point", "line 2"));
        bad.add(points(
                "points far away", "x,y,z\n600000,4400010,1\n600001,4400011,1\n", crs, "from the greens", "--crs"));
        bad.add(points("unknown frame", "x,y,z\n1,2,3\n", List.of("--crs", "EPSG:999999"), "EPSG:999999"));
        Path feet = Files.createDirectories(files.resolve("feet"));
        bad.add(new Bad(
                "feet said to be metres",
                List.of(
                        "--outlines",
                        outlines,
                        "--elevation",
                        MadeCourse.survey(feet, 1, 0.3048),
                        "--crs",
                        utm,
                        "--unit",
                        "m"),
                List.of("--unit ft")));
        return bad;
    }

    @TestFactory
    List<DynamicTest> badImportsLeaveTheFolderAsItWas() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Bad bad : badImports()) {
            tests.add(DynamicTest.dynamicTest(bad.name() + ", no folder", () -> refused(bad, files.resolve("absent"))));
            tests.add(DynamicTest.dynamicTest(bad.name() + ", folder with a course", () -> refused(bad, filled)));
        }
        return tests;
    }

    private static void refused(Bad bad, Path data) throws IOException, InterruptedException {
        List<Object> arguments = new ArrayList<>(List.of("import", "--course", "made", "--data", data));
        arguments.addAll(bad.arguments());
        refused(arguments, 1, bad.words(), data);
    }

    private static void refused(List<Object> arguments, int status, List<String> words, Path data)
            throws IOException, InterruptedException {
        String before = RealProcess.hash(data);
        Result result = RealProcess.typed(arguments.toArray());
        String told = result.err();
        assertThat(result.status()).as(told + result.out()).isEqualTo(status);
        assertThat(result.out()).isEmpty();
        assertThat(told).contains(words).contains("try:").doesNotContain("Exception");
        assertThat(RealProcess.hash(data)).as(told).isEqualTo(before);
    }

    @TestFactory
    List<DynamicTest> badQuestionsLeaveTheFolderAsItWas() throws IOException {
        Path twice = MadeCourse.write(
                files.resolve("twice.geojson"),
                MadeCourse.collection(MadeCourse.green("7", W) + "," + MadeCourse.green("7", W + 100)));
        return List.of(
                question("hole not in the course", 1, List.of("assess", "--hole", "19"), "19", "1, 2"),
                question("slow speed", 1, List.of("plan", "--speed", "3.9"), "3.9", "from 4 to 16"),
                question("fast speed", 1, List.of("assess", "--hole", "1", "--speed", "16.1"), "16.1"),
                question("speed that is no number", 2, List.of("plan", "--speed", "fast"), "fast"),
                question("two hole names", 2, List.of("assess", "--hole", "1", "--hole", "2"), "--hole"),
                question("place off the green", 1, List.of("assess", "--hole", "1", "--at", "1,2"), "not on the green"),
                question("unknown course", 1, List.of("plan", "--course", "other"), "other", "made"),
                question("day without a plan", 1, List.of("explain", "--hole", "1", "--date", "1999-01-01"), "no plan"),
                question("paper of a day without a plan", 1, List.of("sheets", "--out", files.resolve("p")), "no plan"),
                question("a spot for no hole", 2, List.of("plan", "--on", "12", "--side", "L5"), "--hole"),
                question("drawing of no hole", 2, List.of("assess", "--svg", files.resolve("d.svg")), "--hole"),
                question(
                        "drawing in no folder",
                        1,
                        List.of(
                                "assess",
                                "--hole",
                                "1",
                                "--svg",
                                files.resolve("none").resolve("d.svg")),
                        "is not there"),
                question("missing ground file", 1, List.of("plan", "--ground", files.resolve("no")), "no such file"),
                DynamicTest.dynamicTest("two greens of one name are told apart, and it is said", () -> {
                    Result result = RealProcess.typed(
                            "import", "--course", "twice", "--outlines", twice, "--dry-run", "--data", filled);
                    assertThat(result.status()).as(result.err()).isZero();
                    assertThat(result.out()).contains("Hole 7 is there twice.").contains("7b");
                }));
    }

    private static DynamicTest question(String name, int status, List<Object> arguments, String... words) {
        List<Object> line = new ArrayList<>(arguments);
        line.addAll(List.of("--data", filled));
        return DynamicTest.dynamicTest(name, () -> refused(line, status, List.of(words), filled));
    }
}
