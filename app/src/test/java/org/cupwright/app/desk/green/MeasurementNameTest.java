package org.cupwright.app.desk.green;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.LevelReading;
import org.cupwright.green.SurveyPoints;
import org.cupwright.holelocation.HoldPolicy;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class MeasurementNameTest {
    private static final Hole HOLE = Hole.of("4", new Outline(square(10)));
    private static final SurveyPoints POINTS = points(0.25);
    private static final List<LevelReading> READINGS = List.of(new LevelReading(new MapPoint(3, 4), 0.01, 0.02, 0.003));
    private static final GreenSpeed SPEED = new GreenSpeed(10);
    private static final Policy POLICY = Policy.defaults();

    private static Polygon square(double side) {
        return new GeometryFactory().createPolygon(new Coordinate[] {
            new Coordinate(0, 0),
            new Coordinate(side, 0),
            new Coordinate(side, side),
            new Coordinate(0, side),
            new Coordinate(0, 0)
        });
    }

    private static SurveyPoints points(double lastHeight) {
        return SurveyPoints.scattered(
                new double[] {0, 1, 2}, new double[] {0, 2, 1}, new double[] {0.1, 0.2, lastHeight});
    }

    @Test
    void theSameMeasurementHasTheSameName() {
        assertThat(MeasurementName.of(HOLE, points(0.25), List.copyOf(READINGS), new GreenSpeed(10), POLICY))
                .isEqualTo(MeasurementName.of(HOLE, POINTS, READINGS, SPEED, POLICY))
                .matches("[0-9a-f]{64}");
    }

    /** Papers, languages, how far holes move and what becomes of turf are of no matter to what is measured. */
    @Test
    void whatIsSetOfWhatComesAfterItDoesNot() {
        Policy others = POLICY.with(PaperPolicy.PUBLIC_SHEET, true)
                .with(DeskPolicy.LANGUAGE, "es")
                .with(RotationPolicy.YESTERDAY_LEAST_METRES, 7.0)
                .with(TurfPolicy.WEAR_REST_DAYS, 21);
        assertThat(MeasurementName.of(HOLE, POINTS, READINGS, SPEED, others))
                .isEqualTo(MeasurementName.of(HOLE, POINTS, READINGS, SPEED, POLICY));
    }

    @Test
    void whateverTheMeasurementDependsOnChangesItsName() {
        Hole larger = Hole.of("4", new Outline(square(11)));
        Hole fallingOff = HOLE.withHazards(List.of(new Hazard(Hazard.Kind.FALL_OFF, square(2))));
        Hole bunkered = HOLE.withHazards(List.of(new Hazard(Hazard.Kind.BUNKER, square(2))));
        SurveyPoints grid = SurveyPoints.grid(
                1, 0.01, new double[] {0, 1, 2}, new double[] {0, 2, 1}, new double[] {0.1, 0.2, 0.25});
        Set<String> names = new TreeSet<>(List.of(
                MeasurementName.of(HOLE, POINTS, READINGS, SPEED, POLICY),
                MeasurementName.of(larger, POINTS, READINGS, SPEED, POLICY),
                MeasurementName.of(fallingOff, POINTS, READINGS, SPEED, POLICY),
                MeasurementName.of(bunkered, POINTS, READINGS, SPEED, POLICY),
                MeasurementName.of(HOLE, points(Math.nextUp(0.25)), READINGS, SPEED, POLICY),
                MeasurementName.of(HOLE, grid, READINGS, SPEED, POLICY),
                MeasurementName.of(HOLE, POINTS, List.of(), SPEED, POLICY),
                MeasurementName.of(HOLE, POINTS, READINGS, new GreenSpeed(10.5), POLICY),
                MeasurementName.of(HOLE, POINTS, READINGS, SPEED, POLICY.with(HoldPolicy.PAST_METRES, 0.5))));
        assertThat(names).hasSize(9);
    }
}
