package org.cupwright.app.office.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.desk.ground.DrawGround;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.office.MapRead;
import org.cupwright.app.office.frame.Board;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;

/** The page on which edges and hazards are drawn. */
class DrawPageTest {
    private static final double PACE_METRES = 0.914;

    /** Whoever counts in paces has a scale of five of them. */
    private static final double BAR_METRES = 5 * PACE_METRES;

    @TempDir
    private Path path;

    private final DrawController pages = new DrawController();
    private SqliteFolder folder;

    @BeforeEach
    void make() throws IOException {
        folder = new SqliteFolder(MadeVisit.course(path.resolve("data")), InProcess.CLOCK);
    }

    private Visit visit(Role role) {
        return MadeVisit.to(folder, role);
    }

    private DrawView.Page page(Role role, String draw) {
        return (DrawView.Page) pages.ground(visit(role), "1", draw).getModel().get("page");
    }

    private void play(Heading heading) {
        folder.write(stores -> {
            var course = stores.courses().find(MadeVisit.COURSE).orElseThrow();
            stores.courses()
                    .add(course.withHoles(course.holes().stream()
                            .map(hole -> hole.withLineOfPlay(LineOfPlay.towards(hole.green(), heading)))
                            .toList()));
            return stores;
        });
    }

    /**
     * A corner clicked on the map lies on the ground where it is drawn, however play runs: what a click becomes is
     * worked out here as the page's script does it, from the page alone, and held against the drawing's own scale, one
     * corner of its edge and the line of play upwards.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 90, 137, 270})
    void aCornerLiesWhereItWasClicked(double degrees) {
        play(Heading.ofDegrees(degrees));
        Board map = page(Role.SUPERINTENDENT, "bunker").map();
        double unitsPerMetre = MapRead.bar(map.picture()) / BAR_METRES;
        List<Double> edge = MapRead.numbers(MapRead.group(map.picture(), "edge"));
        double[][] steps = {{-6, 4}, {-6, 8}, {-9, 8}, {-9, 4}}; // metres east and north of the edge's first corner
        StringBuilder corners = new StringBuilder();
        double play = Math.toRadians(degrees);
        for (double[] step : steps) {
            double ahead = step[0] * Math.sin(play) + step[1] * Math.cos(play);
            double right = step[0] * Math.cos(play) - step[1] * Math.sin(play);
            double x = edge.get(0) + right * unitsPerMetre;
            double y = edge.get(1) - ahead * unitsPerMetre;
            double toRight = (x - map.zeroX()) / map.pace();
            double on = (map.zeroY() - y) / map.pace();
            corners.append(String.format(Locale.ROOT, "%.2f %s%.2f%n", on, toRight < 0 ? "L" : "R", Math.abs(toRight)));
        }
        keep("bunker", corners.toString());
        var box = hole().hazards().get(0).area().getEnvelopeInternal();
        double west = hole().green().polygon().getCoordinates()[0].x;
        double south = hole().green().polygon().getCoordinates()[0].y;
        assertThat(box.getMinX()).isCloseTo(west - 9, within(0.03));
        assertThat(box.getMaxX()).isCloseTo(west - 6, within(0.03));
        assertThat(box.getMinY()).isCloseTo(south + 4, within(0.03));
        assertThat(box.getMaxY()).isCloseTo(south + 8, within(0.03));
    }

    private Hole hole() {
        return new DrawGround(visit(Role.READER).session()).show("1").hole();
    }

    private ModelAndView keep(String draw, String corners) {
        long version = page(Role.SUPERINTENDENT, "").version();
        return pages.keep(visit(Role.SUPERINTENDENT), "1", draw, corners, version, new RedirectAttributesModelMap());
    }

    @Test
    void aPaceOfTheMapIsAPaceOfTheGround() {
        Board map = page(Role.READER, "").map();
        assertThat(map.pace()).isCloseTo(PACE_METRES * MapRead.bar(map.picture()) / BAR_METRES, within(0.01));
    }

    @Test
    void whatIsThereIsToldWithItsNumber_andDrawnByThoseAloneWhoMay() {
        DrawView.Page before = page(Role.SUPERINTENDENT, "");
        assertThat(before.edge()).isEqualTo("Green: 484 m², 24 paces long, 24 wide.");
        assertThat(before.hazards()).isEmpty();
        assertThat(before.form()).isNull();
        keep("water", "4 L15\n8 L15\n8 L19\n4 L19");
        DrawView.Page after = page(Role.READER, "1");
        assertThat(after.hazards().get(0).says()).startsWith("1 · Water, 13 m²");
        assertThat(after.map().picture().split("hazard-number")[1]).contains(">1</text>");
        assertThat(after.mayDraw()).isFalse();
        assertThat(after.form()).isNull();
        DrawView.Form moved = page(Role.SUPERINTENDENT, "1").form();
        assertThat(moved.corners().lines()).containsExactly("4.00 L15.00", "8.00 L15.00", "8.00 L19.00", "4.00 L19.00");
        assertThat(page(Role.SUPERINTENDENT, "edge").form().corners().lines()).hasSize(4);
        assertThat(page(Role.SUPERINTENDENT, "7").form()).isNull();
    }

    @Test
    void whatChangesIsToldBeforeItIsKept() {
        long version = page(Role.SUPERINTENDENT, "").version();
        String corners = "4 L15\n8 L15\n8 L19\n4 L19";
        ModelAndView looked = pages.look(visit(Role.SUPERINTENDENT), "1", "bunker", corners, version);
        DrawView.Change change = (DrawView.Change) looked.getModel().get("change");
        assertThat(change.says().get(0)).startsWith("A new bunker: 13 m², ");
        assertThat(change.plans()).isEmpty();
        DrawView.Page page = (DrawView.Page) looked.getModel().get("page");
        assertThat(page.form().corners()).isEqualTo(corners);
        assertThat(page.map().ring()).contains("class=\"ring\"");
        assertThat(page.hazards()).isEmpty();
    }

    /** What was drawn stays in its field, unless it was drawn upon what is no longer there. */
    @Test
    void whatIsWrongIsToldWithWhatWasDrawn() {
        String crossing = "4 L15\n8 L19\n8 L15\n4 L19";
        ModelAndView wrong = keep("bunker", crossing);
        assertThat(wrong.getStatus().value()).isEqualTo(422);
        assertThat(((DrawView.Page) wrong.getModel().get("page")).form().corners())
                .isEqualTo(crossing);
        ModelAndView old = pages.look(visit(Role.SUPERINTENDENT), "1", "bunker", "4 L15\n8 L15\n8 L19", 0);
        assertThat(old.getStatus().value()).isEqualTo(409);
        assertThat(((DrawView.Page) old.getModel().get("page")).form()).isNull();
        assertThat(keep("away-1", "").getStatus().value()).isEqualTo(422);
        assertThat(keep("moat", "").getStatus().value()).isEqualTo(422);
    }
}
