package org.cupwright.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Third;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Verdict;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.candidate.Wishes.Circle;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** Double greens; all greens invented and thirty metres square, so that both holes of a pair choose from one ground. */
class KeepApartTest {
    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);
    private static final SharedGreen PAIR = new SharedGreen("1", "2");
    private static final double WANTED = Policy.defaults().get(RotationPolicy.SHARED_GREEN_LEAST_METRES);
    private static final double LEAST = Policy.defaults().get(RotationPolicy.SHARED_GREEN_NEVER_NEARER_METRES);

    private static DayPlan plan(List<GreenCandidates> greens, List<SharedGreen> shared) {
        return new DayPlanner(Policy.defaults()).plan(new DayRequest(DAY, greens, shared, false, 1));
    }

    private static List<String> keys(DayPlan plan) {
        return plan.findings().stream().map(Message::key).toList();
    }

    @Test
    void holesOfADoubleGreenAreKeptApartAndAllOthersPlanned() {
        int needed = 0;
        int count = Suite.count("double greens kept apart", 300, 40);
        for (int i = 0; i < count; i++) {
            Random random = new Random(Suite.seed() + i);
            List<GreenCandidates> greens = MadeGreens.random(random, 6, 60);
            DayPlan free = plan(greens, List.of());
            DayPlan kept = plan(greens, List.of(PAIR));
            needed += PAIR.metresApart(free) < WANTED ? 1 : 0;
            String as = "seed " + (Suite.seed() + i);
            assertThat(kept.holes()).as(as).hasSameSizeAs(free.holes());
            assertThat(keys(kept).contains("rotation.finding.nearOnSharedGreen"))
                    .as(as)
                    .isEqualTo(PAIR.metresApart(kept) < WANTED && PAIR.metresApart(kept) >= LEAST);
            assertApartWhereThereIsRoom(greens, kept, as);
        }
        assertThat(needed).as("plans in which there was something to do").isPositive();
    }

    @Test
    void onSmallGreensTheyAreAsFarApartAsTheCourseInsistsOn() {
        int insisted = 0;
        int noRoom = 0;
        int count = Suite.count("small double greens", 1000, 100);
        for (int i = 0; i < count; i++) {
            Random random = new Random(Suite.seed() + i);
            double radius = 2 + i % 17 / 2.0;
            List<GreenCandidates> greens = MadeGreens.random(random, 4, 300).stream()
                    .map(green -> green.keptTo(new Circle(new MapPoint(15, 15), radius)))
                    .toList();
            DayPlan kept = plan(greens, List.of(PAIR));
            assertApartWhereThereIsRoom(greens, kept, "seed " + (Suite.seed() + i));
            insisted += keys(kept).contains("rotation.finding.nearOnSharedGreen") ? 1 : 0;
            noRoom += keys(kept).contains("rotation.finding.tooNearOnSharedGreen") ? 1 : 0;
        }
        assertThat(insisted).as("plans with less than wanted").isPositive();
        assertThat(noRoom).as("greens without two spots far enough apart").isPositive();
    }

    /** The distances that are wanted and insisted on are kept wherever any two spots of the green keep them. */
    private static void assertApartWhereThereIsRoom(List<GreenCandidates> greens, DayPlan kept, String as) {
        double room = 0;
        for (Candidate one : greens.get(0).candidates()) {
            for (Candidate other : greens.get(1).candidates()) {
                if (one.usable() && other.usable()) {
                    room = Math.max(
                            room,
                            Math.hypot(
                                    one.at().east() - other.at().east(),
                                    one.at().north() - other.at().north()));
                }
            }
        }
        for (double least : List.of(LEAST, WANTED)) {
            if (room >= least + 1e-6) {
                assertThat(PAIR.metresApart(kept)).as(as).isGreaterThanOrEqualTo(least);
            }
        }
        assertThat(keys(kept).contains("rotation.finding.tooNearOnSharedGreen"))
                .as(as)
                .isEqualTo(PAIR.metresApart(kept) < LEAST);
    }

    @Test
    void aPlanThatIsFarEnoughApartAnywayStaysAsItIs() {
        for (int i = 0; i < 20; i++) {
            List<GreenCandidates> greens = MadeGreens.random(new Random(Suite.seed() + i), 6, 60);
            DayPlan free = plan(greens, List.of());
            if (PAIR.metresApart(free) >= WANTED) {
                assertThat(plan(greens, List.of(PAIR))).isEqualTo(free);
            }
        }
    }

    @Test
    void whereTheGroundIsTooSmallTheHolesAreNamed() {
        Candidate one = MadeGreens.in(Third.FRONT);
        List<GreenCandidates> greens = new ArrayList<>();
        for (String hole : List.of("1", "2", "3")) {
            greens.add(new GreenCandidates(hole, List.of(one), Optional.empty(), Wishes.none()));
        }
        DayPlan plan = plan(greens, List.of(PAIR));
        assertThat(plan.holes()).hasSize(3);
        assertThat(keys(plan)).contains("rotation.finding.tooNearOnSharedGreen");
    }

    @Test
    void bothWaysRoundAreTriedAndTheBetterCounts() {
        // hole 1 has one good spot only, hole 2 a second one far away that is to be used with care, or the other way
        // round
        Candidate middle = MadeGreens.in(Third.MIDDLE);
        MapPoint at = middle.at();
        for (String fixed : List.of("1", "2")) {
            List<GreenCandidates> greens = new ArrayList<>();
            for (String hole : List.of("1", "2")) {
                List<Candidate> spots = new ArrayList<>(List.of(middle));
                if (!hole.equals(fixed)) {
                    spots.addAll(List.of(MadeGreens.in(Third.FRONT), MadeGreens.in(Third.BACK)));
                }
                greens.add(new GreenCandidates(hole, spots, Optional.empty(), Wishes.none()));
            }
            DayPlan plan = new DayPlanner(policy(8)).plan(new DayRequest(DAY, greens, List.of(PAIR), false, 1));
            assertThat(plan.find(fixed).orElseThrow().candidate().at()).isEqualTo(at);
            assertThat(PAIR.metresApart(plan)).isGreaterThanOrEqualTo(8);
        }
    }

    private static Policy policy(double leastMetres) {
        return Policy.defaults().with(RotationPolicy.SHARED_GREEN_LEAST_METRES, leastMetres);
    }

    private static Candidate spot(double north, Verdict verdict, double room) {
        return MadeGreens.candidate(15, north, verdict, Optional.of(DifficultyClass.MEDIUM), false, room);
    }

    private static DayPlan pair(List<Candidate> first, List<Candidate> second) {
        return plan(
                List.of(
                        new GreenCandidates("1", first, Optional.empty(), Wishes.none()),
                        new GreenCandidates("2", second, Optional.empty(), Wishes.none())),
                List.of(PAIR));
    }

    private static DayPlan apart(double metres) {
        return pair(List.of(spot(0, Verdict.PASS, 3)), List.of(spot(metres, Verdict.PASS, 3)));
    }

    @Test
    void asFarApartAsWantedIsFarEnoughAndAsInsistedOnNotTooNear() {
        assertThat(keys(apart(WANTED))).noneMatch(key -> key.endsWith("OnSharedGreen"));
        assertThat(keys(apart(WANTED - 0.5))).contains("rotation.finding.nearOnSharedGreen");
        assertThat(keys(apart(LEAST))).contains("rotation.finding.nearOnSharedGreen");
        assertThat(keys(apart(LEAST - 0.5))).contains("rotation.finding.tooNearOnSharedGreen");
    }

    /** The nearest spot is too near, the next just far enough, and the farthest is to be used with care. */
    @Test
    void aHoleMovesToTheBestSpotThatIsFarEnoughNotToTheFarthest() {
        DayPlan plan = pair(
                List.of(spot(0, Verdict.PASS, 3)),
                List.of(spot(1, Verdict.PASS, 3), spot(WANTED, Verdict.PASS, 0.5), spot(30, Verdict.CAUTION, 0)));
        assertThat(PAIR.metresApart(plan)).isEqualTo(WANTED);
    }

    /** Either hole could give way; where the second goes it has more room. */
    @Test
    void ofTheTwoTheOneGivesWayThatLosesLess() {
        List<Candidate> first = List.of(spot(10, Verdict.PASS, 3), spot(11 - WANTED, Verdict.CAUTION, 0));
        List<Candidate> second = List.of(spot(11, Verdict.PASS, 3), spot(10 + WANTED, Verdict.CAUTION, 3));
        assertThat(pair(first, second).find("1").orElseThrow().candidate()).isEqualTo(first.get(0));
        assertThat(pair(first, second).find("2").orElseThrow().candidate()).isEqualTo(second.get(1));
        assertThat(pair(second, first).find("1").orElseThrow().candidate()).isEqualTo(second.get(1));
        assertThat(pair(second, first).find("2").orElseThrow().candidate()).isEqualTo(first.get(0));
    }
}
