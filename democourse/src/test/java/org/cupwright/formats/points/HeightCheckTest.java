package org.cupwright.formats.points;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.Hole;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoint;
import org.cupwright.green.SurveyPoints;
import org.cupwright.units.LengthUnit;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

/** Heights of the invented course, in metres and as if they had been written in feet. */
class HeightCheckTest {
    private final DemoCourse made = new DemoCourse(1);

    /** Half a metre apart over the green's rectangle. */
    private static SurveyPoints points(Hole hole, Surface surface, double scale) {
        List<SurveyPoint> points = new ArrayList<>();
        Envelope box = hole.green().polygon().getEnvelopeInternal();
        Jet jet = new Jet();
        for (double east = box.getMinX(); east <= box.getMaxX(); east += 0.5) {
            for (double north = box.getMinY(); north <= box.getMaxY(); north += 0.5) {
                surface.at(east, north, jet);
                points.add(new SurveyPoint(east, north, jet.z * scale));
            }
        }
        return SurveyPoints.scattered(points);
    }

    private List<Finding> findings(int greens, double scale) {
        List<Finding> findings = new ArrayList<>();
        List<Double> steepness = new ArrayList<>();
        for (Hole hole : made.course().holes().subList(0, greens)) {
            SurveyPoints points = points(hole, made.trueSurface(hole.id()), scale);
            steepness.add(HeightCheck.check(hole, points, findings));
        }
        HeightCheck.checkAll(steepness, findings);
        return findings;
    }

    @Test
    void metresAreNotAskedAbout() {
        assertThat(findings(18, 1)).isEmpty();
    }

    @Test
    void feetAreFoundByTheCourseWhereSingleGreensDoNotShowThem() {
        List<Finding> findings = findings(18, LengthUnit.FOOT.fromMetres(1));
        assertThat(findings).extracting(Finding::kind).containsOnlyOnce(FindingKind.GREENS_STEEP);
        assertThat(findings).extracting(Finding::kind).contains(FindingKind.HEIGHTS_STEEP);
        assertThat(findings.size() - 1).as("greens found one by one").isLessThan(18);
    }

    @Test
    void fiveGreensAreNoCourseToJudgeBy() {
        assertThat(findings(5, LengthUnit.FOOT.fromMetres(1)))
                .extracting(Finding::kind)
                .doesNotContain(FindingKind.GREENS_STEEP);
    }

    /** Four quarters that fall to the middle: no plane, and steep all the same. */
    @Test
    void aBowlIsAsSteepAsItsParts() {
        Hole hole = made.course().holes().get(0);
        double east = hole.green().centroid().east();
        double north = hole.green().centroid().north();
        Surface bowl = (x, y, out) -> out.z = 0.08 * Math.hypot(x - east, y - north);
        SurveyPoints points = points(hole, bowl, 1);

        assertThat(RoughSlopes.whole(points).orElseThrow()).isLessThan(0.03);
        assertThat(RoughSlopes.middle(points).orElseThrow()).isBetween(0.065, 0.081);
        List<Finding> findings = new ArrayList<>();
        HeightCheck.check(hole, points, findings);
        assertThat(findings).extracting(Finding::kind).containsExactly(FindingKind.HEIGHTS_STEEP);
    }

    @Test
    void pointsOnALineHaveNoSlope() {
        SurveyPoints line = SurveyPoints.scattered(IntStream.range(0, 40)
                .mapToObj(i -> new SurveyPoint(0.1 * i, 0.2 * i, 0.05 * i))
                .toList());
        assertThat(RoughSlopes.whole(line)).isEmpty();
        assertThat(RoughSlopes.middle(line)).isEmpty();
    }
}
