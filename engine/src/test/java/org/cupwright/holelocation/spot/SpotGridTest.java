package org.cupwright.holelocation.spot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Coverage;
import org.cupwright.green.Green;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Surface;
import org.cupwright.policy.Policy;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;
import org.junit.jupiter.api.Test;

/** A green of 2 by 1 m without its north-east half: nine columns and five rows of spots, 25 of them on it. */
class SpotGridTest {
    private static final Outline TRIANGLE = Shapes.polygon(0, 0, 2, 0, 0, 1);
    private static final GreenSpeed SPEED = new GreenSpeed(10);

    private static GreenMeasurement measured(Outline outline, ModelGround ground) {
        return GreenMeasurement.measure(new Green(Hole.of("1", outline), ground), SPEED, Policy.defaults());
    }

    private final SpotGrid grid =
            measured(TRIANGLE, ModelGround.exact(MadeSurface.plane(0.01, 0))).grid();

    @Test
    void itsCellsGoRowByRowFromTheSouthWest() {
        // nine, seven, five, three and one, the hypotenuse included
        assertThat(grid.size()).isEqualTo(25);
        assertThat(grid.cells().limit(10)).containsExactly(0, 1, 2, 3, 4, 5, 6, 7, 8, 9);
        assertThat(grid.cells().toArray())
                .hasSize(25)
                .contains(15, 18, 22, 27, 29, 36)
                .doesNotContain(16, 17, 23, 30);
        assertThat(grid.spots().get(9).at()).isEqualTo(new MapPoint(0, 0.25));
        assertThat(grid.get(15).at()).isEqualTo(new MapPoint(1.5, 0.25));
        assertThatNullPointerException().isThrownBy(() -> grid.get(16)).withMessageContaining("cell 16 lies outside");
    }

    @Test
    void aCellIsFoundByColumnAndRowWithinTheOutlineAlone() {
        assertThat(grid.find(6, 1).orElseThrow().at()).isEqualTo(new MapPoint(1.5, 0.25));
        assertThat(grid.find(0, 0)).isPresent();
        assertThat(grid.find(8, 0)).isPresent();
        assertThat(grid.find(0, 4)).isPresent();
        assertThat(grid.find(7, 1)).isEmpty();
        assertThat(grid.find(-1, 1)).isEmpty();
        assertThat(grid.find(9, 0)).isEmpty();
        assertThat(grid.find(0, -1)).isEmpty();
        assertThat(grid.find(0, 5)).isEmpty();
    }

    @Test
    void aSpotIsFoundByItsExactPlaceAlone() {
        assertThat(grid.findExactly(new MapPoint(0, 0))).isPresent();
        assertThat(grid.findExactly(new MapPoint(0.5, 0.25)).orElseThrow().at()).isEqualTo(new MapPoint(0.5, 0.25));
        assertThat(grid.findExactly(new MapPoint(0.51, 0.25))).isEmpty();
        assertThat(grid.findExactly(new MapPoint(1.75, 0.75))).isEmpty();
        assertThat(grid.findExactly(new MapPoint(-9, 0.25))).isEmpty();
    }

    @Test
    void aSpotKnowsItsCellIfItIsOneOfTheGrid() {
        assertThat(grid.cellOf(grid.get(0))).isZero();
        assertThat(grid.cellOf(grid.get(15))).isEqualTo(15);
        assertThat(grid.cellOf(grid.meter().at(new MapPoint(1.5, 0.25)))).isEqualTo(-1);
        assertThat(grid.cellOf(grid.meter().at(new MapPoint(-9, 0)))).isEqualTo(-1);
    }

    /** Four tenths of what holds a ball at 10 ft, 7.83 %, are 3.1 %: above it the wider disc is asked too. */
    @Test
    void onSteepGroundTheWiderDiscIsAskedToo() {
        SpotGround gentle = grid.get(0);
        assertThat(gentle.slope()).isCloseTo(0.01, within(1e-9));
        assertThat(gentle.slopePercent()).isCloseTo(1, within(1e-7));
        assertThat(gentle.bend()).isPresent();
        assertThat(gentle.wideBend()).isEmpty();
        SpotGround steep = measured(TRIANGLE, ModelGround.exact(MadeSurface.plane(0.07, 0)))
                .grid()
                .get(0);
        assertThat(steep.wideBend()).isPresent();
    }

    @Test
    void unknownGroundHasNoSlope() {
        SpotGround unknown = measured(
                        TRIANGLE, ModelGround.exact(MadeSurface.plane(0.01, 0)).withGap(Shapes.circle(0, 0, 0.1)))
                .grid()
                .get(0);
        assertThat(unknown.coverage()).isEqualTo(Coverage.NOT_SURVEYED);
        assertThat(unknown.known()).isFalse();
        assertThat(unknown.slope()).isNaN();
        assertThat(unknown.leave().known()).isFalse();
        assertThat(grid.get(0).known()).isTrue();
    }

    @Test
    void forTheSameSpeedNothingIsMeasuredAnew() {
        GreenMeasurement ten = measured(TRIANGLE, ModelGround.exact(MadeSurface.plane(0.01, 0)));
        assertThat(ten.at(SPEED, Policy.defaults())).isSameAs(ten);
        GreenMeasurement twelve = ten.at(new GreenSpeed(12), Policy.defaults());
        assertThat(twelve.speed()).isEqualTo(new GreenSpeed(12));
        assertThat(twelve.grid()).isNotSameAs(ten.grid());
        assertThat(ten.withDrawn(List.of()).grid()).isSameAs(ten.grid());
    }

    /** Slope 1 % more for every metre from the middle: steeper than 3 % beyond 3 m to the east and to the west. */
    private static final Surface TROUGH = (east, north, out) -> {
        out.z = 0.005 * east * east;
        out.zx = 0.01 * east;
        out.zy = 0;
        out.zxx = 0.01;
        out.zxy = 0;
        out.zyy = 0;
    };

    private static double toSteep(SpotGrid spots, double limit, double east, double north) {
        SteepGround steep = new SteepGround(spots, SpotGround::slope, limit);
        return steep.metresFrom(spots.findExactly(new MapPoint(east, north)).orElseThrow());
    }

    @Test
    void steepGroundBeginsWhereTheSlopeIsTheLimit() {
        SpotGrid trough = measured(Shapes.rectangle(-4, -1, 4, 1), ModelGround.exact(TROUGH))
                .grid();
        assertThat(toSteep(trough, 0.031, 0, 0)).isCloseTo(3.1, within(1e-3));
        assertThat(toSteep(trough, 0.031, 1, 0.5)).isCloseTo(2.1, within(1e-3));
        assertThat(toSteep(trough, 0.031, -2.5, 0)).isCloseTo(0.6, within(1e-3));
        assertThat(toSteep(trough, 0.031, 3.5, 0)).isZero();
        assertThat(toSteep(trough, 0.05, 0, 0)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    /** A gap from 0.9 to 3.35 m: the first steep spots beyond are those at 3.5 m. */
    @Test
    void steepSpotsBesideUnknownGroundCountByThemselves() {
        Outline gap = Shapes.rectangle(0.9, -2, 3.35, 2);
        SpotGrid trough = measured(
                        Shapes.rectangle(-1, -1, 4, 1),
                        ModelGround.exact(TROUGH).withGap(gap))
                .grid();
        assertThat(toSteep(trough, 0.031, 0, 0)).isEqualTo(3.5);
        assertThat(toSteep(trough, 0.031, 0.5, 1)).isEqualTo(3);
    }
}
