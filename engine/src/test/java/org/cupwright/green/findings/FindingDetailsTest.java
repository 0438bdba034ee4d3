package org.cupwright.green.findings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.LevelReading;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Direction;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Slope;
import org.cupwright.message.Message.SlopePoints;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** The figures in findings, on invented greens twelve metres square that rise to the north. */
class FindingDetailsTest {
    private static final Hole HOLE = Hole.of("7", Shapes.rectangle(0, 0, 12, 12))
            .withLineOfPlay(new LineOfPlay(List.of(new MapPoint(6, -200), new MapPoint(6, 6))));

    private static Surface rises(double share) {
        return (east, north, out) -> {
            out.z = 20 + share * north;
            out.zx = 0;
            out.zy = share;
            out.zxx = 0;
            out.zxy = 0;
            out.zyy = 0;
        };
    }

    /** Sixteen points a square metre, their errors evenly spread up to a bound. */
    private static SurveyPoints points(double share, double boundMetres) {
        SurveyPoints exact = new MadeSurvey(rises(share), -2, -2, 14, 14, 16, 0, 4).points();
        SplittableRandom random = new SplittableRandom(5);
        return MadeSurvey.withHeights(
                exact,
                IntStream.range(0, exact.count())
                        .mapToDouble(i -> exact.heightMetres(i) + random.nextDouble(-boundMetres, boundMetres))
                        .toArray());
    }

    private static SurveyPoints where(SurveyPoints points, Predicate<MapPoint> kept) {
        return points.where(i -> kept.test(new MapPoint(points.east(i), points.north(i))));
    }

    private static List<GroundFinding> all(FindingKind kind, SurveyPoints points, LevelReading... readings) {
        return GroundFindings.of(HOLE, Optional.of(points), List.of(readings), Policy.defaults()).stream()
                .filter(found -> found.finding().kind() == kind)
                .toList();
    }

    @Test
    void smallGapsAreToldTogetherAndALargeOneByItself() {
        List<MapPoint> holes = List.of(new MapPoint(3, 3), new MapPoint(9, 3), new MapPoint(3, 9));
        SurveyPoints pierced = where(
                points(0.02, 0.006),
                at -> holes.stream().allMatch(hole -> hole.distanceMetres(at) > 0.8)
                        && at.distanceMetres(new MapPoint(9, 9)) > 2.5);
        List<GroundFinding> large = all(FindingKind.PART_NOT_SURVEYED, pierced);
        assertThat(large).hasSize(1);
        assertThat(large.get(0).finding().place().orElseThrow().distanceMetres(new MapPoint(9, 9)))
                .isLessThan(1.5);
        List<GroundFinding> small = all(FindingKind.SMALL_PARTS_NOT_SURVEYED, pierced);
        assertThat(small).hasSize(1);
        assertThat(small.get(0).finding().details()).contains(new Count(3));
        double squareMetres = ((Area) small.get(0).finding().value()).squareMetres();
        assertThat(squareMetres).isBetween(0.3, 3.0);
        assertThat(small.get(0).area().orElseThrow().getArea()).isCloseTo(squareMetres, within(1e-6));
    }

    @Test
    void aPartThatIsKnownBadlyIsToldWithItsShape() {
        SurveyPoints rolling = new MadeSurvey(MadeSurface.gentle(1, 14), -2, -2, 14, 14, 16, 0.02, 4).points();
        SurveyPoints thin = where(rolling, at -> at.east() < 8 || (int) (1000 * at.north()) % 8 == 0);
        List<GroundFinding> here = all(FindingKind.SLOPES_UNCERTAIN_HERE, thin);
        assertThat(here).isNotEmpty();
        assertThat(here).allSatisfy(part -> {
            double squareMetres = part.area().orElseThrow().getArea();
            assertThat(squareMetres).isGreaterThanOrEqualTo(1);
            assertThat(part.finding().details()).contains(new Area(squareMetres));
            assertThat(((SlopePoints) part.finding().value()).points()).isGreaterThan(0.6);
        });
        assertThat(here.get(0).area().orElseThrow().getCentroid().getX()).isGreaterThan(7);
    }

    @Test
    void aGreenThatIsSteepEverywhereIsToldWithItsSlope() {
        List<GroundFinding> steep = all(FindingKind.HEIGHTS_STEEP, points(0.066, 0.006));
        assertThat(steep).hasSize(1);
        assertThat(((Slope) steep.get(0).finding().value()).percent()).isCloseTo(6.6, within(0.1));
        assertThat(all(FindingKind.HEIGHTS_STEEP, points(0.058, 0.006))).isEmpty();
    }

    @Test
    void thinPartsAreToldWithHowManyPointsAreUsual() {
        SurveyPoints all = points(0.02, 0.006);
        GroundFinding uneven = all(
                        FindingKind.POINTS_UNEVEN,
                        where(all, at -> at.north() < 9 || (int) (1000 * at.east()) % 5 == 0))
                .get(0);
        List<?> counts = uneven.finding().details();
        assertThat(counts).hasSize(2);
        assertThat(((Count) counts.get(0)).number()).isEqualTo(Math.round(((Count) counts.get(1)).number() / 3.0));
        // sixteen a square metre on a disc of 0.9 m: 41, fewer at the edge
        assertThat(((Count) counts.get(1)).number()).isBetween(32L, 44L);
    }

    @Test
    void pointsFarOffAreToldFarthestFirstWithTheirSides() {
        SurveyPoints sound = points(0.02, 0.006);
        int first = near(sound, 3, 3);
        int second = near(sound, 9, 9);
        double[] heights = IntStream.range(0, sound.count())
                .mapToDouble(i -> sound.heightMetres(i) + (i == first ? 0.2 : 0) - (i == second ? 0.4 : 0))
                .toArray();
        List<GroundFinding> off = all(FindingKind.POINT_LEFT_OUT, MadeSurvey.withHeights(sound, heights));
        assertThat(off).hasSize(2);
        assertThat(((Length) off.get(0).finding().value()).metres()).isCloseTo(0.4, within(0.02));
        assertThat(off.get(0).finding().details()).contains(new Translated("survey.side.below"));
        assertThat(((Length) off.get(1).finding().value()).metres()).isCloseTo(0.2, within(0.02));
        assertThat(off.get(1).finding().details()).contains(new Translated("survey.side.above"));
    }

    private static int near(SurveyPoints points, double east, double north) {
        return IntStream.range(0, points.count())
                .filter(i -> Math.hypot(points.east(i) - east, points.north(i) - north) < 0.5)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void readingsThatContradictTheSurveyComeWorstFirst_withBothDirections() {
        LevelReading steeper = new LevelReading(new MapPoint(3, 3), 0, 0.04, 0.001);
        LevelReading otherWay = new LevelReading(new MapPoint(9, 9), 0, -0.03, 0.001);
        List<GroundFinding> told = all(FindingKind.READING_OVERRULES, points(0.02, 0.006), steeper, otherWay);
        assertThat(told).hasSize(2);
        assertThat(told.get(0).finding().place()).as("five points off").contains(otherWay.place());
        assertThat(told.get(1).finding().place()).as("two points off").contains(steeper.place());
        List<?> details = told.get(0).finding().details();
        assertThat(((Direction) details.get(0)).heading().degrees()).as("read").isCloseTo(0, within(1e-6));
        assertThat(((Slope) details.get(1)).percent()).as("surveyed").isCloseTo(2, within(0.1));
        double within = ((SlopePoints) details.get(2)).points();
        assertThat(within)
                .as("two errors, of the survey alone, or what a level shows")
                .isBetween(0.1, 0.4);
        assertThat(((Direction) details.get(3)).heading().degrees())
                .as("surveyed")
                .isCloseTo(180, within(3.0));
    }

    @Test
    void aLevelReadingOfNoSlopeFallsNoWay() {
        LevelReading level = new LevelReading(new MapPoint(6, 6), 0, 0, 0.001);
        List<GroundFinding> told = all(FindingKind.READING_OVERRULES, points(0.03, 0.006), level);
        assertThat(told).hasSize(1);
        assertThat(told.get(0).finding().details().get(0)).isEqualTo(new Translated("way.none"));
        SurveyPoints rough = new MadeSurvey(MadeSurface.gentle(1, 14), -2, -2, 14, 14, 8, 0.012, 1).points();
        double sure = ((SlopePoints) all(FindingKind.READING_OVERRULES, points(0.03, 0.001), level)
                        .get(0)
                        .finding()
                        .details()
                        .get(2))
                .points();
        assertThat(sure).as("never less than a level shows").isEqualTo(0.1);
        List<GroundFinding> roughly = all(FindingKind.READING_OVERRULES, rough, level);
        assertThat(roughly).hasSize(1);
        assertThat(((SlopePoints) roughly.get(0).finding().details().get(2)).points())
                .isGreaterThan(0.3);
    }
}
