package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.List;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.sheets.PaperPaths.Drawn;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.ContourLines;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The drawings on the card, read back from the PDF's own lines and held against the course. */
class CardDrawingTest {
    private static final int INK = 0x25221d;
    private static final int ACCENT = 0xa4431d;
    private static final double EDGE_MILLIMETRES = 0.374;
    private static final double CONTOUR_MILLIMETRES = 0.099;
    private static final double FIFTH_MILLIMETRES = 0.209;
    private static final double WIDTH_WITHIN_MILLIMETRES = 0.004;

    private final Texts texts =
            Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 0.914).orElseThrow();

    private List<Drawn> paths(PaperSize paper) throws IOException {
        return PaperPaths.of(new ChangersCard(texts).pdf(MadeDay.on(paper)));
    }

    private static List<Drawn> lines(List<Drawn> paths, double widthMillimetres) {
        return paths.stream()
                .filter(path -> path.stroked() && path.rgb() == INK)
                .filter(path -> Math.abs(path.widthMillimetres() - widthMillimetres) < WIDTH_WITHIN_MILLIMETRES)
                .toList();
    }

    @ParameterizedTest
    @EnumSource
    void everySpotIsDrawnWhereItIsOnTheGround(PaperSize paper) throws IOException {
        List<Drawn> paths = paths(paper);
        List<Drawn> edges = lines(paths, EDGE_MILLIMETRES);
        List<Drawn> spots = paths.stream()
                .filter(path -> !path.stroked() && path.rgb() == ACCENT)
                .toList();
        List<Hole> holes = MadeDay.DEMO.course().holes();
        assertThat(edges).hasSameSizeAs(holes);
        assertThat(spots).hasSameSizeAs(holes);

        for (int i = 0; i < holes.size(); i++) {
            OutlineFit fit = OutlineFit.of(holes.get(i).green(), edges.get(i).corners());
            assertThat(fit.worstMillimetres()).isLessThan(0.05);
            Point2D wanted = fit.paper(MadeDay.spot(holes.get(i)));
            assertThat(spots.get(i).middle().distance(wanted))
                    .as("hole %s, mm from its place", holes.get(i).id())
                    .isLessThan(0.3);
        }
    }

    /**
     * Heights are good to 3 mm where lines go straight through cells of a quarter metre, on the steepest bank of the
     * course.
     */
    @ParameterizedTest
    @EnumSource
    void everyContourLineRunsAtItsHeight(PaperSize paper) throws IOException {
        List<Drawn> paths = paths(paper);
        List<Drawn> edges = lines(paths, EDGE_MILLIMETRES);
        List<Hole> holes = MadeDay.DEMO.course().holes();
        int corners = 0;
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            List<Drawn> contours = of(edges.get(i), lines(paths, CONTOUR_MILLIMETRES));
            List<Drawn> fifths = of(edges.get(i), lines(paths, FIFTH_MILLIMETRES));
            if (MadeDay.DEMO.survey(hole.id()).isEmpty()) {
                assertThat(contours).as("hole %s has no survey", hole.id()).isEmpty();
                continue;
            }
            assertThat(contours).as("hole %s", hole.id()).hasSizeGreaterThan(3);
            OutlineFit fit = OutlineFit.of(hole.green(), edges.get(i).corners());
            Surface surface = MadeDay.DEMO.trueSurface(hole.id());
            corners += atHeights(contours, fit, surface, ContourLines.HEIGHT_STEP_METRES);
            corners += atHeights(fifths, fit, surface, 5 * ContourLines.HEIGHT_STEP_METRES);
        }
        System.out.println("suite CardDrawingTest: " + corners + " corners of contour lines on " + paper);
        assertThat(corners).isGreaterThan(2000);
    }

    /** Lines of the same page that lie within an edge's box. */
    private static List<Drawn> of(Drawn edge, List<Drawn> lines) {
        return lines.stream()
                .filter(line -> line.page() == edge.page())
                .filter(line -> edge.shape().getBounds2D().contains(line.middle()))
                .toList();
    }

    private static int atHeights(List<Drawn> lines, OutlineFit fit, Surface surface, double step) {
        Jet jet = new Jet();
        int corners = 0;
        for (Drawn line : lines) {
            for (Point2D corner : line.corners()) {
                MapPoint at = fit.ground(corner);
                surface.at(at.east(), at.north(), jet);
                assertThat(Math.abs(jet.z - step * Math.rint(jet.z / step)))
                        .as("at %s", at)
                        .isLessThan(0.003);
                corners++;
            }
        }
        return corners;
    }
}
