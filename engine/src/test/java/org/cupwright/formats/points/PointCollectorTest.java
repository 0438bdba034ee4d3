package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cupwright.formats.points.InventedPoints.gentle;
import static org.cupwright.formats.points.InventedPoints.lines;
import static org.cupwright.formats.points.InventedPoints.read;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleBinaryOperator;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.InventedMap;
import org.cupwright.formats.Projection;
import org.cupwright.formats.Separator;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Message;
import org.cupwright.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;

class PointCollectorTest {
    private static final PointRequest METRES = PointRequest.asTheCourse();
    private static final String XYZ = "%.4f,%.4f,%.4f";

    private static Finding trouble(String text, PointRequest request) {
        return InventedMap.troubleOf(() -> read(text, request));
    }

    private static MapPoint point(SurveyPoints points, int number) {
        return new MapPoint(points.east(number), points.north(number));
    }

    private static String tilted(DoubleBinaryOperator height) {
        return lines(XYZ, height, 1);
    }

    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void turnsEveryUnitIntoMetres(LengthUnit unit) {
        String text = lines(XYZ, (x, y) -> 100 + 0.02 * x, unit.fromMetres(1));
        SurveyPoints cloud = read(text, METRES.in(unit)).find("1").orElseThrow();
        SurveyPoints same = read(gentle(XYZ)).find("1").orElseThrow();
        assertThat(cloud.count()).isEqualTo(same.count());
        assertThat(cloud.east(7)).isCloseTo(same.east(7), within(0.001));
        assertThat(cloud.heightMetres(7)).isCloseTo(same.heightMetres(7), within(0.001));
    }

    @Test
    void saysWhenFeetWereTakenForMetres() {
        String feet = lines(XYZ, (x, y) -> 100, LengthUnit.FOOT.fromMetres(1));
        Finding finding = trouble(feet, METRES);
        assertThat(finding.kind()).isEqualTo(FindingKind.UNIT_LOOKS_WRONG);
        assertThat(finding.value()).isEqualTo(new Message.Name("m"));
        assertThat(finding.tryThis().arguments()).containsExactly(new Message.Name("ft"));
    }

    @Test
    void saysWhenMetresWereTakenForFeet() {
        Finding finding = trouble(gentle(XYZ), METRES.in(LengthUnit.FOOT));
        assertThat(finding.kind()).isEqualTo(FindingKind.UNIT_LOOKS_WRONG);
        assertThat(finding.tryThis().arguments()).containsExactly(new Message.Name("m"));
    }

    @Test
    void takesPointsFromAnotherFrame() {
        Projection toOther = Projection.between(CoordinateFrame.of(32625), CoordinateFrame.of(32626));
        StringBuilder text = new StringBuilder();
        for (String line : gentle(XYZ).lines().toList()) {
            List<String> xyz = Separator.COMMA.split(line);
            Coordinate moved = toOther.apply(Double.parseDouble(xyz.get(0)), Double.parseDouble(xyz.get(1)));
            text.append(String.format(Locale.ROOT, "%.4f,%.4f,%s%n", moved.x, moved.y, xyz.get(2)));
        }
        SurveyPoints cloud = read(text.toString(), METRES.in(CoordinateFrame.of(32626)))
                .find("1")
                .orElseThrow();
        SurveyPoints same = read(gentle(XYZ)).find("1").orElseThrow();
        assertThat(point(cloud, 9).distanceMetres(point(same, 9))).isLessThan(0.001);
        assertThat(trouble(text.toString(), METRES).kind()).isEqualTo(FindingKind.POINTS_FAR_FROM_GREENS);
    }

    @Test
    void saysHowFarAwayPointsOfTheWrongFrameAre() {
        Finding finding = trouble(gentle(XYZ), METRES.in(CoordinateFrame.of(2154)));
        assertThat(finding.kind()).isEqualTo(FindingKind.POINTS_FAR_FROM_GREENS);
        assertThat(((Message.Length) finding.value()).metres()).isGreaterThan(100_000);
        assertThat(finding.tryThis().arguments()).containsExactly(new Message.Name("EPSG:2154"));
    }

    @Test
    void saysWhenMetresWereTakenForDegrees() {
        assertThat(trouble(gentle(XYZ), METRES.in(CoordinateFrame.of(4326))).kind())
                .isEqualTo(FindingKind.OUTSIDE_FRAME);
    }

    @Test
    void saysWhenEastAndNorthWereExchanged() {
        assertThat(trouble(gentle("%2$.4f,%1$.4f,%3$.4f"), METRES).kind()).isEqualTo(FindingKind.COLUMNS_EXCHANGED);
    }

    @Test
    void saysWhenPointsLieBetweenTheGreens() {
        String between = String.format(
                Locale.ROOT, "%.3f,%.3f,5%n", InventedPoints.MIDDLE.east() + 200, InventedPoints.MIDDLE.north());
        assertThat(trouble(between, METRES).kind()).isEqualTo(FindingKind.NO_POINTS_ON_GREENS);
    }

    @Test
    void refusesHeightsNoGreenCanHave() {
        Finding trees = trouble(tilted((x, y) -> x > 0 ? 112 : 100), METRES);
        assertThat(trees.kind()).isEqualTo(FindingKind.HEIGHTS_IMPOSSIBLE);
        assertThat(trees.value()).isEqualTo(new Message.Length(12));
        assertThat(trees.place()).isPresent();
        assertThat(trouble(tilted((x, y) -> 100 + 0.42 * y), METRES).kind()).isEqualTo(FindingKind.HEIGHTS_IMPOSSIBLE);
    }

    @Test
    void asksAboutAGreenThatIsSteepAsAWhole() {
        GreenPoints points = read(tilted((x, y) -> 100 + 0.12 * y));
        Finding steep = points.findings().stream()
                .filter(finding -> finding.kind() == FindingKind.HEIGHTS_STEEP)
                .findFirst()
                .orElseThrow();
        assertThat(((Message.Slope) steep.value()).percent()).isCloseTo(12, within(0.01));
        assertThat(read(gentle(XYZ)).findings()).extracting(Finding::kind).doesNotContain(FindingKind.HEIGHTS_STEEP);
    }

    @Test
    void dropsPointsThatStandTwiceAndTellsHeightsThatDisagree() {
        String twice = gentle(XYZ) + gentle(XYZ);
        GreenPoints once = read(twice);
        assertThat(once.find("1").orElseThrow().count())
                .isEqualTo(read(gentle(XYZ)).find("1").orElseThrow().count());
        assertThat(once.findings()).extracting(Finding::kind).contains(FindingKind.POINTS_TWICE);
        String other =
                String.format(Locale.ROOT, XYZ, InventedPoints.MIDDLE.east(), InventedPoints.MIDDLE.north(), 100.5);
        Finding disagree = read(gentle(XYZ) + other + "\n").findings().stream()
                .filter(finding -> finding.kind() == FindingKind.HEIGHTS_DISAGREE)
                .findFirst()
                .orElseThrow();
        assertThat(((Message.Length) disagree.value()).metres()).isCloseTo(0.5, within(1e-6));
        assertThat(disagree.place().orElseThrow().distanceMetres(InventedPoints.MIDDLE))
                .isLessThan(0.001);
    }

    @Test
    void namesGreensThatHaveNoPoints() {
        GreenPoints points = read(gentle(XYZ));
        assertThat(points.find("2")).isEmpty();
        assertThat(points.findings())
                .filteredOn(finding -> finding.kind() == FindingKind.GREEN_WITHOUT_POINTS)
                .extracting(Finding::value)
                .containsExactly(new Message.Name("2"));
    }

    @Test
    void keepsPointsAroundTheEdgeAndNoneBeyond() {
        SurveyPoints cloud = read(gentle(XYZ)).find("1").orElseThrow();
        boolean beyondTheEdge = false;
        for (int i = 0; i < cloud.count(); i++) {
            double away = point(cloud, i).distanceMetres(InventedPoints.MIDDLE);
            assertThat(away).isLessThanOrEqualTo(15.01);
            beyondTheEdge |= away > 12.1;
        }
        assertThat(beyondTheEdge).isTrue();
    }

    /** 12 m east and 12 m north of the middle it is 17 m, beyond the radius of 12 m and the margin of 3 m. */
    @Test
    void aPointInTheCornerOfAGreensBoxIsNotOnIt() {
        String corner = String.format(
                Locale.ROOT, "%.3f,%.3f,5%n", InventedPoints.MIDDLE.east() + 12, InventedPoints.MIDDLE.north() + 12);
        assertThat(trouble(corner, METRES).kind()).isEqualTo(FindingKind.NO_POINTS_ON_GREENS);
    }

    @Test
    void asksAboutACourseWhoseGreensAreSteepOneAndAll() {
        InventedMap map = new InventedMap();
        for (int i = 1; i <= 6; i++) {
            map.green(100 * i, 0, 12, ",\"ref\":" + i);
        }
        Course course = map.read().course();
        PointCollector collector = new PointCollector(course, METRES);
        for (Hole hole : course.holes()) {
            MapPoint middle = hole.green().centroid();
            for (int i = 0; i < 25; i++) {
                collector.accept(
                        middle.east() + i % 5, middle.north() + i / 5, 100 + 0.05 * (i % 5), PointCollector.NO_CLASS);
            }
        }
        assertThat(collector.finish().findings()).singleElement().satisfies(finding -> {
            assertThat(finding.kind()).isEqualTo(FindingKind.GREENS_STEEP);
            assertThat(((Message.Slope) finding.value()).percent()).isCloseTo(5, within(1e-6));
        });
    }
}
