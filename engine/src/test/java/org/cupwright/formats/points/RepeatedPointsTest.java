package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.SurveyPoints;
import org.cupwright.message.Message;
import org.junit.jupiter.api.Test;

class RepeatedPointsTest {
    private final List<Finding> findings = new ArrayList<>();

    /** What is kept of points given as east, north, height, east, north, … */
    private SurveyPoints kept(double... numbers) {
        return RepeatedPoints.dropped(
                "4", SurveyPoints.scattered(every(0, numbers), every(1, numbers), every(2, numbers)), findings);
    }

    private static double[] every(int first, double... numbers) {
        return IntStream.range(0, numbers.length / 3)
                .mapToDouble(i -> numbers[3 * i + first])
                .toArray();
    }

    private static double[] heights(SurveyPoints points) {
        return IntStream.range(0, points.count())
                .mapToDouble(points::heightMetres)
                .toArray();
    }

    @Test
    void ofPointsThatAllDifferNothingIsSaid() {
        assertThat(kept(0, 0, 1, 1, 0, 1, 0, 1, 1).count()).isEqualTo(3);
        assertThat(findings).isEmpty();
    }

    @Test
    void aPointThatStandsThreeTimesIsKeptOnce() {
        assertThat(heights(kept(0, 0, 1, 0, 0, 1, 5, 5, 2, 0, 0, 1))).containsExactly(1, 2);
        assertThat(findings).containsExactly(Finding.of(FindingKind.POINTS_TWICE, Where.hole("4"), 2));
    }

    @Test
    void placesLessThanHalfAMillimetreApartAreTheSame() {
        assertThat(kept(0, 0, 1, 0.0004, 0, 1, 0, 0.0004, 1).count()).isEqualTo(1);
        assertThat(kept(0, 0, 1, 0.0006, 0, 1, 0, 0.0006, 1).count()).isEqualTo(3);
    }

    @Test
    void heightsFiveCentimetresApartAreBothKeptAndNotTold() {
        assertThat(heights(kept(0, 0, 0, 0, 0, 0.05))).containsExactly(0, 0.05);
        assertThat(findings).isEmpty();
    }

    @Test
    void ofHeightsThatDisagreeTheWorstIsToldAndHowManyThereAre() {
        SurveyPoints kept = kept(1, 1, 0, 1, 1, 0.0625, 2, 2, 0, 2, 2, 0.5, 3, 3, 0.5, 3, 3, 0, 4, 4, 0, 4, 4, 0.25);
        assertThat(kept.count()).isEqualTo(8);
        assertThat(findings)
                .containsExactly(Finding.of(FindingKind.HEIGHTS_DISAGREE, Where.hole("4"), new Message.Length(0.5))
                        .at(new MapPoint(2, 2)) // the first of two that are equally far apart
                        .trying(4));
    }

    @Test
    void everyFurtherHeightIsHeldAgainstTheFirst() {
        double[] same = DoubleStream.of(1, 1, 0, 1, 1, 0.04, 1, 1, 0.08).toArray();
        assertThat(kept(same).count()).isEqualTo(3);
        assertThat(findings).extracting(Finding::value).containsExactly(new Message.Length(0.08));
    }
}
