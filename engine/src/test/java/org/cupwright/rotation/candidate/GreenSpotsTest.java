package org.cupwright.rotation.candidate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;

/** Invented greens of thirty metres, judged every quarter or half metre. */
class GreenSpotsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final GroundOnDay CLEAR = GroundOnDay.clear(DAY);

    @Test
    void keepsOneOfEachSquareAndKind() {
        List<JudgedSpot> spots = new ArrayList<>();
        for (double east = 10.125; east < 20; east += 0.25) {
            for (double north = 10.125; north < 20; north += 0.25) {
                spots.add(spot(east, north, Verdict.PASS));
            }
        }
        List<Candidate> thinned = new GreenSpots(spots, CLEAR).thinned(1);
        assertThat(spots).hasSize(1600);
        assertThat(thinned).hasSize(100);
        assertThat(thinned.get(0).at().east()).isCloseTo(10.5, within(0.13));
        assertThat(thinned.get(0).at().north()).isCloseTo(10.5, within(0.13));
    }

    @Test
    void losesNoKindThatAGreenOffers() {
        JudgedSpot middle = spot(15.1, 19.9, Verdict.PASS);
        JudgedSpot back = spot(15.2, 20.1, Verdict.CAUTION);
        List<Candidate> thinned = new GreenSpots(List.of(middle, back), CLEAR).thinned(5);
        assertThat(thinned).extracting(Candidate::verdict).containsExactly(Verdict.PASS, Verdict.CAUTION);
    }

    @Test
    void leavesOutWhatMayNotBeUsed() {
        List<JudgedSpot> spots = List.of(spot(12, 12, Verdict.FAIL), spot(14, 12, Verdict.NOT_SURVEYED));
        assertThat(new GreenSpots(spots, CLEAR).thinned(1)).isEmpty();
    }

    @Test
    void doesNotDependOnTheOrderOfTheSpots() {
        Random random = new Random(Suite.seed());
        List<JudgedSpot> spots = mixed(random, 800);
        List<Candidate> first = new GreenSpots(spots, CLEAR).thinned(1);
        Collections.shuffle(spots, random);
        assertThat(new GreenSpots(spots, CLEAR).thinned(1)).isEqualTo(first).isNotEmpty();
    }

    @Test
    void prefersGroundThatIsNotSaved() {
        GeometryFactory shapes = new GeometryFactory();
        GroundItem saved = new GroundItem(
                GroundItem.Kind.SAVED,
                shapes.toGeometry(new Envelope(12, 12.5, 12, 13)),
                Optional.empty(),
                Optional.of(DAY));
        List<JudgedSpot> spots = List.of(spot(12.4, 12.5, Verdict.PASS), spot(12.9, 12.9, Verdict.CAUTION));
        GreenSpots green = new GreenSpots(spots, new GroundOnDay(DAY, List.of(saved)));
        assertThat(green.thinned(1)).hasSize(1).noneMatch(Candidate::onSavedGround);
        assertThat(green.candidate(spots.get(0)).onSavedGround()).isTrue();
    }

    @Test
    void roomEndsAtTheNearestWorseSpot() {
        List<JudgedSpot> spots =
                List.of(spot(15, 15, Verdict.PASS), spot(16, 15, Verdict.CAUTION), spot(15, 17, Verdict.FAIL));
        GreenSpots green = new GreenSpots(spots, CLEAR);
        assertThat(green.candidate(spots.get(0)).goodWithinMetres()).isCloseTo(1, within(1e-12));
        assertThat(green.candidate(spots.get(1)).goodWithinMetres()).isCloseTo(Math.hypot(1, 2), within(1e-12));
        assertThat(green.candidate(spots.get(2)).goodWithinMetres()).isEqualTo(RoomAbout.REACH_METRES);
    }

    @Test
    void roomEndsAtTheEdge() {
        JudgedSpot spot =
                new JudgedSpot(MadeGreens.judgement(2, 2, Verdict.CAUTION, Optional.empty(), 1.25), Optional.empty());
        assertThat(new GreenSpots(List.of(spot), CLEAR).candidate(spot).goodWithinMetres())
                .isEqualTo(1.25);
    }

    /** Against the plain definition. */
    @Test
    void roomIsTheDistanceToTheNearestOfAllWorseSpots() {
        int cases = Suite.count("room about a spot", 50, 5);
        for (int i = 0; i < cases; i++) {
            long seed = Suite.seed() * 5_000_011 + i;
            List<JudgedSpot> spots = mixed(new Random(seed), 300);
            GreenSpots green = new GreenSpots(spots, CLEAR);
            for (JudgedSpot spot : spots) {
                double room = spots.stream()
                        .filter(other -> worse(other, spot))
                        .mapToDouble(other -> other.judgement()
                                .position()
                                .distanceMetres(spot.judgement().position()))
                        .min()
                        .orElse(3);
                assertThat(green.candidate(spot).goodWithinMetres())
                        .as("seed %d", seed)
                        .isEqualTo(Math.min(3, room));
            }
        }
    }

    private static boolean worse(JudgedSpot other, JudgedSpot spot) {
        Verdict mine = spot.judgement().verdict();
        Verdict its = other.judgement().verdict();
        return mine == Verdict.PASS ? its != Verdict.PASS : mine == Verdict.CAUTION && its.compareTo(mine) > 0;
    }

    private static List<JudgedSpot> mixed(Random random, int count) {
        List<JudgedSpot> spots = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Verdict verdict = List.of(Verdict.values()).get(random.nextInt(10) / 3);
            spots.add(spot(30 * random.nextDouble(), 30 * random.nextDouble(), verdict));
        }
        return spots;
    }

    private static JudgedSpot spot(double east, double north, Verdict verdict) {
        return new JudgedSpot(
                MadeGreens.judgement(east, north, verdict, Optional.of(DifficultyClass.MEDIUM), 5),
                Optional.of(MadeGreens.place(east, north)));
    }
}
