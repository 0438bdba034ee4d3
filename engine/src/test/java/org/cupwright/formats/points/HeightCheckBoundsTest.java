package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.InventedMap;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Message;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;

/** The last heights that a green can have, and the first that it cannot. */
class HeightCheckBoundsTest {
    private final Hole hole = Hole.of("4", Shapes.rectangle(-12, -12, 12, 12));
    private final List<Finding> findings = new ArrayList<>();

    /** Fifty points a metre apart, five rows of ten, at 100 m but for the last of them. */
    private static SurveyPoints fifty(double... last) {
        double[] height = new double[50];
        Arrays.fill(height, 100);
        System.arraycopy(last, 0, height, 50 - last.length, last.length);
        return rows(height);
    }

    private static SurveyPoints rows(double[] height) {
        double[] east = IntStream.range(0, 50).mapToDouble(i -> i % 10).toArray();
        double[] north = IntStream.range(0, 50).mapToDouble(i -> i / 10).toArray();
        return SurveyPoints.scattered(east, north, height);
    }

    private static SurveyPoints tilted(double riseOverRun) {
        return rows(
                IntStream.range(0, 50).mapToDouble(i -> riseOverRun * (i % 10)).toArray());
    }

    private Finding trouble(SurveyPoints points) {
        return InventedMap.troubleOf(() -> HeightCheck.check(hole, points, findings));
    }

    @Test
    void ofFiftyPointsTheHighestAndTheLowestAreLeftOut() {
        assertThat(HeightCheck.check(hole, fifty(91, 109), findings)).isLessThan(0.4);
        assertThat(trouble(fifty(109, 109)).value()).isEqualTo(new Message.Length(9));
        assertThat(trouble(fifty(91, 91)).value()).isEqualTo(new Message.Length(9));
    }

    @Test
    void eightMetresAreTheMostAGreenCanRise() {
        assertThat(HeightCheck.check(hole, fifty(108, 108), findings)).isLessThan(0.4);
        Finding finding = trouble(fifty(108.5, 108.5));
        assertThat(finding.kind()).isEqualTo(FindingKind.HEIGHTS_IMPOSSIBLE);
        assertThat(finding.where()).isEqualTo(Where.hole("4"));
        assertThat(finding.value()).isEqualTo(new Message.Length(8.5));
        assertThat(finding.tryThis().arguments()).containsExactly(new Message.Length(8));
    }

    @Test
    void aSlopeThatNoGreenHasIsToldInPercent() {
        assertThat(HeightCheck.check(hole, tilted(0.39), findings)).isCloseTo(0.39, within(1e-9));
        Finding finding = trouble(tilted(0.41));
        assertThat(finding.kind()).isEqualTo(FindingKind.HEIGHTS_IMPOSSIBLE);
        assertThat(((Message.Slope) finding.value()).percent()).isCloseTo(41, within(1e-6));
        assertThat(finding.tryThis().arguments()).containsExactly(new Message.Slope(40));
    }

    @Test
    void aSlopeBelowSixPercentIsNotAskedAbout() {
        assertThat(HeightCheck.check(hole, tilted(0.059), findings)).isCloseTo(0.059, within(1e-9));
        assertThat(findings).isEmpty();
        assertThat(HeightCheck.check(hole, tilted(0.061), findings)).isCloseTo(0.061, within(1e-9));
        assertThat(findings).extracting(Finding::kind).containsExactly(FindingKind.HEIGHTS_STEEP);
    }

    private List<Finding> all(double... steepness) {
        List<Finding> told = new ArrayList<>();
        HeightCheck.checkAll(Arrays.stream(steepness).boxed().toList(), told);
        return told;
    }

    @Test
    void ofSixGreensTheFourthSteepestUpwardsDecides() {
        Finding steep = Finding.of(FindingKind.GREENS_STEEP, Where.file(), new Message.Slope(6.25));
        assertThat(all(0.09, 0.01, 0.08, 0.03, 0.02, 0.0625)).containsExactly(steep);
        assertThat(all(0.09, 0.01, 0.08, 0.03, 0.02, 0.04)).isEmpty();
        assertThat(all(0.09, 0.09, 0.09, 0.09, 0.09)).as("five greens").isEmpty();
        assertThat(all()).isEmpty();
    }
}
