package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.app.maps.SmallMap.EM;
import static org.cupwright.app.maps.SmallMap.MAP;
import static org.cupwright.app.maps.SmallMap.card;
import static org.cupwright.app.maps.SmallMap.circle;
import static org.cupwright.app.maps.SmallMap.groups;
import static org.cupwright.app.maps.SmallMap.hole;
import static org.cupwright.app.maps.SmallMap.number;
import static org.cupwright.app.maps.SmallMap.path;
import static org.cupwright.app.maps.SmallMap.plain;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.GroundItem;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.testing.DrawnShapes;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/** Hatching, patterns and signs, worked out by hand from {@link SmallMap}'s frame. */
class MapGroundByHandTest {
    @Test
    void groundNotToCutIsHatchedFromUpperRightToLowerLeftAndRestingGroundDotted() {
        String svg = card(MadeDrawing.used(plain(), at -> true, at -> at.north() > 5));
        Matcher lines = Pattern.compile("M([0-9.]+) ([0-9.]+)L([0-9.]+) ([0-9.]+)")
                .matcher(groups(svg, "not-to-cut").get(0));
        double along = 0.62 * EM * Math.sqrt(2);
        double look = 0.125 * 20 / Math.sqrt(2) + 0.002;
        // the lines x + y = (k + ½) · 18.413 that meet the square from (100, 100) to (300, 300): 200 to 600
        int k = 11;
        while (lines.find()) {
            double sum = (k + 0.5) * along;
            double top = Math.max(100, sum - 300);
            double bottom = Math.min(300, sum - 100);
            assertThat(Double.parseDouble(lines.group(1)) + Double.parseDouble(lines.group(2)))
                    .isCloseTo(sum, within(0.002));
            assertThat(Double.parseDouble(lines.group(3)) + Double.parseDouble(lines.group(4)))
                    .isCloseTo(sum, within(0.002));
            assertThat(Double.parseDouble(lines.group(2))).isBetween(top - 0.002, top + look);
            assertThat(Double.parseDouble(lines.group(4))).isBetween(bottom - look, bottom + 0.002);
            k++;
        }
        assertThat(k).isBetween(32, 33); // the 32nd cuts a corner of 1.6 units off, less than a look
        List<String> dots = new ArrayList<>();
        for (int row = 0; row < 50; row++) {
            double y = 7.875 * (row + 1);
            for (int column = 0; column < 26; column++) {
                double x = 15.75 * column + (row % 2 == 0 ? 0 : 7.875);
                if (x >= 100 && x <= 300 && y >= 100 && y < 200) {
                    dots.add(circle(x, y, 2.31));
                }
            }
        }
        assertThat(groups(svg, "resting")).containsExactly(String.join("", dots));
    }

    @Test
    void hatchingReachesToTheDrawingsEdges() {
        MapFrame frame = new MapFrame(hole(List.of(), List.of()), 400, 400);
        String all = new Strokes(frame).hatching(100, false, at -> true);
        // the first line is 50 √2 = 70.711 from the corner on either edge, others 141.421 apart: up to 800
        assertThat(all).startsWith("M70.711 0.000L").contains("M212.132 0.000L").contains("M353.553 0.000L");
        assertThat(all)
                .contains("M400.000 94.975L")
                .contains("M400.000 236.396L")
                .contains("M400.000 377.817L");
        assertThat(all.split("M", -1)).hasSize(1 + 6);
        assertThat(new Strokes(frame).hatching(100, true, at -> true))
                .startsWith("M329.289 0.000L")
                .contains("M0.000 94.975L");
    }

    @Test
    void groundThatIsNotSurveyedHasQuestionMarks() {
        GreenDrawing plain = plain();
        DrawnGround unknown = new DrawnGround(true, at -> false, at -> false, at -> at.east() < 5, List.of());
        GreenDrawing drawing = new GreenDrawing(
                plain.hole(),
                "",
                Optional.empty(),
                unknown,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        List<String> marks = new ArrayList<>();
        for (int row = 0; row < 19; row++) {
            double y = 21 * (row + 1);
            for (int column = 0; column < 10; column++) {
                double x = 42 * column + (row % 2 == 0 ? 0 : 21);
                if (x >= 100 && x < 200 && y >= 100 && y <= 300) {
                    marks.add("<text x=\"" + number(x) + "\" y=\"" + number(y)
                            + "\" font-size=\"21.000\" text-anchor=\"middle\">?</text>");
                }
            }
        }
        assertThat(groups(card(drawing), "not-surveyed")).containsExactly(String.join("", marks));
    }

    @Test
    void littleGroundThatPeopleDrewHasItsSignInTheMiddle() {
        List<DrawnItem> drawn = List.of(
                DrawnShapes.area(Kind.GOOD, 2, 6, 3, 7),
                DrawnShapes.area(Kind.BAD, 6, 6, 7, 7),
                DrawnShapes.usual(5, 3),
                DrawnShapes.area(Kind.BAD, 20, 6, 27, 7));
        String svg = card(MadeDrawing.withDrawn(plain(), drawn));
        // 0.32 · 21 = 6.72 either way of (2.5, 6.5) and (6.5, 6.5)
        assertThat(groups(svg, "drawn-clear")).containsExactly(circle(150, 170, 11.424), circle(230, 170, 11.424));
        assertThat(groups(svg, "tick")).containsExactly(path("M143.280 170.000l4.704 6.048l8.736 -12.768"));
        assertThat(groups(svg, "cross"))
                .containsExactly(path("M223.280 163.280l13.440 13.440M236.720 163.280l-13.440 13.440"));
        assertThat(groups(svg, "drawn-good")).hasSize(1);
        assertThat(groups(svg, "drawn-bad")).hasSize(1);
        assertThat(svg)
                .contains("<g class=\"drawn-good\" fill=\"none\" stroke=\"#25221d\" stroke-width=\"1.540\""
                        + " stroke-linejoin=\"round\" stroke-linecap=\"round\">")
                .contains("stroke-dasharray=\"9.450 6.300\">");
        String diamond = path("M188.450 240.000l11.550 -11.550l11.550 11.550l-11.550 11.550Z");
        assertThat(groups(svg, "usual")).containsExactly(diamond);
        assertThat(groups(svg, "usual-ground")).containsExactly(diamond);
    }

    @Test
    void muchGroundIsStrewnWithSignsClearOfItsEdge() {
        String svg = card(MadeDrawing.withDrawn(plain(), List.of(DrawnShapes.area(Kind.GOOD, 0, 0, 10, 10))));
        List<String> clear = new ArrayList<>();
        for (int row = 0; row < 10; row++) {
            double y = 42 * (row + 1);
            for (int column = 0; column < 5; column++) {
                double x = 84 * column + (row % 2 == 0 ? 0 : 42);
                double edge = 2 * 6.72;
                if (x > 100 + edge && x < 300 - edge && y > 100 + edge && y < 300 - edge) {
                    clear.add(circle(x, y, 11.424));
                }
            }
        }
        assertThat(groups(svg, "drawn-clear")).containsExactlyElementsOf(clear).hasSizeGreaterThan(4);
    }

    private static GroundItem marked(GroundItem.Kind kind, double west, double north) {
        Polygon area = Shapes.area(west, north - 2, west + 2, north - 2, west + 2, north, west, north);
        return new GroundItem(kind, area, Optional.of(LocalDate.of(2026, 6, 1)), Optional.empty());
    }

    @Test
    void closedSavedAndSparedGroundIsToldApart() {
        List<GroundItem> items = List.of(
                marked(GroundItem.Kind.OUT_OF_USE, 4, 6),
                marked(GroundItem.Kind.SAVED, 0, 2),
                marked(GroundItem.Kind.LIGHT_USE, 8, 2),
                marked(GroundItem.Kind.OUT_OF_USE, 20, 6));
        String svg = card(MadeDrawing.withMarked(plain(), items));
        assertThat(groups(svg, "closed")).hasSize(1);
        assertThat(groups(svg, "saved")).hasSize(1);
        assertThat(groups(svg, "light-use")).hasSize(1);
        assertThat(svg).contains("stroke-dasharray=\"18.900 6.3000.1 6.300\">");
        assertThat(groups(svg, "closed-hatching").get(0)).startsWith("<path d=\"M");
        // the middle of (4…6, 4…6): the word about it, its figures 0.72 letters high
        double width = OpenSans.REGULAR.width("closed", EM) + 5.88;
        assertThat(svg)
                .contains("<text x=\"" + number(200 - width / 2 + 2.94)
                        + "\" y=\"207.560\" font-size=\"21.000\">closed</text>")
                .doesNotContain(">saved</text>")
                .doesNotContain(">spare</text>");
        String picture = MAP.picture(MadeDrawing.withMarked(plain(), items));
        assertThat(picture).contains(">closed</text>").contains(">saved</text>").contains(">spare</text>");
    }
}
