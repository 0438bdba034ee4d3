package org.cupwright.app.office.green;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.office.MapRead;
import org.cupwright.app.session.Role;
import org.cupwright.app.visit.Visit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The spot that is clicked on the drawing is the one that is judged. Where it is on the drawing is worked out here from
 * what is drawn: the length of the scale's bar, one corner of the green's edge, and the line of play upwards.
 */
class ClickedSpotTest {
    /** Whoever counts in paces has a scale of five of them. */
    private static final double BAR_METRES = 5 * 0.914;

    @TempDir
    private Path folder;

    private MadeGreen made;
    private Visit visit;

    @BeforeEach
    void make() {
        made = new MadeGreen(folder.resolve("data"));
        visit = made.visit(Role.SUPERINTENDENT);
    }

    @AfterEach
    void close() {
        made.close();
    }

    @Test
    void isTheOneThatIsJudged() {
        String map = made.page(visit, "1").map();
        double unitsPerMetre = MapRead.bar(map) / BAR_METRES;
        double[] corner = MapRead.numbers(MapRead.group(map, "edge")).subList(0, 2).stream()
                .mapToDouble(Double::doubleValue)
                .toArray();
        double[][] steps = {{6, 5}, {18, 8}, {9, 24}, {20, 20}};
        for (double[] step : steps) {
            double play = Math.toRadians(MadeGreen.PLAY.degrees());
            double ahead = step[0] * Math.sin(play) + step[1] * Math.cos(play);
            double right = step[0] * Math.cos(play) - step[1] * Math.sin(play);
            double x = corner[0] + right * unitsPerMetre;
            double y = corner[1] - ahead * unitsPerMetre;
            String at = made.part(visit, "1", MadeGreen.clicked(x, y))
                    .asked()
                    .orElseThrow()
                    .at();
            List<Double> judged = MapRead.numbers(at);
            assertThat(judged.get(0)).isCloseTo(MadeGreen.EAST + step[0], within(0.02));
            assertThat(judged.get(1)).isCloseTo(MadeGreen.NORTH + step[1], within(0.02));
        }
    }

    /** The edge begins at the first corner that is kept: what the test above rests on. */
    @Test
    void theEdgeIsDrawnFromItsFirstCornerOn() {
        List<Double> edge = MapRead.numbers(MapRead.group(made.page(visit, "1").map(), "edge"));
        double unitsPerMetre = MapRead.bar(made.page(visit, "1").map()) / BAR_METRES;
        double firstSide = Math.hypot(edge.get(2) - edge.get(0), edge.get(3) - edge.get(1));
        double secondSide = Math.hypot(edge.get(4) - edge.get(2), edge.get(5) - edge.get(3));
        assertThat(firstSide / unitsPerMetre).isCloseTo(24, within(0.02));
        assertThat(secondSide / unitsPerMetre).isCloseTo(26, within(0.02));
    }

    /** A telephone shows the strip below the map too small to read: the page says the same in words. */
    @Test
    void whatSignsMeanIsSaidBesideTheMapAsWell() {
        GreenView.Page page = made.page(visit, "1");
        String strip = MapRead.group(page.map(), "key");
        assertThat(page.signs())
                .hasSizeGreaterThan(2)
                .allSatisfy(sign -> assertThat(strip).contains(sign));
    }

    @Test
    void isDrawnWhereItWasClicked() {
        SpotView.Part part = made.part(visit, "1", MadeGreen.clicked(480, 510));
        List<Double> ring = MapRead.numbers(MapRead.group(part.marks(), "asked").split("<path", 2)[0]);
        assertThat(ring.get(0)).isCloseTo(480, within(0.5));
        assertThat(ring.get(1)).isCloseTo(510, within(0.5));
    }

    @Test
    void offTheGreenIsSaidToBeOff() {
        SpotView.Part part = made.part(visit, "1", MadeGreen.clicked(3, 3));
        assertThat(part.problem().orElseThrow().what()).startsWith("The place is not on the green of hole 1; it is");
        assertThat(part.problem().orElseThrow().tryThis()).isEqualTo("Ask about a place within the thick line.");
        assertThat(part.asked()).isEmpty();
        assertThat(part.heard()).isEqualTo(part.problem().orElseThrow().what());
    }
}
