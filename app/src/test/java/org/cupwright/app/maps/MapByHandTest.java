package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.GroundItem;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.testing.DrawnShapes;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;

/**
 * Drawings of a square green of ten metres, worked out by hand. With five metres about it the ground is 20 m wide and
 * high: 20 units a metre on a card of 400 by 400, so that a place is drawn at x = 20 (east + 5), y = 20 (15 − north). A
 * card's letters are 21 units high.
 */
class MapByHandTest {
    private static final Outline OUTLINE = Shapes.rectangle(0, 0, 10, 10);
    private static final double EM = 21;

    private final GreenMap map =
            new GreenMap(Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 1).orElseThrow());

    private static Hole hole(List<Hazard> hazards, List<Mark> marks) {
        return new Hole(
                "7",
                OUTLINE,
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                hazards,
                List.of(),
                marks,
                List.of());
    }

    private String card(GreenDrawing drawing) {
        return map.card(drawing, 400, 400);
    }

    private String card(Hole hole) {
        return card(MadeDrawing.of(hole));
    }

    private static GreenDrawing plain() {
        return MadeDrawing.of(hole(List.of(), List.of()));
    }

    /** What stands in the groups of a class, each as it is. */
    private static List<String> groups(String svg, String name) {
        List<String> found = new ArrayList<>();
        Matcher groups =
                Pattern.compile("<g class=\"" + name + "\" [^>]*>(.*?)</g>").matcher(svg);
        while (groups.find()) {
            found.add(groups.group(1));
        }
        return found;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.3f", value);
    }

    private static String path(String data) {
        return "<path d=\"" + data + "\"/>";
    }

    private static String circle(double x, double y, double radius) {
        return "<circle cx=\"" + number(x) + "\" cy=\"" + number(y) + "\" r=\"" + number(radius) + "\"/>";
    }

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
        assertThat(groups(map.card(plain(), 600, 400), "edge").get(0))
                .startsWith("<path d=\"M200.000 300.000L400.000 300.000");
        assertThat(groups(map.card(plain(), 200, 400), "edge").get(0))
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
        DrawnGround unknown = new DrawnGround(at -> false, at -> false, at -> at.east() < 5, List.of());
        GreenDrawing drawing = new GreenDrawing(
                plain.hole(), "", Optional.empty(), unknown, List.of(), List.of(), List.of(), List.of(), List.of());
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
        String picture = map.picture(MadeDrawing.withMarked(plain(), items));
        assertThat(picture).contains(">closed</text>").contains(">saved</text>").contains(">spare</text>");
    }

    private static GroundFinding finding(Optional<MapPoint> at) {
        Finding finding = Finding.of(FindingKind.POINT_LEFT_OUT, Where.hole("7"), 1);
        return new GroundFinding(at.map(finding::at).orElse(finding), Optional.empty());
    }

    @Test
    void findingsAreNumberedBesideTheirPlace() {
        GreenDrawing drawing =
                plain().withFindings(List.of(finding(Optional.empty()), finding(Optional.of(new MapPoint(5, 5)))));
        String svg = card(drawing);
        assertThat(groups(svg, "finding-place")).containsExactly(circle(200, 200, 4.2));
        double width = OpenSans.SEMIBOLD.width("2", EM) + 5.88;
        // 1.5 · 4.2 = 6.3 beside it
        assertThat(groups(svg, "finding-frame"))
                .containsExactly(
                        "<rect x=\"206.300\" y=\"189.500\" width=\"" + number(width) + "\" height=\"21.000\"/>");
        assertThat(svg).contains("<text x=\"209.240\" y=\"207.560\" font-size=\"21.000\" font-weight=\"600\">2</text>");
        assertThat(groups(card(plain()), "finding-area")).isEmpty();
    }

    @Test
    void contourLinesRunEveryFiveCentimetresAndEveryFifthIsThick() {
        // rises 5 cm a metre eastwards from 2.5 cm: 5 cm at 0.5 m, 10 cm at 1.5 m, 25 cm at 4.5 m, 50 cm at 9.5 m
        GreenDrawing sloping =
                MadeDrawing.surveyed(plain().hole(), new MadeSurface(0.025, 0.05, 0, List.of(), List.of()));
        String svg = card(sloping);
        assertThat(groups(svg, "contour").get(0).split("<path", -1)).hasSize(1 + 8);
        String[] thick = groups(svg, "contour fifth").get(0).split("<path", -1);
        assertThat(thick).hasSize(1 + 2);
        assertThat(thick[1])
                .startsWith(" d=\"M190.000 ")
                .contains("190.000 300.000")
                .contains("190.000 100.000");
        assertThat(thick[2]).startsWith(" d=\"M290.000 ");
        assertThat(groups(svg, "height")).isEmpty();
        String picture = map.picture(sloping);
        // heights over the lowest line, 5 cm
        assertThat(picture).contains(">+20</text>").contains(">+45</text>");
        // 50 units a metre: the middle of the line at 4.5 m
        double width = OpenSans.SEMIBOLD.width("+20", 17) + 4.76;
        assertThat(picture).contains("<text x=\"" + number(475 - width / 2 + 2.38) + "\" y=\"506.120\"");
    }

    @Test
    void aPictureIsAsHighAsTheGreenAsksForWithItsKeyBelow() {
        String svg = map.picture(plain().withTitle("An invented title"));
        List<String> key = groups(svg, "key");
        int lines = key.get(0).split("<text", -1).length - 1;
        int height = 1000 + (int) Math.ceil((lines + 1) * 25.5 + 17);
        assertThat(svg)
                .contains("width=\"1000\" height=\"" + height + "\"")
                .contains("<title>An invented title</title>");
        assertThat(groups(svg, "edge").get(0)).startsWith("<path d=\"M250.000 750.000L750.000 750.000");
        assertThat(groups(svg, "title"))
                .containsExactly("<text x=\"10.200\" y=\"1025.500\" font-size=\"17.000\" font-weight=\"600\">"
                        + "An invented title</text>");
        assertThat(key.get(0))
                .startsWith("<text x=\"10.200\" y=\"1051.000\" font-size=\"17.000\">hatched: do not cut · clear: free"
                        + " · no survey: no contour lines</text>");
        assertThat(groups(svg, "scale").get(0)).contains("H991.500"); // 1000 − 0.5 · 17
    }

    @Test
    void longGreensArePicturedTwiceAsHighAsWideAtMostAndHalfAsHighAtLeast() {
        // 20 m by 80 m and 80 m by 20 m with five metres about them
        Hole high = Hole.of("7", Shapes.rectangle(0, 0, 10, 70));
        Hole wide = Hole.of("7", Shapes.rectangle(0, 0, 70, 10));
        String foot = "y=\"%s\" font-size=\"17.000\" font-weight=\"600\">x</text>";
        assertThat(map.picture(MadeDrawing.of(high).withTitle("x"))).contains(foot.formatted("2025.500"));
        assertThat(map.picture(MadeDrawing.of(wide).withTitle("x"))).contains(foot.formatted("525.500"));
    }

    @Test
    void theKeySaysOnlyWhatIsThereAndWrapsItsLines() {
        Hole hole = hole(
                List.of(new Hazard(Hazard.Kind.WATER, Shapes.area(11, 0, 13, 0, 13, 2, 11, 2))),
                List.of(new Mark(Mark.Kind.SPRINKLER_HEAD, "head", new MapPoint(5, 7))));
        GreenDrawing all = MadeDrawing.withSlopes(
                        MadeDrawing.withDrawn(
                                MadeDrawing.used(
                                        MadeDrawing.surveyed(hole, new MadeSurface(0, 0.05, 0, List.of(), List.of())),
                                        at -> false,
                                        at -> false,
                                        new OldHoleOnMap(new MapPoint(2, 2), 4)),
                                List.of(DrawnShapes.usual(5, 3))),
                        List.of(new SlopeOnMap(new MapPoint(8, 8), 2.5)))
                .withSpots(List.of(new MapPoint(5, 5)));
        String svg = map.picture(all);
        String key = String.join(
                " · ", groups(svg, "key").get(0).replaceAll("<text[^>]*>", "").split("</text>"));
        assertThat(key)
                .isEqualTo("hatched: do not cut · clear: free · dotted: rests about old holes"
                        + " · small ring: old hole, days ago · diamond: usual spot"
                        + " · lines: contours every 5 cm, thick every 25 cm, heights in cm"
                        + " · question mark: not surveyed · figures: slope in % · large ring: the spot"
                        + " · cross: sprinkler head or other mark"
                        + " · outside: bunker dotted, water dashed, fall-off drawn through");
        // about its place, 650, 350
        assertThat(svg).contains("y=\"356.120\" font-size=\"17.000\">2.5</text>");
    }

    @Test
    void nineFindingsAreSaidUnderAPictureAndTheOthersCounted() {
        List<GroundFinding> ten = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            ten.add(finding(Optional.of(new MapPoint(i, 5))));
        }
        String key = groups(map.picture(plain().withFindings(ten)), "key").get(0);
        assertThat(key).contains(">9  ").doesNotContain(">10  ").contains(">and one more</text>");
        assertThat(key).contains("framed number: doubtful ground, said below");
        String nine = groups(map.picture(plain().withFindings(ten.subList(0, 9))), "key")
                .get(0);
        assertThat(nine).contains(">9  ").doesNotContain("more</text>");
    }
}
