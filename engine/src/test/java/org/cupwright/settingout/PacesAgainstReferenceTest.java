package org.cupwright.settingout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.Policy;
import org.cupwright.testing.RandomGreens;
import org.cupwright.testing.Shapes;
import org.cupwright.testing.Suite;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

/**
 * How far half-pace rounding leads beside the position, on random invented greens with lobes and bunkers, for positions
 * of three paces and more from the edge. Rounding on and side moves each by at most a quarter of a pace; along slanted
 * edges that grows.
 */
class PacesAgainstReferenceTest {
    private static final double PACE_METRES = PlacePolicy.PACE_METRES.defaultValue();

    @Test
    void roundedPacesLeadCloseToThePosition() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("half paces along the chord", 5_000, 300);
        List<Double> offs = new ArrayList<>();
        int doubtful = 0;
        for (int i = 0; i < count; i++) {
            Hole hole = RandomGreens.hole(random);
            SettingOut settingOut = SettingOut.of(hole, Policy.defaults());
            Directions directions = settingOut.directions(wellInside(hole, random));
            if (settingOut.leadToOnePlace(directions)) {
                offs.add(PacedBack.nearestMetres(hole, Policy.defaults(), directions));
            } else {
                doubtful++;
            }
        }
        offs.sort(Double::compare);
        System.out.printf(
                "half paces lead beside the position: median %.3f m, p95 %.3f m; not to one place: %d of %d%n",
                offs.get(offs.size() / 2), offs.get(offs.size() * 95 / 100), doubtful, count);
        assertThat(offs.get(offs.size() / 2)).as("median, seed " + Suite.seed()).isLessThan(0.3);
        assertThat(offs.get(offs.size() * 95 / 100))
                .as("p95, seed " + Suite.seed())
                .isLessThan(0.6);
        // these greens have deeper arms than most, and bunkers inside: about a fifth of their positions need more than
        // paces
        assertThat(doubtful).as("not to one place, seed " + Suite.seed()).isLessThan(count / 4);
    }

    @Test
    void onARoundGreenPacesAlwaysLeadToOnePlace() {
        Random random = new Random(Suite.seed());
        Hole hole = RandomGreens.holeOn(Shapes.circle(500_000, 4_000_000, 13), new Heading(75), List.of());
        SettingOut settingOut = SettingOut.of(hole, Policy.defaults());
        int count = Suite.count("half paces on a round green", 1_000, 50);
        for (int i = 0; i < count; i++) {
            Directions directions = settingOut.directions(wellInside(hole, random));
            assertThat(settingOut.leadToOnePlace(directions))
                    .as(directions + ", seed " + Suite.seed())
                    .isTrue();
        }
    }

    @Test
    void squaredOffRoundingNeverMovesOnByMoreThanAQuarterOfAPace() {
        Random random = new Random(Suite.seed());
        Policy policy = Policy.defaults().with(PlacePolicy.ON_CONVENTION, OnConvention.SQUARED_OFF_FRONT);
        int count = Suite.count("half paces squared off", 5_000, 300);
        for (int i = 0; i < count; i++) {
            Hole hole = RandomGreens.hole(random);
            SettingOut settingOut = SettingOut.of(hole, policy);
            GreenFrame frame =
                    GreenFrame.of(hole, OnConvention.SQUARED_OFF_FRONT).orElseThrow();
            MapPoint position = wellInside(hole, random);
            PacedPlace place = settingOut.directions(position).place().orElseThrow();
            MapPoint led = PacedBack.places(hole, policy, place).stream()
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("paces lead nowhere, seed " + Suite.seed()));
            assertThat(Math.abs(frame.forwardMetres(led) - frame.forwardMetres(position)))
                    .as("case " + i + ", seed " + Suite.seed())
                    .isLessThanOrEqualTo(PACE_METRES / 4 + 1e-9);
        }
    }

    private static MapPoint wellInside(Hole hole, Random random) {
        while (true) {
            MapPoint point = RandomGreens.pointOn(hole.green(), random);
            if (hole.green().distanceToEdgeMetres(point) >= 3 * PACE_METRES) {
                return point;
            }
        }
    }
}
