package org.cupwright.holelocation.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.Surface;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

class LeaveMeterTest {
    private static final GreenSpeed SPEED = new GreenSpeed(10);
    private static final Outline WIDE = Shapes.circle(0, 0, 10);

    private static Leave at(double east, double north, double slope, Outline green, boolean surveyed) {
        Optional<Surface> surface = surveyed ? Optional.of(MadeSurface.plane(0, slope)) : Optional.empty();
        LeaveMeter meter = new LeaveMeter(surface, new PuttingArea(Hole.of("1", green)), SPEED, Policy.defaults());
        return meter.at(new MapPoint(east, north), new PlaneFit(0, slope, 0, 0, 0));
    }

    @Test
    void onTheLevelEveryBallRunsTheCoursesDistancePast() {
        Leave leave = at(0, 0, 0, WIDE, true);
        assertThat(leave.worstMetres()).isCloseTo(0.30, offset(1e-4));
        assertThat(leave.meanMetres()).isCloseTo(0.30, offset(1e-4));
    }

    @Test
    void downAPlaneTheWorstBallFollowsTheClosedForm() {
        double expected = 0.30 * SPEED.rollingResistance() / (SPEED.rollingResistance() - 0.03);
        assertThat(at(0, 0, 0.03, WIDE, true).worstMetres()).isCloseTo(expected, offset(5e-4));
        assertThat(at(0, 0, 0.03, WIDE, false).worstMetres()).isCloseTo(expected, offset(1e-4));
    }

    @Test
    void whereABallDoesNotStopItCountsAsTheFarthest() {
        assertThat(at(0, 0, 0.09, WIDE, true).worstMetres()).isEqualTo(LeaveMeter.FARTHEST_METRES);
        assertThat(at(0, 0, 0.09, WIDE, false).worstMetres()).isEqualTo(LeaveMeter.FARTHEST_METRES);
    }

    @Test
    void aBallThatRunsOffTheGreenCountsAsTheFarthest() {
        Outline green = Shapes.rectangle(-10, -0.4, 10, 10);
        assertThat(at(0, 0, 0.03, green, true).worstMetres()).isEqualTo(LeaveMeter.FARTHEST_METRES);
        assertThat(at(0, 0, 0.03, green, false).worstMetres()).isEqualTo(LeaveMeter.FARTHEST_METRES);
    }

    @Test
    void aHeadingFromWhereNoPuttCanStartDoesNotCount() {
        // of the 36 starts on a circle of 3 m about a spot on the straight edge, 19 lie on the green
        assertThat(at(0, 0, 0, Shapes.rectangle(-10, -0.001, 10, 10), true).headings())
                .isEqualTo(19);
        assertThat(at(0, 0, 0, Shapes.circle(0, 0, 2), true)).isEqualTo(Leave.UNKNOWN);
    }
}
