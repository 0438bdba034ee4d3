package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.GreenSurvey.Origin;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.green.SurveyPoints;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Outlines and surveys that show only when they are worked with that nothing can be made of them; all invented. */
class UnusableGroundIT {
    private static final int POINTS = 2500;

    @TempDir
    Path files;

    private Path data;
    private InProcess cupwright;

    @BeforeEach
    void aFolder() {
        data = files.resolve("data");
        cupwright = new InProcess(data);
    }

    private static String plain(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /**
     * Three hundred metres along a parallel at 39.75° north: it bends away from the straight edge between its ends by
     * L²·tan φ / 8R = 1.5 mm. A notch that comes down to half a millimetre from the parallel stops short of the edge in
     * degrees, and crosses it in metres.
     */
    @Test
    void anOutlineThatCrossesItselfOnlyInMetresIsRefused() throws IOException {
        Result sound = outline(39.75 + 4.5e-8); // 5 mm
        assertThat(sound.status()).as(sound.err()).isZero();
        Result crossing = outline(39.75 + 4.5e-9); // 0.5 mm
        assertThat(crossing.status()).as(crossing.out()).isEqualTo(1);
        assertThat(plain(crossing.err())).contains("crosses itself", "try:");
    }

    private Result outline(double notch) throws IOException {
        String ring = "[[-27,39.75],[-26.9965,39.75],[-26.9965,39.7502],[-26.99824,39.7502],[-26.99825," + notch
                + "],[-26.99826,39.7502],[-27,39.7502],[-27,39.75]]";
        Path map = Files.writeString(
                files.resolve("map.geojson"),
                "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":"
                        + "{\"golf\":\"green\",\"ref\":\"1\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":["
                        + ring + "]}}]}");
        return cupwright.run("import", "--course", "made", "--outlines", map, "--dry-run");
    }

    /** As an import takes it no more, and an older one may have: a height whose square is beyond all numbers. */
    @Test
    void aStoredSurveyThatNoSurfaceFitsIsToldAndTheGreenIsUsedByItsOutline() throws IOException {
        Result imported = cupwright.run("import", "--course", "made", "--outlines", MadeCourse.outlines(files, 1));
        assertThat(imported.status()).as(imported.err()).isZero();
        Random random = new Random(11);
        double[] east = random.doubles(POINTS, MadeCourse.WEST, MadeCourse.WEST + MadeCourse.SIDE)
                .toArray();
        double[] north = random.doubles(POINTS, MadeCourse.SOUTH, MadeCourse.SOUTH + MadeCourse.SIDE)
                .toArray();
        double[] heights = random.doubles(POINTS, 20, 20.01).toArray();
        heights[POINTS / 2] = 1e300;
        try (SqliteFolder folder = new SqliteFolder(data, InProcess.CLOCK)) {
            GreenSurvey survey = new GreenSurvey(
                    "1", SurveyPoints.scattered(east, north, heights), new Origin(32626, "m", "old.csv"));
            Writes.to(folder, stores -> stores.surveys().add("made", survey));
        }
        Result findings = cupwright.run("findings");
        assertThat(findings.status()).as(findings.err()).isZero();
        assertThat(plain(findings.out()))
                .contains("2,500 points", "heights too far apart", "Look for heights that cannot be");
        for (String command : new String[] {"plan", "assess", "turf"}) {
            Result result = command.equals("assess") ? cupwright.run("assess", "--hole", "1") : cupwright.run(command);
            assertThat(result.status()).as(command + result.err()).isZero();
        }
        Result json = cupwright.run("assess", "--hole", "1", "--json");
        assertThat(json.out()).contains("\"surveySigmaMetres\" : null");
    }
}
