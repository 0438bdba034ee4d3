package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What stands on the paper of the invented course is what its plan says, number by number. */
class PaperFromPlanIT {
    private static final Pattern ROW = Pattern.compile("^(\\d+) ((?:front|middle|back)[a-z ]*) ([\\d½]+) on · ([\\d½]+)"
            + " from (left|right)(?: \\(([\\d½]+) from back\\))? ([\\d½]+) ([FMB]) (\\w+)$");

    @TempDir
    static Path files;

    private static InProcess cupwright;
    private static JsonNode holes;

    /** One row of paper, as the plan names things. */
    private record Row(String hole, String third, double on, String side, double sidePaces) {}

    @BeforeAll
    static void planADay() throws IOException {
        Path data = files.resolve("data");
        DemoFolder.copyTo(data);
        cupwright = new InProcess(data);
        Result plan = cupwright.run("plan", "--date", DemoCourse.TODAY, "--json");
        assertThat(plan.status()).as(plan.err()).isZero();
        holes = JsonMapper.shared().readTree(plan.out()).path("days").path(0).path("holes");
    }

    @Test
    void theSheetsNumbersAreThePlans() throws IOException {
        for (String paper : Suite.ofEach("sizes of paper", List.of(List.of("a4", "letter")))) {
            assertThat(cupwright
                            .run("policy", "paper.size=" + paper, "--date", DemoCourse.TODAY)
                            .status())
                    .isZero();
            Path out = files.resolve(paper);
            Result written = cupwright.run("sheets", "--out", out, "--date", DemoCourse.TODAY, "--speed", "8");
            assertThat(written.status()).as(written.err()).isZero();
            assertThat(written.out()).contains("hole-locations.pdf").contains("changers-card.pdf");
            List<Row> rows = rows(out.resolve("hole-locations.pdf"));
            assertThat(rows).isEqualTo(planned());
            assertThat(text(out.resolve("hole-locations.pdf")))
                    .contains("green speed 10 ft: the season's figure, not read");
            cardHolds(planned(), text(out.resolve("changers-card.pdf")));
        }
    }

    private static void cardHolds(List<Row> planned, String card) {
        for (Row row : planned) {
            String paces = halves(row.on()) + " on · " + halves(row.sidePaces()) + " from "
                    + (row.side().equals("L") ? "left" : "right");
            assertThat(card).contains(paces);
        }
    }

    private static String halves(double paces) {
        String whole = paces < 1 ? "" : Integer.toString((int) paces);
        return paces == Math.rint(paces) ? Integer.toString((int) paces) : whole + "½";
    }

    private static List<Row> planned() {
        List<Row> rows = new ArrayList<>();
        for (JsonNode hole : holes) {
            JsonNode position = hole.path("position");
            rows.add(new Row(
                    hole.path("hole").asString(),
                    position.path("third").asString(),
                    position.path("onPaces").asDouble(),
                    position.path("side").asString(),
                    position.path("sidePaces").asDouble()));
        }
        assertThat(rows).hasSize(18);
        return rows;
    }

    private static List<Row> rows(Path pdf) throws IOException {
        List<Row> rows = new ArrayList<>();
        for (String line : text(pdf)
                .lines()
                .map(text -> text.strip().replaceAll("\\s+", " "))
                .toList()) {
            Matcher row = ROW.matcher(line);
            if (row.matches()) {
                String third = row.group(2).split(" ", -1)[0];
                String letter = third.substring(0, 1).toUpperCase(java.util.Locale.ROOT);
                assertThat(row.group(8)).as(line).isEqualTo(letter);
                double depth = number(row.group(7));
                if (row.group(6) == null) {
                    assertThat(depth).as(line).isGreaterThanOrEqualTo(2 * number(row.group(3)));
                } else {
                    assertThat(depth).as(line).isEqualTo(number(row.group(3)) + number(row.group(6)));
                }
                String side = row.group(5).equals("left") ? "L" : "R";
                rows.add(new Row(row.group(1), third, number(row.group(3)), side, number(row.group(4))));
            }
        }
        return rows;
    }

    private static double number(String halves) {
        boolean half = halves.endsWith("½");
        String whole = half ? halves.substring(0, halves.length() - 1) : halves;
        return (whole.isEmpty() ? 0 : Integer.parseInt(whole)) + (half ? 0.5 : 0);
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }
}
