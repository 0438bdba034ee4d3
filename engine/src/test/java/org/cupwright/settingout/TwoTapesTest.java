package org.cupwright.settingout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

class TwoTapesTest {
    private static final Outline GREEN = Shapes.rectangle(0, 0, 20, 30);

    private static Mark mark(String name, double east, double north) {
        return new Mark(Mark.Kind.SURVEYED_MARK, name, new MapPoint(east, north));
    }

    @Test
    void thePairThatFixesBestIsChosen() {
        // from (10, 10): A and B at right angles and 10 m away; C a good angle too, but B and C only 45°; D in line
        // with A.
        // equal errors, so √2·σ/sin γ decides: A and B
        List<Mark> marks = List.of(mark("C", 17, 3), mark("A", 0, 10), mark("D", -10, 10), mark("B", 10, 0));
        TapeFix best = TwoTapes.findBest(new MapPoint(10, 10), marks).orElseThrow();
        assertThat(List.of(best.first().mark().name(), best.second().mark().name()))
                .containsExactlyInAnyOrder("A", "B");
        assertThat(best.angleDegrees()).isCloseTo(90, within(1e-9));
        assertThat(best.first().metres()).isCloseTo(10, within(1e-12));
        assertThat(best.error().positionErrorMetres()).isCloseTo(0.02 * Math.sqrt(2), within(1e-9));
    }

    @Test
    void tapesThatAreTooLongTooSharpOrTooFlatAreNotChosen() {
        MapPoint point = new MapPoint(10, 10);
        // 51 m away
        assertThat(TwoTapes.findBest(point, List.of(mark("A", 0, 10), mark("far", 10, -41))))
                .isEmpty();
        // sharp: directions 180° and 180° + atan(5/10) = 26.6° apart; flat: 180° − 26.6°
        assertThat(TwoTapes.findBest(point, List.of(mark("A", 0, 10), mark("sharp", 0, 5))))
                .isEmpty();
        assertThat(TwoTapes.findBest(point, List.of(mark("A", 0, 10), mark("flat", 20, 5))))
                .isEmpty();
        // atan(6/10) = 31.0°
        assertThat(TwoTapes.findBest(point, List.of(mark("A", 0, 10), mark("enough", 0, 4))))
                .isPresent();
        assertThat(TwoTapes.findBest(point, List.of(mark("A", 0, 10), mark("under", 10, 10))))
                .isEmpty();
    }

    @Test
    void theMeetingOnTheGreenCounts() {
        // marks left of the green at (−2, 5) and (−2, 21), 10 m each: 16 apart, so 6 beside: (4, 13) on it, (−8, 13)
        // off it
        TapeFix fix = TwoTapes.fix(mark("A", -2, 5), 10, mark("B", -2, 21), 10, GREEN);
        assertThat(fix.at().distanceMetres(new MapPoint(4, 13))).isLessThan(1e-9);
        // a baseline that crosses the green at x = 8, both meetings on it: (14, 13) and (2, 13); the centroid (10, 15)
        // decides
        TapeFix crossing = TwoTapes.fix(mark("A", 8, 5), 10, mark("B", 8, 21), 10, GREEN);
        assertThat(crossing.at().distanceMetres(new MapPoint(14, 13))).isLessThan(1e-9);
    }

    @Test
    void tapesThatDoNotMeetAreRefusedWithTheirNumbers() {
        assertThatThrownBy(() -> TwoTapes.fix(mark("A", 0, 0), 4, mark("B", 10, 0), 5, GREEN))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("4.0 m from A")
                .hasMessageContaining("5.0 m from B")
                .hasMessageContaining("10.0 m apart");
        assertThatThrownBy(() -> TwoTapes.fix(mark("A", 0, 0), 4, mark("B", 10, 0), 6, GREEN))
                .hasMessageContaining("do not meet");
        assertThatThrownBy(() -> TwoTapes.fix(mark("A", 0, 0), 4, mark("B", 0, 0), 4, GREEN))
                .hasMessageContaining("0.0 m apart");
        assertThatThrownBy(() -> new Tape(mark("A", 0, 0), -1, 0.02)).hasMessageContaining("-1.0 m");
    }

    @Test
    void distancesToAPointLeadBackToIt() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("tapes there and back", 20_000, 2_000);
        for (int i = 0; i < count; i++) {
            MapPoint point = new MapPoint(20 * random.nextDouble(), 30 * random.nextDouble());
            List<Mark> marks = randomMarks(random);
            Optional<TapeFix> best = TwoTapes.findBest(point, marks);
            assertThat(best.map(TapeFix::angleDegrees))
                    .as("case " + i + ", seed " + Suite.seed())
                    .isEqualTo(bestByTryingAll(point, marks).map(TapeFix::angleDegrees));
            best.ifPresent(fix -> assertThat(TwoTapes.meetings(fix.first(), fix.second()))
                    .as("seed " + Suite.seed())
                    .anyMatch(meeting -> meeting.distanceMetres(point) < 1e-9));
        }
    }

    private static List<Mark> randomMarks(Random random) {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            marks.add(mark("m" + i, 60 * random.nextDouble() - 20, 70 * random.nextDouble() - 20));
        }
        return marks;
    }

    /** Straight from the formula: all pairs, the angle from the cosine rule. */
    private static Optional<TapeFix> bestByTryingAll(MapPoint point, List<Mark> marks) {
        List<TapeFix> good = new ArrayList<>();
        for (Mark a : marks) {
            for (Mark b : marks) {
                double r1 = a.at().distanceMetres(point);
                double r2 = b.at().distanceMetres(point);
                double apart = a.at().distanceMetres(b.at());
                double angle = Math.toDegrees(Math.acos((r1 * r1 + r2 * r2 - apart * apart) / (2 * r1 * r2)));
                if (marks.indexOf(a) < marks.indexOf(b) && angle >= 30 && angle <= 150 && r1 <= 50 && r2 <= 50) {
                    good.add(TapeFix.at(point, new Tape(a, r1, 0.02), new Tape(b, r2, 0.02)));
                }
            }
        }
        return good.stream().min(Comparator.comparingDouble(fix -> Math.abs(fix.angleDegrees() - 90)));
    }

    @Test
    void theEllipseHoldsWhatItSays() {
        // tapes with made errors: the share of meetings inside the 95 % ellipse; 20,000 tries have a standard error of
        // 0.0015
        Random random = new Random(Suite.seed());
        Mark a = mark("A", 0, 0);
        Mark b = mark("B", 10, 0);
        TapeFix truth = TapeFix.at(new MapPoint(5, 12), new Tape(a, 13, 0.02), new Tape(b, 13, 0.03));
        int count = Suite.count("tapes with errors", 20_000, 20_000);
        int inside = 0;
        for (int i = 0; i < count; i++) {
            Tape first = new Tape(a, 13 + 0.02 * random.nextGaussian(), 0.02);
            Tape second = new Tape(b, 13 + 0.03 * random.nextGaussian(), 0.03);
            inside += holds(truth, TwoTapes.meetings(first, second).get(0)) ? 1 : 0;
        }
        assertThat((double) inside / count).as("seed " + Suite.seed()).isCloseTo(0.95, within(0.006));
    }

    private static boolean holds(TapeFix truth, MapPoint point) {
        ErrorEllipse ellipse = truth.error().holding95Percent();
        double axis = Math.toRadians(ellipse.majorAxisDegrees());
        double east = point.east() - truth.at().east();
        double north = point.north() - truth.at().north();
        double along = east * Math.sin(axis) + north * Math.cos(axis);
        double across = east * Math.cos(axis) - north * Math.sin(axis);
        return Math.hypot(along / ellipse.semiMajorMetres(), across / ellipse.semiMinorMetres()) <= 1;
    }
}
