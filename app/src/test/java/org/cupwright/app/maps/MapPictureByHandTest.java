package org.cupwright.app.maps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.app.maps.SmallMap.EM;
import static org.cupwright.app.maps.SmallMap.MAP;
import static org.cupwright.app.maps.SmallMap.card;
import static org.cupwright.app.maps.SmallMap.circle;
import static org.cupwright.app.maps.SmallMap.groups;
import static org.cupwright.app.maps.SmallMap.hole;
import static org.cupwright.app.maps.SmallMap.number;
import static org.cupwright.app.maps.SmallMap.plain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.testing.DrawnShapes;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** Findings, contour lines and pictures with their key, worked out by hand from {@link SmallMap}'s frame. */
class MapPictureByHandTest {
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
        String picture = MAP.picture(sloping);
        // heights over the lowest line, 5 cm
        assertThat(picture).contains(">+20</text>").contains(">+45</text>");
        // 50 units a metre: the middle of the line at 4.5 m
        double width = OpenSans.SEMIBOLD.width("+20", 17) + 4.76;
        assertThat(picture).contains("<text x=\"" + number(475 - width / 2 + 2.38) + "\" y=\"506.120\"");
    }

    @Test
    void aPictureIsAsHighAsTheGreenAsksForWithItsKeyBelow() {
        String svg = MAP.picture(plain().withTitle("An invented title"));
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
        assertThat(MAP.picture(MadeDrawing.of(high).withTitle("x"))).contains(foot.formatted("2025.500"));
        assertThat(MAP.picture(MadeDrawing.of(wide).withTitle("x"))).contains(foot.formatted("525.500"));
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
        String svg = MAP.picture(all);
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
        String key = groups(MAP.picture(plain().withFindings(ten)), "key").get(0);
        assertThat(key).contains(">9  ").doesNotContain(">10  ").contains(">and one more</text>");
        assertThat(key).contains("framed number: doubtful ground, said below");
        String nine = groups(MAP.picture(plain().withFindings(ten.subList(0, 9))), "key")
                .get(0);
        assertThat(nine).contains(">9  ").doesNotContain("more</text>");
    }
}
