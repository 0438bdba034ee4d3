package org.cupwright.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.cupchange.PayloadKinds;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The logbook by command, on an invented morning (2026-06-20, 05:00 by the course's clock). */
class LogCommandsIT {
    @TempDir
    static Path shared;

    @TempDir
    Path files;

    private InProcess cupwright;

    @BeforeAll
    static void aPlannedCourse() throws IOException {
        InProcess first = new InProcess(shared.resolve("data"));
        assertThat(first.run("import", "--course", "made", "--outlines", MadeCourse.outlines(shared, 3))
                        .status())
                .isZero();
        assertThat(first.run("plan").status()).isZero();
        assertThat(first.run("backup", shared.resolve("planned.db")).status()).isZero();
    }

    @BeforeEach
    void aFolderOfItsOwn() {
        cupwright = new InProcess(files.resolve("data"));
        assertThat(cupwright.run("restore", shared.resolve("planned.db")).status())
                .isZero();
    }

    private Result kept(Object... arguments) {
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.err()).isZero();
        return result;
    }

    private void refused(int status, List<String> words, Object... arguments) {
        String before = list();
        Result result = cupwright.run(arguments);
        assertThat(result.status()).as(result.out() + result.err()).isEqualTo(status);
        assertThat(result.err()).contains(words).contains("try:");
        assertThat(list()).isEqualTo(before);
    }

    private String list() {
        return kept("log", "list").out();
    }

    private static String id(Result result) {
        Matcher matcher = Pattern.compile(" ([0-9a-f]{8})  ").matcher(result.out());
        assertThat(matcher.find()).as(result.out()).isTrue();
        return matcher.group(1);
    }

    @Test
    void cutAsPlannedIsOneLine() {
        Result result = kept("log", "add", "cup-changed", "--hole", "2", "--as-planned", "--person", "Ash");
        assertThat(result.out())
                .startsWith("kept  2026-06-20 05:00  2   ")
                .contains("cup changed · as planned")
                .contains("(Ash)");
        assertThat(list()).contains(id(result)).contains("as planned");
    }

    @Test
    void theRestAsPlannedLeavesOutWhatIsEnteredAlready() {
        kept("log", "add", "cup-changed", "--hole", "2", "--on", "12", "--side", "11R");
        Result rest = kept("log", "add", "cup", "--hole", "all", "--as-planned");
        assertThat(rest.out().lines().filter(line -> line.startsWith("kept")))
                .hasSize(2)
                .noneMatch(line -> line.contains(" 2   "));
        refused(
                1,
                List.of("Every hole of the plan", "log list"),
                "log",
                "add",
                "cup-changed",
                "--hole",
                "all",
                "--as-planned");
        refused(1, List.of("Hole 2 has a change", "--yes"), "log", "add", "cup", "--hole", "2", "--as-planned");
        assertThat(kept("log", "add", "left", "--hole", "2", "--yes").out()).contains("left in yesterday's hole");
    }

    @Test
    void aMovedHoleKeepsWhereItWasPlanned() {
        Result result = kept("log", "add", "cup-changed", "--hole", "1", "--on", "12", "--side", "L11", "--json");
        assertThat(result.out()).contains("\"planned\"").contains("\"foundBy\" : \"paces\"");
        Result byMap = kept("log", "add", "cup-changed", "--hole", "3", "--at", "500211,4400011", "--json");
        assertThat(byMap.out()).contains("\"foundBy\" : \"phone\"");
    }

    @Test
    void aStopSetOtherwiseThanBeforeIsAskedAboutAtOnce() {
        Object[] before = {"log", "add", "stop-set", "--set", "cutter=old", "--set", "depth=127", "--date", "2026-06-19"
        };
        assertThat(kept(before).out()).doesNotContain("Is that meant?");
        Object[] now = {"log", "add", "stop-set", "--set", "cutter=old", "--set", "depth=133.5", "--when", "04:30"};
        String asks = "Cutter old: its stop is at 133.5 mm today, on Fri 19 Jun 2026 it was at 127 mm. Is that meant?";
        assertThat(kept(now).out().replaceAll("\\s+", " ")).contains(asks);
        assertThat(kept("turf").out().replaceAll("\\s+", " ")).contains(asks);
        kept("log", "add", "stop-set", "--set", "cutter=old", "--set", "depth=127", "--when", "04:40");
        assertThat(kept("turf").out()).doesNotContain("Is that meant?");
    }

    @Test
    void aClockThatRunsBehindIsAskedAbout() {
        InProcess tomorrow = cupwright.daysLater(1);
        assertThat(tomorrow.run("log", "add", "frost", "--set", "onGreens=yes", "--person", "Ash")
                        .status())
                .isZero();
        Object[] behind = {"log", "add", "frost", "--set", "onGreens=no"};
        refused(
                1,
                List.of("Ash wrote an entry down on Sun 21 Jun 2026", "clock says Sat 20 Jun 2026", "--yes"),
                behind);
        kept("log", "add", "frost", "--set", "onGreens=no", "--yes");
        assertThat(tomorrow.run(behind).status()).isZero();
    }

    private Path picture(String name, String format) throws IOException {
        BufferedImage picture = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(3, 3, 0x00ff00);
        Path file = files.resolve(name);
        assertThat(ImageIO.write(picture, format, file.toFile())).isTrue();
        return file;
    }

    private Result odd(Object... more) {
        List<Object> all = new ArrayList<>(List.of("log", "add", "something-odd", "--person", "Ash"));
        all.addAll(List.of(more));
        return kept(all.toArray());
    }

    @Test
    void aPhotoIsKeptWithSomethingOddAndComesBackAsItWas() throws IOException {
        Path photo = picture("ring.png", "png");
        String id = id(odd("--hole", "2", "--set", "text=invented ring", "--set", "severity=soon", "--photo", photo));
        String now = id(odd("--set", "text=invented leak", "--set", "severity=now"));
        String page = kept("turf").out();
        assertThat(page.indexOf("now: invented leak (Ash)"))
                .isPositive()
                .isLessThan(page.indexOf("soon: invented ring"));
        assertThat(page).contains("invented ring (Ash) · photo");
        Path back = files.resolve("back.png");
        kept("log", "photo", id, back);
        assertThat(back).hasSameBinaryContentAs(photo);
        Path backup = files.resolve("with-photo.db");
        assertThat(kept("backup", backup).out()).contains("photos: 1");
        InProcess other = new InProcess(files.resolve("other"));
        assertThat(other.run("restore", backup).out()).contains("photos: 1");
        assertThat(other.run("log", "photo", id, files.resolve("again.png")).status())
                .isZero();
        assertThat(files.resolve("again.png")).hasSameBinaryContentAs(photo);
        assertThat(other.run("check").status()).isZero();
        kept("log", "seen", id, "--person", "Bo");
        assertThat(kept("turf").out()).doesNotContain("invented ring").contains(now);
        kept("log", "withdraw", now);
        assertThat(kept("turf").out()).doesNotContain("Odd things");
        assertThat(kept("log", "list").out())
                .contains("something odd")
                .contains("with a photo")
                .contains("odd thing seen to · entry " + id);
    }

    @Test
    void aPhotoIsToldByItsContent() throws IOException {
        Path named = picture("leaf.txt", "jpg");
        Result result = odd("--set", "text=invented leaf", "--photo", named, "--json");
        assertThat(result.out()).containsPattern("\"photo\" : \"[0-9a-f]{64}\"");
        Object[] add = {"log", "add", "something-odd", "--set", "text=x", "--photo"};
        for (byte[] none : List.of(
                new byte[0], "<svg/>".getBytes(UTF_8), new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff, 0, 0})) {
            Path file = Files.write(files.resolve("no.jpg"), none);
            refused(1, List.of("neither a JPEG nor a PNG"), with(add, file));
        }
        Path big = Files.write(files.resolve("big.jpg"), new byte[20_000_001]);
        refused(1, List.of("bigger than 20 MB"), with(add, big));
        refused(1, List.of("no-such.jpg"), with(add, files.resolve("no-such.jpg")));
        refused(1, List.of("--photo FILE"), "log", "add", "something-odd", "--set", "text=x", "--set", "photo=abc");
        refused(1, List.of("takes no photo"), "log", "add", "frost", "--set", "onGreens=yes", "--photo", named);
        assertThat(kept("check").out()).contains("photos: 1");
    }

    @Test
    void onlyOddThingsAreSeenAndHavePhotos() {
        String id = id(odd("--set", "text=invented"));
        refused(1, List.of("has no photo"), "log", "photo", id, files.resolve("x.png"));
        String frost = id(kept("log", "add", "frost", "--set", "onGreens=yes"));
        refused(1, List.of("is no odd thing, but frost"), "log", "seen", frost);
        refused(1, List.of("zzz"), "log", "seen", "zzz");
    }

    private static Object[] with(Object[] first, Object last) {
        Object[] all = Arrays.copyOf(first, first.length + 1);
        all[first.length] = last;
        return all;
    }

    @Test
    void whatLooksWrongIsAskedAbout() {
        Object[] inches = {"log", "add", "spot-check", "--hole", "1", "--set", "cup=1", "--set", "hole=4"};
        refused(1, List.of("4 mm? Did you mean 4 in? That would be 102 mm.", "--yes"), inches);
        Object[] off = {"log", "add", "ball-mark", "--hole", "1", "--at", "500040,4400011"};
        refused(1, List.of("off the green of hole 1", "--yes"), off);
        refused(1, List.of("has not come yet"), "log", "add", "speed-read", "--set", "feet=10", "--when", "06:00");
        Object[] sure = {"log", "add", "ball-mark", "--hole", "1", "--at", "500040,4400011", "--yes"};
        assertThat(kept(sure).out()).contains("500040.0 E");
    }

    @Test
    void wrongEntriesAreNamedWithWhatToTry() {
        refused(1, List.of("cup-chnaged", "cup-changed"), "log", "add", "cup-chnaged", "--hole", "1");
        refused(1, List.of("cutAt", "--as-planned"), "log", "add", "cup-changed", "--hole", "1");
        refused(1, List.of("about one hole", "--hole"), "log", "add", "plug-seen", "--set", "look=high", "--at", "1,2");
        refused(1, List.of("look", "damaged"), "log", "add", "plug-seen", "--hole", "1", "--set", "look=fine");
        refused(1, List.of("colour", "at, look"), "log", "add", "plug-seen", "--hole", "1", "--set", "colour=red");
        refused(1, List.of("cannot be", "900"), "log", "add", "irrigated", "--set", "millimetres=900");
        refused(1, List.of("number"), "log", "add", "irrigated", "--set", "millimetres=much");
        refused(1, List.of("19", "1, 2, 3"), "log", "add", "cup-changed", "--hole", "19", "--as-planned");
        refused(1, List.of("25:00", "05:40"), "log", "add", "frost", "--set", "onGreens=yes", "--when", "25:00");
        refused(1, List.of("radius"), "log", "add", "ground", "--hole", "1", "--on", "9", "--side", "L9");
        refused(
                1,
                List.of("no plan", "2026-06-20"),
                "log",
                "add",
                "cup",
                "--hole",
                "1",
                "--as-planned",
                "--date",
                "2026-06-19");
        refused(1, List.of("does not take"), "log", "add", "frost", "--as-planned", "--set", "on=yes");
        refused(2, List.of("--side"), "log", "add", "cup", "--hole", "1", "--on", "9");
        refused(2, List.of("PART=VALUE"), "log", "add", "speed-read", "--set", "10");
        refused(2, List.of("not both"), "log", "add", "cup", "--hole", "1", "--on", "9", "--side", "L9", "--at", "1,2");
        refused(1, List.of("earlier day"), "log", "list", "--from", "2026-07-01", "--to", "2026-06-01");
        refused(1, List.of("begins with"), "log", "withdraw", "ffffffff");
    }

    @Test
    void aCorrectionTakesThePlaceOfTheEntryAndAWithdrawalTakesItOut() {
        String id = id(kept("log", "add", "speed-read", "--set", "feet=10", "--when", "04:30"));
        assertThat(kept("log", "correct", id, "--set", "feet=11.5").out())
                .contains("was ")
                .contains("10 ft")
                .contains("11.5 ft");
        assertThat(list())
                .contains("11.5 ft")
                .contains("04:30")
                .contains("corrected")
                .doesNotContain("10 ft");
        refused(1, List.of("What should"), "log", "correct", id);
        assertThat(kept("log", "withdraw", id).out()).contains("no longer counts");
        assertThat(list()).doesNotContain("11.5 ft").contains("No entries");
        refused(1, List.of("withdrawn"), "log", "correct", id, "--set", "feet=9");
    }

    @Test
    void aCorrectionCanMoveAnEntryToAnotherHole() {
        String id = id(kept("log", "add", "ball-marks-mended", "--hole", "1", "--set", "count=12"));
        assertThat(kept("log", "correct", id, "--hole", "3").out()).contains("now   2026-06-20 05:00  3   ");
    }

    @Test
    void theListIsNarrowedByDayHoleAndKind() {
        kept("log", "add", "ball-marks-mended", "--hole", "1", "--set", "count=12");
        kept("log", "add", "ball-marks-mended", "--hole", "2", "--set", "count=7", "--date", "2026-06-10");
        kept("log", "add", "speed-read", "--set", "feet=10");
        assertThat(list()).contains("12").contains("10 ft").doesNotContain("· 7");
        assertThat(kept("log", "list", "--hole", "1").out()).doesNotContain("10 ft");
        assertThat(kept("log", "list", "--kind", "speed").out()).doesNotContain("ball marks");
        assertThat(kept("log", "list", "--from", "2026-06-10", "--to", "2026-06-11")
                        .out())
                .contains("2026-06-10 05:00")
                .doesNotContain("10 ft");
    }

    @Test
    void everyKindCanBeLookedUp() {
        String kinds = kept("log", "kinds").out();
        for (String kind : PayloadKinds.all().keySet()) {
            if (!List.of("correction", "oddSeen").contains(kind)) {
                String typed = kind.replaceAll("([A-Z])", "-$1").toLowerCase(java.util.Locale.ROOT);
                assertThat(kinds).contains("\n" + typed).as(kind);
            }
        }
        assertThat(kept("log", "kinds", "cup-changed").out())
                .contains("hammer-in")
                .contains("--on P --side L5");
    }

    @Test
    void theLogbookGoesOutAndComesBack() throws IOException {
        kept("log", "add", "cup", "--hole", "all", "--as-planned");
        String id = id(kept("log", "add", "speed-read", "--set", "feet=10"));
        kept("log", "correct", id, "--set", "feet=11");
        Path file = files.resolve("log.jsonl");
        assertThat(kept("log", "export", file).out()).contains("5 entries");
        refused(1, List.of("already"), "log", "export", file);
        String before = list();
        assertThat(kept("log", "import", file, "--yes").out()).contains("No entries kept; 5 were there already");
        kept("restore", shared.resolve("planned.db"));
        assertThat(kept("log", "import", file).out())
                .contains("dry run. 5 entries are new, none was there already. Add --yes");
        assertThat(list()).contains("No entries.");
        assertThat(kept("log", "import", file, "--yes").out()).contains("5 entries kept");
        assertThat(list()).isEqualTo(before);
        Path wrong = files.resolve("wrong.jsonl");
        Files.writeString(wrong, Files.readString(file).replaceFirst("\"feet\":10", "\"feet\":-3"));
        refused(1, List.of("not an entry", "green speed"), "log", "import", wrong);
        Files.writeString(wrong, Files.readString(file).replaceFirst("\"feet\":10", "\"feet\":12"));
        refused(1, List.of("other contents"), "log", "import", wrong);
        Files.writeString(wrong, Files.readString(file).replace("\"course\":\"made\"", "\"course\":\"other\""));
        refused(1, List.of("other", "--course"), "log", "import", wrong);
        refused(1, List.of("no such file"), "log", "import", files.resolve("none"));
    }
}
