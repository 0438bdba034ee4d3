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
import org.cupwright.green.ReadingId;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Direction;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Slope;
import org.cupwright.message.Message.SlopePoints;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** Invented greens of 144 m² that fall 2 % to the south, with one thing wrong at a time. */
class GroundFindingsTest {
    private static final Surface FALLS_SOUTH = (east, north, out) -> {
        out.z = 20 + 0.02 * north;
        out.zx = 0;
        out.zy = 0.02;
        out.zxx = 0;
        out.zxy = 0;
        out.zyy = 0;
    };
    private static final Hole HOLE = Hole.of("7", Shapes.rectangle(0, 0, 12, 12))
            .withLineOfPlay(new LineOfPlay(List.of(new MapPoint(6, -200), new MapPoint(6, 6))));

    private static MadeSurvey survey(double sigma) {
        return new MadeSurvey(FALLS_SOUTH, -2, -2, 14, 14, 8, sigma, 3);
    }

    private static List<GroundFinding> of(SurveyPoints points, LevelReading... readings) {
        return GroundFindings.of(HOLE, Optional.of(points), List.of(readings), Policy.defaults());
    }

    private static LevelReading reading(double east, double north, double riseEast, double riseNorth) {
        return new LevelReading(new MapPoint(east, north), riseEast, riseNorth, 0.001);
    }

    private static List<FindingKind> kinds(List<GroundFinding> findings) {
        return findings.stream().map(found -> found.finding().kind()).toList();
    }

    private static GroundFinding only(FindingKind kind, List<GroundFinding> findings) {
        assertThat(kinds(findings)).containsOnlyOnce(kind);
        return findings.stream()
                .filter(found -> found.finding().kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** Sixteen points a square metre, their errors within 9 mm: no chance gap, no chance blunder. */
    private static SurveyPoints sound() {
        SurveyPoints exact = new MadeSurvey(FALLS_SOUTH, -2, -2, 14, 14, 16, 0, 4).points();
        SplittableRandom random = new SplittableRandom(5);
        return MadeSurvey.withHeights(
                exact,
                IntStream.range(0, exact.count())
                        .mapToDouble(i -> exact.heightMetres(i) + random.nextDouble(-0.009, 0.009))
                        .toArray());
    }

    @Test
    void aSoundSurveyHasNone() {
        SurveyPoints sound = sound();
        assertThat(of(sound)).isEmpty();
        assertThat(of(sound, reading(6, 6, 0, 0.02))).isEmpty();
    }

    @Test
    void aGapIsToldWithItsShape() {
        Predicate<MapPoint> outside = point -> Math.hypot(point.east() - 4, point.north() - 8) > 2.5;
        GroundFinding gap = only(FindingKind.PART_NOT_SURVEYED, of(survey(0.005).points(outside)));
        assertThat(gap.finding().place().orElseThrow().distanceMetres(new MapPoint(4, 8)))
                .isLessThan(1.5);
        double squareMetres = ((Area) gap.finding().value()).squareMetres();
        assertThat(squareMetres).isEqualTo(gap.area().orElseThrow().getArea()).isBetween(8.0, 20.0);
        assertThat(HOLE.green().polygon().buffer(1e-6).contains(gap.area().orElseThrow()))
                .isTrue();
    }

    @Test
    void aPointFarOffIsToldWithItsPlaceAndHowFar() {
        SurveyPoints points = sound();
        int near = IntStream.range(0, points.count())
                .filter(i -> Math.hypot(points.east(i) - 6, points.north(i) - 6) < 0.5)
                .findFirst()
                .orElseThrow();
        double[] heights = IntStream.range(0, points.count())
                .mapToDouble(i -> points.heightMetres(i) - (i == near ? 0.3 : 0))
                .toArray();
        GroundFinding off = only(FindingKind.POINT_LEFT_OUT, of(MadeSurvey.withHeights(points, heights)));
        assertThat(off.finding().place()).contains(new MapPoint(points.east(near), points.north(near)));
        assertThat(((Length) off.finding().value()).metres()).isCloseTo(0.3, within(0.02));
        assertThat(off.finding().says().arguments().get(1).toString()).contains("below");
    }

    @Test
    void coarseHeightsAndThinPointsAreTold() {
        double points = ((SlopePoints) only(
                                FindingKind.SLOPES_UNCERTAIN,
                                of(new MadeSurvey(MadeSurface.gentle(1, 14), -2, -2, 14, 14, 4, 0.025, 1).points()))
                        .finding()
                        .value())
                .points();
        assertThat(points).isGreaterThan(0.6);
        SurveyPoints all = survey(0.005).points();
        SurveyPoints thin = all.where(i -> all.north(i) < 8 || i % 4 == 0);
        GroundFinding uneven = only(FindingKind.POINTS_UNEVEN, of(thin));
        Envelope where = uneven.area().orElseThrow().getEnvelopeInternal();
        assertThat(where.getMinY()).isGreaterThan(6.5);
        SurveyPoints five = all.where(i -> i < 5);
        assertThat(kinds(of(five))).containsExactly(FindingKind.SURVEY_TOO_THIN);
    }

    @Test
    void aTiltedSurveyIsToldWithItsDirection() {
        List<GroundFinding> findings = of(
                survey(0.005).points(),
                reading(3, 3, 0.01, 0.02),
                reading(9, 3, 0.01, 0.02),
                reading(3, 9, 0.01, 0.02),
                reading(9, 9, 0.01, 0.02));
        GroundFinding tilted = only(FindingKind.SURVEY_TILTED, findings);
        assertThat(findings.get(0)).as("the worst first").isEqualTo(tilted);
        assertThat(((SlopePoints) tilted.finding().value()).points()).isCloseTo(1, within(0.1));
        Direction falls = (Direction) tilted.finding().details().get(0);
        assertThat(falls.heading().degrees()).as("it falls more to the west").isCloseTo(270, within(5.0));
    }

    @Test
    void aReadingThatOverrulesIsToldWithBothValues() {
        GroundFinding overrules =
                only(FindingKind.READING_OVERRULES, of(survey(0.005).points(), reading(6, 6, 0, 0.04)));
        assertThat(overrules.finding().place()).contains(new MapPoint(6, 6));
        assertThat(((Slope) overrules.finding().value()).percent()).isCloseTo(4, within(1e-9));
        assertThat(((Slope) overrules.finding().details().get(1)).percent()).isCloseTo(2, within(0.2));
    }

    @Test
    void aReadingOffTheGreenAndAGreenWithoutSurveyAreTold() {
        List<GroundFinding> findings =
                GroundFindings.of(HOLE, Optional.empty(), List.of(reading(6, 15, 0, 0.01)), Policy.defaults());
        assertThat(kinds(findings)).containsExactly(FindingKind.NO_SURVEY, FindingKind.READING_OFF_GREEN);
        assertThat(findings.get(0).finding().value()).isEqualTo(new Count(1));
        assertThat(findings.get(1).finding().value()).isEqualTo(new Length(3));
        assertThat(findings.get(1).finding().tryThis().arguments())
                .containsExactly(new Name(ReadingId.of(HOLE.id(), reading(6, 15, 0, 0.01))));
        Hole small = Hole.of("1", Shapes.rectangle(0, 0, 5, 5));
        assertThat(kinds(GroundFindings.of(small, Optional.empty(), List.of(), Policy.defaults())))
                .containsExactly(FindingKind.NO_SURVEY, FindingKind.GREEN_VERY_SMALL, FindingKind.NO_LINE_OF_PLAY);
    }
}
