package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.sheets.DayPaperFiles;
import org.cupwright.app.sheets.PaperText;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who and by when on the card of an invented course of three; where nobody said anything, the card is as it was. */
class RoundOnCardIT {
    @TempDir
    private Path files;

    private InProcess club;
    private int printed;

    @BeforeEach
    void plan() throws IOException {
        club = new InProcess(files.resolve("data"));
        run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 3));
        run("plan");
    }

    private void run(Object... command) {
        Result result = club.run(command);
        assertThat(result.status()).as(result.err()).isZero();
    }

    private byte[] paper(String file) throws IOException {
        Path out = files.resolve("paper" + printed++);
        run("sheets", "--out", out);
        return Files.readAllBytes(out.resolve(file));
    }

    @Test
    void theCardSaysWhoAndByWhenInTheOrderOfTheRound() throws IOException {
        run("round", "--start", "twoTees", "--first", "7:00", "--person", "Robin");
        assertThat(PaperText.words(paper(DayPaperFiles.CARD)))
                .contains("From two tees, first groups at 07:00.")
                .containsSubsequence("1 ", "by 06:50", "3 ", "by 06:50", "2 ", "by 07:04");
        run("round", "--give", "2-3=Noor", "--person", "Robin");
        assertThat(PaperText.words(paper(DayPaperFiles.CARD)))
                .contains("Noor: 2, 3. Nobody has 1.")
                .containsSubsequence("Noor · by 06:50", "Noor · by 07:04", "nobody · by 06:50");
    }

    @Test
    void withoutAWordOfItPaperIsTheSame() throws IOException {
        byte[] card = paper(DayPaperFiles.CARD);
        byte[] sheet = paper(DayPaperFiles.SHEET);
        run("round", "--start", "shotgun", "--first", "9:00", "--give", "1=Ash", "--person", "Robin");
        assertThat(paper(DayPaperFiles.CARD)).isNotEqualTo(card);
        assertThat(paper(DayPaperFiles.SHEET))
                .as("the sheet is for those who play")
                .isEqualTo(sheet);
        run("round", "--usual", "--person", "Robin");
        assertThat(paper(DayPaperFiles.CARD)).isEqualTo(card);
    }
}
