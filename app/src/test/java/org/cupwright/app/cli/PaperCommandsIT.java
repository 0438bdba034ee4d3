package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cupwright.app.cli.InProcess.Result;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PaperCommandsIT {
    @TempDir
    Path files;

    private InProcess cupwright;
    private Path out;

    @BeforeEach
    void importTwoGreens() throws IOException {
        cupwright = new InProcess(files.resolve("data"));
        out = files.resolve("out");
        Result result = cupwright.run(
                "import",
                "--course",
                "made",
                "--outlines",
                MadeCourse.outlines(files, 2),
                "--elevation",
                MadeCourse.survey(files, 1, 1),
                "--crs",
                "EPSG:32626");
        assertThat(result.status()).as(result.err()).isZero();
    }

    @Test
    void withoutAPlanThereIsNoPaper() {
        Result result = cupwright.run("sheets", "--out", out);
        assertThat(result.status()).isEqualTo(1);
        assertThat(result.err()).contains("no plan").contains("cupwright plan --date 2026-06-20");
        assertThat(out).doesNotExist();
    }

    @Test
    void theSameDayGivesTheSameFilesAndNothingOnStandardError() throws IOException {
        assertThat(cupwright.run("plan").status()).isZero();
        Result first = cupwright.run("sheets", "--out", out);
        assertThat(first.status()).as(first.err()).isZero();
        assertThat(first.err()).isEmpty();
        byte[] sheet = Files.readAllBytes(out.resolve("hole-locations.pdf"));
        byte[] card = Files.readAllBytes(out.resolve("changers-card.pdf"));
        assertThat(cupwright.run("sheets", "--out", out).status()).isZero();
        assertThat(Files.readAllBytes(out.resolve("hole-locations.pdf"))).isEqualTo(sheet);
        assertThat(Files.readAllBytes(out.resolve("changers-card.pdf"))).isEqualTo(card);
        assertThat(out.toFile().list()).hasSize(2);
    }

    @Test
    void aFileInTheFoldersPlaceIsRefused() throws IOException {
        assertThat(cupwright.run("plan").status()).isZero();
        Files.writeString(out, "kept");
        Result result = cupwright.run("sheets", "--out", out);
        assertThat(result.status()).isEqualTo(1);
        assertThat(result.err()).contains("where the folder should be").contains(out.toString());
        assertThat(out).hasContent("kept");
    }

    @Test
    void aGreenIsDrawnInAllForms() throws IOException {
        Path svg = files.resolve("green.svg");
        Path png = files.resolve("green.png");
        Path geoJson = files.resolve("green.geojson");
        Result plain = cupwright.run("assess", "--hole", "1", "--json");
        Result drawn =
                cupwright.run("assess", "--hole", "1", "--json", "--svg", svg, "--png", png, "--geojson", geoJson);
        assertThat(drawn.status()).as(drawn.err()).isZero();
        assertThat(drawn.out()).isEqualTo(plain.out());
        assertThat(svg).content().contains("class=\"contour\"").doesNotContain("class=\"spot\"");
        assertThat(Files.readAllBytes(png)).startsWith(0x89, 'P', 'N', 'G');
        assertThat(geoJson).content().contains("FeatureCollection").contains("\"outline\"");
        byte[] first = Files.readAllBytes(png);
        assertThat(cupwright.run("assess", "--hole", "1", "--png", png).status())
                .isEqualTo(1);
        assertThat(cupwright
                        .run("assess", "--hole", "1", "--png", png, "--replace")
                        .status())
                .isZero();
        assertThat(Files.readAllBytes(png)).isEqualTo(first);
    }

    @Test
    void theSpotAskedAboutIsMarkedAndAGreenWithoutSurveyHasNoContourLines() throws IOException {
        Path svg = files.resolve("green.svg");
        Result result = cupwright.run("assess", "--hole", "2", "--on", "12", "--side", "R9", "--svg", svg);
        assertThat(result.status()).as(result.err()).isZero();
        assertThat(svg).content().contains("class=\"spot\"").doesNotContain("class=\"contour");
    }

    @Test
    void wrongPlacesAreToldAndNothingIsWritten() throws IOException {
        Path svg = files.resolve("green.svg");
        assertThat(cupwright.run("assess", "--svg", svg).status()).as("no hole").isEqualTo(2);
        assertThat(cupwright.run("assess", "--hole", "9", "--svg", svg).status())
                .isEqualTo(1);
        assertThat(cupwright
                        .run("assess", "--hole", "1", "--svg", svg, "--png", svg)
                        .status())
                .as("one file for two")
                .isEqualTo(2);
        Path nowhere = files.resolve("nowhere").resolve("green.png");
        Result missing = cupwright.run("assess", "--hole", "1", "--svg", svg, "--png", nowhere);
        assertThat(missing.status()).isEqualTo(1);
        assertThat(missing.err()).contains("folder of the file is not there").contains("try:");
        assertThat(missing.out()).isEmpty();
        Result folder = cupwright.run("assess", "--hole", "1", "--geojson", files);
        assertThat(folder.status()).isEqualTo(1);
        assertThat(svg).doesNotExist();
    }
}
