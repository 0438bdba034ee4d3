package org.cupwright.holelocation.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Green;
import org.cupwright.green.GroundItem;
import org.cupwright.green.MadeSurface;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.ModelGround;
import org.cupwright.testing.Shapes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** On a square green of 24 m with resting holes strewn over it, against a search that asks how good every spot is. */
class SpotWithRoomTest {
    private static final double HALF_A_PACE = 0.457;

    private static GreenJudge judge(GroundItem... items) {
        return new GreenJudge(
                new Green(
                        Hole.of("1", Shapes.rectangle(-12, -12, 12, 12)),
                        ModelGround.exact(MadeSurface.plane(0.01, 0))),
                Days.dry(10, items),
                Policy.defaults());
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void isTheNearestOfAllThatHaveRoom(long seed) {
        Random random = new Random(seed);
        GroundItem[] holes = IntStream.range(0, 14)
                .mapToObj(i -> Days.restingHole(16 * random.nextDouble() - 8, 16 * random.nextDouble() - 8, 1 + i))
                .toArray(GroundItem[]::new);
        GreenJudgement green = judge(holes).judgeGreen();
        List<Judgement> good = green.candidates();
        Judgement position = good.get(random.nextInt(good.size()));

        Optional<MapPoint> found = SpotWithRoom.nearest(position, green, HALF_A_PACE, at -> at.north() < 4);

        OptionalDouble nearest = good.stream()
                .filter(spot -> spot.verdict().compareTo(position.verdict()) <= 0)
                .filter(spot -> spot.position().north() < 4)
                .filter(spot -> roomAsGoodAs(position, spot, green) >= HALF_A_PACE)
                .mapToDouble(spot -> spot.position().distanceMetres(position.position()))
                .min();
        assertThat(found.isPresent()).isEqualTo(nearest.isPresent());
        found.ifPresent(at -> {
            assertThat(at.distanceMetres(position.position())).isEqualTo(nearest.getAsDouble());
            assertThat(at.north()).isLessThan(4);
        });
    }

    /** How far from a spot every other is no worse than the position asked about, m. */
    private static double roomAsGoodAs(Judgement position, Judgement spot, GreenJudgement green) {
        double nearest = GoodWithin.FARTHEST_METRES;
        for (double east = -1; east <= 1; east += 0.25) {
            for (double north = -1; north <= 1; north += 0.25) {
                MapPoint at = new MapPoint(
                        spot.position().east() + east, spot.position().north() + north);
                boolean worse = green.findSpot(at).isEmpty()
                        || green.findVerdict(green.lattice().nearest(at))
                                .filter(verdict -> verdict.compareTo(position.verdict()) <= 0)
                                .isEmpty();
                nearest = worse ? Math.min(nearest, Math.hypot(east, north)) : nearest;
            }
        }
        return Math.ceil(nearest / 0.25 - 1e-9) * 0.25 - 0.25;
    }

    /** By the edge nothing is good; the nearest good spot is looked for, not one that is as bad. */
    @Test
    void isNoWorseThanWhatIsWantedWhateverThePlaceIs() {
        GreenJudge judge = judge();
        MapPoint byTheEdge = new MapPoint(-11.5, 1);
        assertThat(judge.judge(byTheEdge).verdict()).isEqualTo(Verdict.FAIL);
        GreenJudgement green = judge.judgeGreen();

        MapPoint found = SpotWithRoom.nearest(byTheEdge, Verdict.PASS, green, HALF_A_PACE, at -> true)
                .orElseThrow();

        double nearest = green.candidates().stream()
                .filter(spot -> spot.verdict() == Verdict.PASS)
                .filter(spot -> roomAsGoodAs(spot, spot, green) >= HALF_A_PACE)
                .mapToDouble(spot -> spot.position().distanceMetres(byTheEdge))
                .min()
                .orElseThrow();
        assertThat(judge.judge(found).verdict()).isEqualTo(Verdict.PASS);
        assertThat(found.distanceMetres(byTheEdge)).isEqualTo(nearest);
    }

    @Test
    void thereIsNoneWhereEveryPlaceIsTaken() {
        GreenJudge judge = judge();
        assertThat(SpotWithRoom.nearest(
                        judge.judge(new MapPoint(0, 0)), judge.judgeGreen(), HALF_A_PACE, at -> at.east() > 8))
                .isEmpty();
    }
}
