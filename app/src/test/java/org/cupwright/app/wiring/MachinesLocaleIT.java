package org.cupwright.app.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.wiring.RealProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the real program says, draws and prints is the same on every machine: one whose digits are not 0 to 9, one whose
 * small letter of I has no dot, and one on the other side of the world. Only the course's own settings count.
 */
@Tag("long")
class MachinesLocaleIT {
    private static final String DAY = "2026-06-20";

    @TempDir
    Path files;

    private Path data;

    @BeforeEach
    void aCourse() throws IOException, InterruptedException {
        data = files.resolve("data");
        Result imported = RealProcess.cupwright(
                "import", "--course", "made", "--outlines", MadeCourse.outlines(files, 2), "--data", data);
        assertThat(imported.status()).as(imported.err()).isZero();
    }

    private Result on(List<String> machine, Object... arguments) throws IOException, InterruptedException {
        List<String> line = RealProcess.program(machine);
        Stream.of(arguments).map(Object::toString).forEach(line::add);
        line.addAll(List.of("--data", data.toString(), "--date", DAY));
        Result result = RealProcess.run(line);
        assertThat(result.status()).as(machine + result.out() + result.err()).isZero();
        return result;
    }

    /** All that a morning shows, in order. */
    private List<String> morning(List<String> machine) throws IOException, InterruptedException {
        Path drawing = files.resolve("green.svg");
        Path picture = files.resolve("green.png");
        Path paper = files.resolve("paper");
        List<String> shown = new ArrayList<>();
        shown.add(on(machine, "plan").out());
        shown.add(on(machine, "plan", "--json").out());
        shown.add(on(machine, "assess", "--hole", "1", "--svg", drawing, "--png", picture, "--replace")
                .out());
        shown.add(Files.readString(drawing));
        shown.add(RealProcess.hash(picture));
        on(machine, "sheets", "--out", paper);
        try (Stream<Path> sheets = Files.list(paper)) {
            for (Path sheet : sheets.sorted().toList()) {
                shown.add(org.cupwright.app.sheets.PaperText.words(Files.readAllBytes(sheet)));
            }
        }
        shown.add(on(machine, "policy").out());
        shown.add(on(machine, "turf").out());
        return shown;
    }

    @Test
    void everyMachineShowsTheSame() throws Exception {
        List<String> here = morning(List.of("-Duser.language=en", "-Duser.country=GB", "-Duser.timezone=UTC"));
        assertThat(here.get(0)).contains("front right · 8 on", "green speed 10 ft");
        assertThat(morning(List.of("-Duser.language=ar", "-Duser.country=EG", "-Duser.timezone=Pacific/Chatham")))
                .isEqualTo(here);
        assertThat(morning(List.of("-Duser.language=tr", "-Duser.country=TR", "-Duser.timezone=America/Adak")))
                .isEqualTo(here);
    }
}
