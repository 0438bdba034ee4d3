package org.cupwright.holelocation.levelround;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Green;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Third;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Days;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.junit.jupiter.api.Test;

/**
 * First readings on an invented square green of twelve metres, played northwards. Four paces of 0.914 m from every edge
 * are 3.656 m, so that a hole may go on the quarter-metre spots from 3.75 to 8.25 m: 19 times 19 of them.
 */
class FirstReadingsTest {
    private static final double CELL = 0.0625;
    private static final double REACH = 0.6;

    private final Outline outline = Shapes.rectangle(0, 0, 12, 12);
    private final Hole hole = Hole.of("7", outline).withLineOfPlay(LineOfPlay.towards(outline, new Heading(0)));
    private final Optional<GreenFrame> frame = GreenFrame.of(hole, OnConvention.ALONG_CHORD);
    private final GreenJudgement judged = new GreenJudge(
                    new Green(hole, new LevelSpotsGround(List.of(), Policy.defaults())),
                    Days.dry(10),
                    Policy.defaults())
            .judgeGreen();

    private FirstReadings readings(MapPoint... read) {
        return new FirstReadings(judged, frame, List.of(read), REACH);
    }

    private static List<MapPoint> places(LevelRound round) {
        return round.spots().stream().map(RoundSpot::at).toList();
    }

    private List<Third> thirds(LevelRound round) {
        return round.spots().stream()
                .map(spot -> spot.place().map(PlaceOnGreen::third).orElseThrow())
                .toList();
    }

    @Test
    void allGroundOnWhichAHoleMayGoIsOpen() {
        LevelRound round = readings().round(1);
        assertThat(round.undecidedSquareMetres()).isCloseTo(361 * CELL, within(1e-9));
        // about it lie the spots (i, j)/4 m with i² + j² ≤ (0.6 · 4)² = 5.76: 1 + 4 + 4 + 4 + 8
        assertThat(round.spots()).hasSize(1);
        assertThat(round.spots().get(0).candidateOf()).isEmpty();
    }

    @Test
    void whatAReadingReachesIsNoLongerOpen() {
        LevelRound round = readings(new MapPoint(6, 6)).round(1);
        assertThat(round.undecidedSquareMetres()).isCloseTo((361 - 21) * CELL, within(1e-9));
        LevelRound between = readings(new MapPoint(6.125, 6.125)).round(1);
        // odd eighths i, j with i² + j² ≤ (0.6 · 8)² = 23.04: (±1, ±1) and (±1, ±3), (±3, ±1), (±3, ±3)
        assertThat(between.undecidedSquareMetres()).isCloseTo((361 - 16) * CELL, within(1e-9));
    }

    @Test
    void theFirstReadingsGoToFrontMiddleAndBackAndAreWalkedFromTheFront() {
        LevelRound round = readings().round(3);
        assertThat(thirds(round)).containsExactlyInAnyOrder(Third.FRONT, Third.MIDDLE, Third.BACK);
        // most room in front is farthest from the edge, on the row next to the middle third, which begins at 4 m
        assertThat(round.spots().get(0).at().north()).isEqualTo(3.75);
    }

    @Test
    void aThirdThatHasReadingsWaits() {
        MapPoint front = new MapPoint(6, 3.75);
        assertThat(thirds(readings(front).round(1))).containsExactly(Third.MIDDLE);
        MapPoint middle = new MapPoint(6, 6);
        assertThat(thirds(readings(front, middle).round(1))).containsExactly(Third.BACK);
        // read outside the green: no third's
        assertThat(thirds(readings(new MapPoint(6, -3)).round(1))).containsExactly(Third.FRONT);
    }

    @Test
    void ofThirdsReadAlikeTheForemostGoesFirst() {
        LevelRound round = readings(new MapPoint(6, 3), new MapPoint(3.75, 6), new MapPoint(6, 9))
                .round(1);
        assertThat(thirds(round)).containsExactly(Third.FRONT);
    }

    @Test
    void readingsStandAMetreAndAHalfApartAndRunOutOfRoom() {
        List<MapPoint> many = places(readings().round(50));
        assertThat(many).hasSizeBetween(9, 16); // 4.5 m by 4.5 m: at least 3 × 3 as far apart, at most 4 × 4
        for (MapPoint one : many) {
            assertThat(many).allMatch(other -> other.equals(one) || other.distanceMetres(one) >= 1.5);
        }
        double covered = 0;
        for (RoundSpot spot : readings().round(50).spots()) {
            covered += spot.expectedSquareMetres();
        }
        assertThat(readings().round(50).expectedSquareMetres()).isCloseTo(covered, within(1e-9));
    }

    @Test
    void aReadingIsExpectedToDecideTheOpenGroundInItsReach() {
        LevelRound round = readings().round(2);
        RoundSpot middle = round.spots().get(1);
        int reached = 0;
        for (int i = 0; i < 19; i++) {
            for (int j = 0; j < 19; j++) {
                double east = 3.75 + i * 0.25 - middle.at().east();
                double north = 3.75 + j * 0.25 - middle.at().north();
                reached += Math.hypot(east, north) <= REACH ? 1 : 0;
            }
        }
        assertThat(middle.expectedSquareMetres()).isCloseTo(reached * CELL, within(1e-9));
        assertThat(round.expectedSquareMetres())
                .isCloseTo(middle.expectedSquareMetres() + round.spots().get(0).expectedSquareMetres(), within(1e-9));
    }

    @Test
    void withoutALineOfPlayThereAreNoThirdsAndTheMiddleHasMostRoom() {
        FirstReadings unknown = new FirstReadings(judged, Optional.empty(), List.of(), REACH);
        LevelRound one = unknown.round(1);
        assertThat(one.spots())
                .containsExactly(new RoundSpot(new MapPoint(6, 6), Optional.empty(), Optional.empty(), 21 * CELL));
        // then the corners of the open ground, √(2.25² + 2.25²) = 3.18 m from the middle, the walk from the south
        List<MapPoint> five = places(unknown.round(5));
        assertThat(five)
                .containsExactlyInAnyOrder(
                        new MapPoint(6, 6),
                        new MapPoint(3.75, 3.75),
                        new MapPoint(8.25, 3.75),
                        new MapPoint(3.75, 8.25),
                        new MapPoint(8.25, 8.25));
        assertThat(five.get(0).north()).isEqualTo(3.75);
    }
}
