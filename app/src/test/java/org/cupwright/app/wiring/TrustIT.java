package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.policy.PolicyChange;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people type and what files hold is not taken as it comes where it cannot be meant; told by the real program. */
class TrustIT {
    private static final String DAY = "2026-06-20";
    private static final double W = MadeCourse.WEST;
    private static final double S = MadeCourse.SOUTH;
    private static final String UTM = "EPSG:32626";

    @TempDir
    static Path made;

    @TempDir
    Path files;

    private Path data;

    @BeforeAll
    static void aCourse() throws IOException, InterruptedException {
        Result result = RealProcess.typed(
                "import",
                "--course",
                "made",
                "--outlines",
                MadeCourse.outlines(made, 2),
                "--data",
                made.resolve("data"));
        assertThat(result.status()).as(result.err()).isZero();
    }

    @BeforeEach
    void aCopyOfIt() throws IOException {
        data = Files.createDirectory(files.resolve("data"));
        Files.copy(made.resolve("data/cupwright.db"), data.resolve("cupwright.db"));
    }

    private Result run(Object... arguments) throws IOException, InterruptedException {
        List<Object> line = new ArrayList<>(List.of(arguments));
        line.addAll(List.of("--data", data));
        return RealProcess.typed(line.toArray());
    }

    private void refused(String word, Object... arguments) throws IOException, InterruptedException {
        refusedWith(1, word, arguments);
    }

    private void refusedWith(int status, String word, Object... arguments) throws IOException, InterruptedException {
        Result result = run(arguments);
        assertThat(result.status())
                .as(List.of(arguments) + result.out() + result.err())
                .isEqualTo(status);
        assertThat(result.err()).contains(word).contains("try:").doesNotContain("[Fatal", "Exception");
    }

    @Test
    void aLanguageWithoutWordsIsRefusedAndOneThatIsStoredIsPassedOver() throws Exception {
        refused("one of en", "policy", "desk.language=de", "--date", DAY);
        assertThat(run("policy", "desk.language=en", "--date", DAY).status()).isZero();
        try (SqliteFolder folder = new SqliteFolder(data, Clock.systemUTC())) {
            PolicyChange stored = new PolicyChange(LocalDate.of(2026, 6, 21), "desk.language", "de");
            Writes.to(folder, stores -> stores.policies().add("made", stored));
        }
        Result policy = run("policy", "desk.units");
        assertThat(policy.status()).as(policy.err()).isZero();
        assertThat(policy.err()).contains("no words in the language de");
        assertThat(run("policy").status()).isZero();
        assertThat(run("policy", "desk.language=en").status()).isZero();
        assertThat(run("turf").err()).isEmpty();
    }

    @Test
    void daysThatCannotBeMeantAreRefused() throws Exception {
        for (String day : List.of("0206-06-20", "9999-06-20", "1989-12-31")) {
            refused(day, "plan", "--date", day);
            refused(day, "log", "add", "note-to-next", "--set", "text=x", "--date", day);
        }
        for (String day : List.of("-999999999-01-01", "+999999999-12-31")) {
            for (String command : List.of("plan", "turf", "log list")) {
                List<Object> line = new ArrayList<>(List.of((Object[]) command.split(" ")));
                line.add("--date=" + day);
                refusedWith(2, "no such day", line.toArray());
            }
        }
        refused("0206", "log", "add", "note-to-next", "--set", "text=x", "--when", "0206-06-20T05:40");
        refused("2206", "log", "add", "note-to-next", "--set", "text=x", "--yes", "--when", "2206-06-20T05:40");
        refused("time", "log", "add", "note-to-next", "--set", "text=x", "--when", "+999999999-06-20T05:40");
    }

    @Test
    void groundIsTakenOnlyWhereItCounts() throws Exception {
        Path ground = Files.writeString(files.resolve("ground.csv"), "");
        for (String command :
                List.of("turf", "level list", "drawn list", "roll --hole 1 --from 1,2 --heading 3 --launch 1")) {
            List<Object> line = new ArrayList<>(List.of((Object[]) command.split(" ")));
            line.addAll(List.of("--ground", ground));
            refusedWith(2, "--ground", line.toArray());
        }
    }

    @Test
    void whatPeopleWroteMovesNothingOnATerminal() throws Exception {
        String text = "red \u001b[31m bell\u0007 csi\u009b31m end";
        assertThat(run("log", "add", "note-to-next", "--set", "text=" + text, "--date", DAY)
                        .status())
                .isZero();
        Result listed = run("log", "list", "--date", DAY);
        assertThat(listed.out()).contains("red", "end").doesNotContain("\u001b", "\u0007", "\u009b");
        Result refused = run("assess", "--hole", "\u001b[2J9");
        assertThat(refused.err()).contains("9").doesNotContain("\u001b");
    }

    @Test
    void aWordThatBeginsWithAnAtIsAWord() throws Exception {
        Path arguments = Files.writeString(files.resolve("arguments"), "turf");
        refusedWith(2, "@", "@" + arguments);
    }

    @Test
    void aPipeIsNoFile() throws Exception {
        Path pipe = files.resolve("pipe");
        assertThat(RealProcess.run(List.of("mkfifo", pipe.toString())).status()).isZero();
        refused("pipe", "import", "--course", "made", "--outlines", pipe);
        refused("pipe", "log", "import", pipe);
        refused("pipe", "weather", "import", pipe);
        refused("pipe", "plan", "--ground", pipe);
        assertThat(run("restore", pipe).status()).isEqualTo(1);
    }

    private void badPoints(String word, String text) throws IOException, InterruptedException {
        Path file = Files.writeString(files.resolve("points.csv"), text);
        refused(word, "import", "--course", "made", "--elevation", file, "--crs", UTM, "--dry-run");
        refused(word, "import", "--course", "made", "--elevation", file, "--crs", UTM);
    }

    @Test
    void pointsWithDecimalCommasBetweenCommasAreRefused() throws Exception {
        badPoints("decimals", "x,y,z\n500001,12,4400002,34,1,23\n500002,12,4400003,34,1,24\n");
    }

    @Test
    void slopesThatNoGreenHasAreRefusedWithTheLimit() throws Exception {
        StringBuilder points = new StringBuilder("x,y,z\n");
        for (int i = 0; i < 44 * 44; i++) {
            double east = 0.5 * (i % 44);
            double north = 0.5 * (i / 44);
            double tooth = 0.72 * Math.abs(north % 8 - 4);
            points.append(W + east)
                    .append(',')
                    .append(S + north)
                    .append(',')
                    .append(tooth)
                    .append('\n');
        }
        badPoints("40", points.toString());
    }

    @Test
    void outlinesThatNoGreenHasAreRefusedWithTheLimit() throws Exception {
        outlines("400", MadeCourse.polygon("1", W, S, W + 2000, S, W + 2000, S + 20, W, S + 20, W, S));
        outlines("m²", MadeCourse.polygon("1", W, S, W + 390, S, W + 390, S + 390, W, S + 390, W, S));
    }

    private void outlines(String word, String green) throws IOException, InterruptedException {
        Path file = MadeCourse.write(files.resolve("large.geojson"), MadeCourse.collection(green));
        refused(word, "import", "--course", "other", "--outlines", file, "--units", "metric");
    }

    @Test
    void oneWayNamedManyTimesIsOneEdge() throws Exception {
        StringBuilder osm = new StringBuilder("<osm version=\"0.6\">");
        double[][] corners = {{-27, 39.75}, {-26.9997, 39.75}, {-26.9997, 39.7502}, {-27, 39.7502}};
        for (int i = 0; i < 4; i++) {
            osm.append("<node id=\"").append(i + 1).append("\" lon=\"").append(corners[i][0]);
            osm.append("\" lat=\"").append(corners[i][1]).append("\"/>");
        }
        osm.append("<way id=\"9\"><nd ref=\"1\"/><nd ref=\"2\"/><nd ref=\"3\"/><nd ref=\"4\"/><nd ref=\"1\"/></way>");
        osm.append("<relation id=\"7\"><tag k=\"type\" v=\"multipolygon\"/><tag k=\"golf\" v=\"green\"/>");
        osm.append("<tag k=\"ref\" v=\"1\"/>");
        osm.append("<member type=\"way\" ref=\"9\" role=\"outer\"/>".repeat(2000))
                .append("</relation></osm>");
        Path file = Files.writeString(files.resolve("map.osm"), osm);
        Result result = run("import", "--course", "other", "--outlines", file, "--dry-run");
        assertThat(result.status()).as(result.err()).isZero();
    }

    @Test
    void brokenMapsAreToldInOneSentence() throws Exception {
        for (String text : List.of(
                "<osm",
                "<osm><node id='1' lon='1' lat='1'",
                "<osm>\u0001</osm>",
                "<osm>&x;</osm>",
                "<?xml version='1.0' encoding='nonsense'?><osm/>",
                "<osm><a></b></osm>")) {
            refused(
                    "cannot be read",
                    "import",
                    "--course",
                    "other",
                    "--outlines",
                    Files.writeString(files.resolve("broken.osm"), text));
        }
    }

    /** The parser's own lines, as "[Fatal Error] :1:5: …", are none of what a person is told. */
    @Test
    void aBrokenMapPrintsItsSentenceAndNoLineMore() throws Exception {
        for (String text : List.of("<osm", "<osm><a></b></osm>", "<!DOCTYPE osm [<!ENTITY x 'y'>]><osm>&x;</osm>")) {
            Path broken = Files.writeString(files.resolve("broken.osm"), text);
            Result result = run("import", "--course", "other", "--outlines", broken);
            assertThat(result.status()).isEqualTo(1);
            assertThat(result.out()).isEmpty();
            assertThat(result.err().lines().skip(1))
                    .as(result.err())
                    .allMatch(line -> line.matches(" {2}(where:|value:|try: ) .*|  {8}.*"));
            assertThat(result.err()).startsWith("The file cannot be read");
        }
    }

    @Test
    void drawnGroundBeyondAnyUseIsRefused() throws Exception {
        String point = "{\"type\":\"Feature\",\"properties\":{\"kind\":\"usual\",\"hole\":\"1\"},\"geometry\":"
                + "{\"type\":\"Point\",\"coordinates\":[-27,39.75]}}";
        Path file = Files.writeString(
                files.resolve("drawn.geojson"), MadeCourse.collection((point + ",").repeat(160_000) + point));
        refused("large", "import", "--course", "made", "--drawn", file);
    }

    /** Heights and places of every size, so that what the fit works with comes to its limits. */
    @Test
    void surveysThatNoSurfaceFitsEndInASentence() throws Exception {
        Random random = new Random(5);
        for (double size : new double[] {1e-300, 1e-9, 1e9, 1e150, 1e300}) {
            StringBuilder points = new StringBuilder("x,y,z\n");
            for (int i = 0; i < 2000; i++) {
                points.append(W + 22 * random.nextDouble()).append(',').append(S + 22 * random.nextDouble());
                points.append(',').append(size * random.nextGaussian()).append('\n');
            }
            Path file = Files.writeString(files.resolve("points.csv"), points);
            Result result = run("import", "--course", "made", "--elevation", file, "--crs", UTM, "--dry-run");
            assertThat(result.status()).as(size + " " + result.err()).isIn(0, 1);
        }
    }

    @Test
    void aFullDiskIsReadAsItLies() throws Exception {
        Mounted.onlyAsRoot();
        Mounted.on(files, "size=2m", mount -> {
            Path full = Files.createDirectory(mount.resolve("data"));
            Files.copy(data.resolve("cupwright.db"), full.resolve("cupwright.db"));
            try {
                Files.write(mount.resolve("filler"), new byte[4 << 20]);
            } catch (IOException noRoomLeft) {
                assertThat(Files.getFileStore(mount).getUsableSpace()).isZero();
            }
            Result turf = RealProcess.typed("turf", "--data", full);
            assertThat(turf.status()).as(turf.err()).isZero();
            assertThat(turf.err()).contains("read as it lies");
        });
    }

    /** Whoever may not enter the folder is told so, and not that it is empty. */
    @Test
    void dataBehindAClosedFolderIsNotNone() throws Exception {
        Mounted.onlyAsRoot();
        Files.setPosixFilePermissions(files, java.nio.file.attribute.PosixFilePermissions.fromString("rwxr-xr-x"));
        Files.setPosixFilePermissions(data, java.nio.file.attribute.PosixFilePermissions.fromString("rwx------"));
        List<String> line = new ArrayList<>(List.of("setpriv", "--reuid=65534", "--clear-groups"));
        line.addAll(RealProcess.program(List.of()));
        line.addAll(List.of("turf", "--data", data.toString()));
        Result result = RealProcess.run(line);
        org.junit.jupiter.api.Assumptions.assumeFalse(
                result.err().contains("setpriv:") || result.err().contains("Unable to access jarfile"), result.err());
        assertThat(result.status()).as(result.out() + result.err()).isEqualTo(1);
        assertThat(result.err()).contains("cannot be told");
    }
}
