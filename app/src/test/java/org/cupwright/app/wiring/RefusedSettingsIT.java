package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.wiring.RealProcess.Result;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Values that no setting takes are refused with a sentence, and the setting stays as it was. */
class RefusedSettingsIT {
    @TempDir
    Path files;

    private Path data;

    @BeforeEach
    void aCourse() throws IOException, InterruptedException {
        data = files.resolve("data");
        Result imported = RealProcess.typed(
                "import", "--course", "made", "--outlines", MadeCourse.outlines(files, 1), "--data", data);
        assertThat(imported.status()).as(imported.err()).isZero();
    }

    /** In a full check by way of a shell, so that signs beyond ASCII arrive whatever the machine writes in. */
    private Result policy(String... settings) throws IOException, InterruptedException {
        if (!Suite.full()) {
            return RealProcess.typed(Stream.concat(Stream.of("policy", "--data", data.toString()), Stream.of(settings))
                    .toArray());
        }
        String line = Stream.concat(
                        RealProcess.program(List.of()).stream(),
                        Stream.concat(Stream.of("policy", "--data", data.toString()), Stream.of(settings)))
                .map(word -> "'" + word + "'")
                .collect(Collectors.joining(" "));
        Path script = Files.writeString(files.resolve("policy.sh"), "LC_ALL=C.UTF-8\nexport LC_ALL\n" + line + "\n");
        return RealProcess.run(List.of("sh", script.toString()));
    }

    private void refused(String sentence, String key, String... values) throws IOException, InterruptedException {
        String before = policy(key).out();
        for (String value : values) {
            Result result = policy(key + "=" + value);
            assertThat(result.status()).as(key + "=" + value + result.out()).isEqualTo(1);
            assertThat(result.err().replaceAll("\\s+", " "))
                    .as(key + "=" + value)
                    .contains("try:", sentence);
            assertThat(policy(key).out()).as(key + "=" + value).isEqualTo(before);
        }
    }

    private void taken(String... settings) throws IOException, InterruptedException {
        Result result = policy(settings);
        assertThat(result.status()).as(List.of(settings) + result.err()).isZero();
    }

    @Test
    void numbersWithAMinusBeforeNothingAndOtherScriptsDigits() throws Exception {
        refused("0 to 60", "rotation.sharedGreenLeastMetres", "-0", "−0", "٥", "５", "५", "1٫5", "NaN");
        refused("whole number, 0 to 18", "rotation.leftRightApart", "-0", "−2", "٥", "５", "५", "2.0");
        taken("rotation.sharedGreenLeastMetres=0", "rotation.leftRightApart=+2");
    }

    @Test
    void flagsAndTelephonesThatAreTooLongOrHideOrTurnSomething() throws Exception {
        refused(
                "at most 24 characters",
                "paper.flagFront",
                "x".repeat(25),
                "red\u202Eder",
                "red\u0007",
                "red\u2028two");
        refused(
                "none hidden",
                "paper.ring",
                "9".repeat(161),
                "0\u20661\u2069",
                "\u200F0123",
                "0123\u001b[31m",
                "0\u009b1");
        taken("paper.flagFront=" + "x".repeat(24), "paper.ring=" + "9".repeat(160));
        taken("paper.flagMiddle=Grün – ½", "paper.ring=María, +00 (0)000 000"); // invented
    }

    @Test
    void whatIsNoAddressAndWhatSomebodyCouldGuess() throws Exception {
        refused(
                "with a name and at most a port",
                "paper.officeAddress",
                "greens.example.org",
                "javascript:alert(1)",
                "https://greens.example.org/office",
                "https://greens.example.org?a=b",
                "https://a@example.org",
                "https://" + "a".repeat(53));
        taken("paper.officeAddress=https://greens.example.org:8443/");
        refused("20 to 40 letters", "paper.sheetLink", "today", "k7m2p9qrs4tuvwx3yz5", "../../../../../../../../etc");
        taken("paper.sheetLink=k7m2p9qrs4tuvwx3yz5a");
        taken("paper.sheetLink=", "paper.officeAddress=");
    }

    @Test
    void noThirdAtAll() throws Exception {
        refused("one or more of front middle back", "rotation.thirdsAllowed", "", "  ");
        refused("any of front, middle, back", "rotation.thirdsAllowed", "front front", "left");
        taken("rotation.thirdsAllowed=back front");
    }
}
