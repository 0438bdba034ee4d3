package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.app.maps.SmallMap.EM;
import static org.cupwright.app.maps.SmallMap.MAP;
import static org.cupwright.app.maps.SmallMap.OUTLINE;
import static org.cupwright.app.maps.SmallMap.card;
import static org.cupwright.app.maps.SmallMap.circle;
import static org.cupwright.app.maps.SmallMap.groups;
import static org.cupwright.app.maps.SmallMap.hole;
import static org.cupwright.app.maps.SmallMap.number;
import static org.cupwright.app.maps.SmallMap.path;
import static org.cupwright.app.maps.SmallMap.plain;

import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.texts.RoundLength;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** The outline, the corners and what lies at single points, worked out by hand from {@link SmallMap}'s frame. */
class MapByHandTest {
    @Test
    void theEdgeIsDrawnRoundTheGreen() {
        String svg = card(hole(List.of(), List.of()));
        assertThat(svg)
                .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"400\" height=\"400\"")
                .contains("<title>Green 7</title>")
                .contains("<g class=\"edge\" fill=\"none\" stroke=\"#25221d\" stroke-width=\"3.740\" ");
        assertThat(groups(svg, "edge"))
                .containsExactly(
                        path("M100.000 300.000L300.000 300.000L300.000 100.000L100.000 100.000" + "L100.000 300.000Z"));
    }

    @Test
    void northStandsInTheUpperRightCornerAndTheScaleInTheLower() {
        String svg = card(hole(List.of(), List.of()));
        // the needle's middle is 1.5 + 0.4 letters from either edge, its tip 0.35 above; 0.35 · 21 = 7.35
        assertThat(svg).contains("<g class=\"north\" transform=\"rotate(0.000 360.100 39.900)\">");
        assertThat(groups(svg, "needle"))
                .containsExactly(path("M360.100 71.400V32.550l-7.350 11.760M360.100 32.550l7.350 11.760"));
        assertThat(groups(svg, "letter"))
                .containsExactly("<text x=\"360.100\" y=\"26.250\" font-size=\"21.000\" font-weight=\"600\""
                        + " text-anchor=\"middle\">N</text>");
        // five metres are 100 units
        assertThat(groups(svg, "scale")).containsExactly(path("M289.500 383.200v8.400H389.500v-8.400"));
        assertThat(groups(svg, "scale-length"))
                .containsExactly(
                        "<text x=\"339.500\" y=\"381.100\" font-size=\"21.000\" text-anchor=\"middle\">5 m</text>");
        assertThat(groups(svg, "play")).isEmpty();
    }

    /** A short bar in the corner of a small drawing: its words are longer, and none is cut off. */
    @Test
    void whatTheScaleSaysStaysWithinTheDrawing() {
        String svg = new CourseMap("Green 7")
                .green(hole(List.of(), List.of()), 200, 200, new RoundLength(1, "1 m, a long stride"));
        String says = groups(svg, "scale-length").get(0);
        double size = attribute(says, "font-size");
        double end = attribute(says, "x") + OpenSans.REGULAR.width("1 m, a long stride", size) / 2;
        assertThat(end).isCloseTo(200 - 0.2 * size, within(0.01));
    }

    private static double attribute(String element, String name) {
        return Double.parseDouble(element.replaceAll(".* " + name + "=\"([^\"]*)\".*", "$1"));
    }

    @Test
    void playRunsUpAndTurnsNorth() {
        Hole eastwards = hole(List.of(), List.of()).withLineOfPlay(LineOfPlay.towards(OUTLINE, Heading.ofDegrees(90)));
        String svg = card(eastwards);
        assertThat(svg).contains("<g class=\"north\" transform=\"rotate(-90.000 360.100 39.900)\">");
        assertThat(groups(svg, "play"))
                .containsExactly(path("M200.000 393.700v-39.900m-9.450 12.600l9.450 -12.600l9.450 12.600"));
        // east is up: the south-western corner lies lower right
        assertThat(groups(svg, "edge").get(0)).startsWith("<path d=\"M300.000 300.000L300.000 100.000L100.000 100.000");
        MapFrame frame = new MapFrame(eastwards, 400, 400);
        assertThat(frame.ground(300, 300).distanceMetres(new MapPoint(0, 0))).isLessThan(1e-9);
        assertThat(frame.ground(250, 100).distanceMetres(new MapPoint(10, 2.5))).isLessThan(1e-9);
        assertThat(frame.x(new MapPoint(10, 2.5))).isCloseTo(250, within(1e-9));
    }

    @Test
    void aDrawingThatIsWiderOrHigherHasTheGreenInItsMiddle() {
        assertThat(groups(MAP.card(plain(), 600, 400), "edge").get(0))
                .startsWith("<path d=\"M200.000 300.000L400.000 300.000");
        assertThat(groups(MAP.card(plain(), 200, 400), "edge").get(0))
                .startsWith("<path d=\"M50.000 250.000L150.000 250.000");
    }

    @Test
    void hazardsAndMarksAreDrawnAsTheKeySays() {
        Polygon area = Shapes.area(11, 0, 13, 0, 13, 2, 11, 2);
        List<Hazard> hazards = Stream.of(Hazard.Kind.values())
                .map(kind -> new Hazard(kind, area))
                .toList();
        String svg = card(hole(hazards, List.of(new Mark(Mark.Kind.SPRINKLER_HEAD, "head", new MapPoint(5, 7)))));
        String drawn = path("M320.000 300.000L360.000 300.000L360.000 260.000L320.000 260.000L320.000 300.000Z");
        assertThat(groups(svg, "hazard")).containsExactly(drawn, drawn, drawn);
        assertThat(svg)
                .contains("stroke-width=\"2.200\" stroke-linejoin=\"round\" stroke-linecap=\"round\""
                        + " stroke-dasharray=\"0.1 5.250\">")
                .contains("stroke-dasharray=\"16.800 10.500\">");
        assertThat(groups(svg, "mark")).containsExactly(path("M191.600 160.000h16.800M200.000 151.600v16.800"));
    }

    @Test
    void theSpotIsADiscInARing() {
        String svg = card(plain().withSpots(List.of(new MapPoint(5, 2))));
        assertThat(groups(svg, "spot-ground")).containsExactly(circle(200, 260, 21));
        assertThat(groups(svg, "spot-ring")).containsExactly(circle(200, 260, 21));
        assertThat(groups(svg, "spot")).containsExactly(circle(200, 260, 8.82));
    }

    private static GreenDrawing with(OldHoleOnMap... holes) {
        return MadeDrawing.used(plain(), at -> false, at -> false, holes);
    }

    @Test
    void anOldHoleIsARingWithItsAgeWhereThereIsRoom() {
        OldHoleOnMap old = new OldHoleOnMap(new MapPoint(5, 5), 3);
        String svg = card(with(old, new OldHoleOnMap(new MapPoint(1, 1), 9)));
        assertThat(groups(svg, "old-hole")).containsExactly(circle(200, 200, 7.14), circle(120, 280, 7.14));
        assertThat(groups(svg, "old-hole-ground")).containsExactly(circle(200, 200, 7.14), circle(120, 280, 7.14));
        // beside it 1.15 · 7.14 = 8.211 and a little edge of 0.14 · 21 = 2.94; the figures' middle is as high as the
        // hole
        assertThat(svg)
                .contains("<text x=\"211.151\" y=\"207.560\" font-size=\"21.000\">3</text>")
                .doesNotContain(">9</text>"); // a card has the newest one's age alone
        double width = OpenSans.REGULAR.width("3", EM) + 5.88;
        assertThat(svg)
                .contains("<rect x=\"208.211\" y=\"189.500\" width=\"" + number(width) + "\" height=\"21.000\"/>");
    }

    @Test
    void anAgeGoesToTheOtherSideOrIsLeftOutWhereThereIsNoRoom() {
        OldHoleOnMap old = new OldHoleOnMap(new MapPoint(5, 5), 3);
        double width = OpenSans.REGULAR.width("3", EM) + 5.88;
        MapPoint right = new MapPoint(6.5, 5);
        String left = number(200 - 8.211 - width + 2.94);
        assertThat(card(with(old).withSpots(List.of(right))))
                .contains("<text x=\"" + left + "\" y=\"207.560\" font-size=\"21.000\">3</text>");
        List<MapPoint> sides = List.of(right, new MapPoint(3.5, 5));
        // above it: 200 − 8.211 − 2.94
        assertThat(card(with(old).withSpots(sides)))
                .contains("<text x=\"" + number(200 - width / 2 + 2.94)
                        + "\" y=\"188.849\" font-size=\"21.000\">3</text>");
        List<MapPoint> all = List.of(right, new MapPoint(3.5, 5), new MapPoint(5, 6.5), new MapPoint(5, 3.5));
        assertThat(card(with(old).withSpots(all))).doesNotContain(">3</text>");
    }
}
