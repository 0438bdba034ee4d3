package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.DoubleAdder;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.exact.ZeroOneSolver;
import org.cupwright.rotation.shortage.Shortage;
import org.cupwright.rotation.shortage.Shortage.Cause;
import org.cupwright.rotation.shortage.Shortage.Easing;
import org.cupwright.rotation.shortage.Shortage.Proof;
import org.cupwright.rotation.shortage.Shortage.Step;
import org.cupwright.rotation.solver.CpSat;
import org.junit.jupiter.api.Test;

/** Whether a plan that cannot keep to the rules says which, where, and what would help. */
class WhyShortTest {
    private static final long SOME_WORK = 60_000;

    private static WeeksPlan plan(WeeksRequest request) {
        return plan(request, new WeeksPlanner(Policy.defaults(), Optional.of(new CpSat())));
    }

    private static WeeksPlan plan(WeeksRequest request, WeeksPlanner planner) {
        return planner.plan(request, SOME_WORK, SearchWatch.patient());
    }

    /** So many good spots in a row, six metres apart. */
    private static List<Candidate> row(int spots) {
        return IntStream.range(0, spots)
                .mapToObj(i -> MadeGreens.good(6 * (i % 4) + 4, 6 * (i / 4) + 4, DifficultyClass.MEDIUM))
                .toList();
    }

    private static Shortage only(WeeksPlan plan) {
        assertThat(plan.shortages()).hasSize(1);
        return plan.shortages().get(0);
    }

    @Test
    void aPlanThatKeepsToAllRulesHasNothingToExplain() {
        WeeksPlan plan = plan(MadeWeeks.request(6, MadeWeeks.rests(10, 1), MadeWeeks.green("1", 6, row(8))));
        assertThat(plan.holesSetAside()).isZero();
        assertThat(plan.shortages()).isEmpty();
        assertThat(plan.bounds().holesSetAside()).isZero();
    }

    /** Fifteen days at a time want fifteen of eight spots: seven too many, and five more of the last five days. */
    @Test
    void aGreenTooSmallForItsDaysIsNamed_withTheDaysAndWhatAShorterRestBuys() {
        WeeksPlan plan = plan(MadeWeeks.request(20, MadeWeeks.rests(14, 1), MadeWeeks.green("7", 20, row(8))));
        Shortage shortage = only(plan);
        assertThat(shortage.cause()).isEqualTo(Cause.GROUND);
        assertThat(shortage.holes()).containsExactly("7");
        assertThat(shortage.wanted()).isEqualTo(15);
        assertThat(shortage.room()).isEqualTo(8);
        assertThat(shortage.last()).isEqualTo(shortage.first().plusDays(14));
        assertThat(shortage.restDays()).isEqualTo(14);
        assertThat(shortage.proof()).isEqualTo(Proof.COUNTED);
        assertThat(shortage.atLeast()).isEqualTo(7);
        assertThat((long) shortage.planned()).isEqualTo(plan.holesSetAside()).isGreaterThanOrEqualTo(7);
        assertThat(shortage.steps()).containsExactly(new Step(Easing.REST_DAYS, 7, 0));
        assertThat(plan.bounds().holesSetAside()).isEqualTo(7);
    }

    /** Where every window is short of ground the plan is as good as the bound says any can be. */
    @Test
    void theBoundOnRestingGroundIsMet() {
        WeeksPlan plan = plan(MadeWeeks.request(9, MadeWeeks.rests(10, 1), MadeWeeks.green("1", 9, row(3))));
        assertThat(plan.holesSetAside())
                .isEqualTo(plan.bounds().holesSetAside())
                .isEqualTo(6);
    }

    /** Each of five spots is too near to its two neighbours: two go together, and groups of neighbours are three. */
    private static List<Candidate> ring() {
        return IntStream.range(0, 5)
                .mapToObj(i -> MadeGreens.good(
                        15 + 2 * StrictMath.cos(i * 1.2566),
                        15 + 2 * StrictMath.sin(i * 1.2566),
                        DifficultyClass.MEDIUM))
                .toList();
    }

    @Test
    void whatCountingDoesNotProveTheSolverDoes_andWithoutItNothingIsClaimed() {
        WeeksRequest request = MadeWeeks.request(3, MadeWeeks.rests(10, 1), MadeWeeks.green("4", 3, ring()));
        Shortage solved = only(plan(request));
        assertThat(solved.cause()).isEqualTo(Cause.GROUND);
        assertThat(solved.proof()).isEqualTo(Proof.SOLVED);
        assertThat(solved.room()).isEqualTo(2);
        assertThat(solved.atLeast()).isEqualTo(1);
        assertThat(solved.steps()).as("a week of rest helps three days nothing").isEmpty();
        Shortage open = only(plan(request, new WeeksPlanner(Policy.defaults())));
        assertThat(open.cause()).isEqualTo(Cause.OPEN);
        assertThat(open.proof()).isEqualTo(Proof.NO_SOLVER);
        assertThat(open.wanted()).isEqualTo(3);
        assertThat(open.fit()).isEqualTo(2);
        assertThat(open.atLeast()).isZero();
    }

    /** A solver that has no answer in the work it may do, and one that is not there. */
    @Test
    void whatStaysOpenSaysWhetherTheWorkEndedOrNobodyWasThereToAsk() {
        WeeksRequest request = MadeWeeks.request(3, MadeWeeks.rests(10, 1), MadeWeeks.green("4", 3, ring()));
        ZeroOneSolver tired = (problem, work) -> new ZeroOneAnswer(ZeroOneAnswer.Outcome.OPEN, new BitSet(), 0, 0);
        Shortage ended = only(plan(request, new WeeksPlanner(Policy.defaults(), Optional.of(tired))));
        assertThat(ended.cause()).isEqualTo(Cause.OPEN);
        assertThat(ended.proof()).isEqualTo(Proof.WORK_ENDED);
        ZeroOneSolver missing = (problem, work) -> {
            throw new ZeroOneSolver.SolverMissing(null);
        };
        Shortage nobody = only(plan(request, new WeeksPlanner(Policy.defaults(), Optional.of(missing))));
        assertThat(nobody.cause()).isEqualTo(Cause.OPEN);
        assertThat(nobody.proof()).isEqualTo(Proof.NO_SOLVER);
    }

    /** Greens that stay open together have no more of the solver's work than two; one by itself has all of one. */
    @Test
    void greensThatStayOpenShareTheSolversWork() {
        double one = workFor(1);
        assertThat(workFor(2)).isCloseTo(2 * one, within(1e-9));
        assertThat(workFor(5)).isCloseTo(2 * one, within(1e-9));
    }

    private static double workFor(int greens) {
        GreenWeeks[] all = IntStream.rangeClosed(1, greens)
                .mapToObj(hole -> MadeWeeks.green(Integer.toString(hole), 3, ring()))
                .toArray(GreenWeeks[]::new);
        DoubleAdder asked = new DoubleAdder();
        ZeroOneSolver tired = (problem, work) -> {
            asked.add(work);
            return new ZeroOneAnswer(ZeroOneAnswer.Outcome.OPEN, new BitSet(), 0, 0);
        };
        WeeksPlan plan = plan(
                MadeWeeks.request(3, MadeWeeks.rests(10, 1), all),
                new WeeksPlanner(Policy.defaults(), Optional.of(tired)));
        assertThat(plan.shortages())
                .hasSize(greens)
                .allMatch(shortage -> shortage.proof() == Shortage.Proof.WORK_ENDED);
        return asked.sum();
    }

    @Test
    void holesFixedTooNearToEachOtherAreNamed() {
        GreenWeeks green = MadeWeeks.green("3", 6, MadeWeeks.lattice(3));
        for (int day : new int[] {1, 4}) {
            Candidate at = MadeGreens.good(14.5 + 0.25 * day, 15, DifficultyClass.MEDIUM);
            green = MadeWeeks.with(
                    green,
                    day,
                    new GreenDay(
                            GroundOnDay.clear(MadeWeeks.FIRST.plusDays(day)),
                            new Wishes(Optional.of(at), List.of(), false)));
        }
        Shortage shortage = only(plan(MadeWeeks.request(6, MadeWeeks.rests(10, 1), green)));
        assertThat(shortage.cause()).isEqualTo(Cause.FIXED);
        assertThat(shortage.first()).isEqualTo(MadeWeeks.FIRST.plusDays(4));
        assertThat(shortage.atLeast()).isEqualTo(1);
        assertThat(shortage.steps()).contains(new Step(Easing.NOTHING_FIXED, 10, 0));
    }

    @Test
    void closedGroundIsOfferedAsAStep() {
        GreenWeeks green = MadeWeeks.green("5", 6, row(8));
        for (int day = 0; day < 6; day++) {
            GroundItem back = new GroundItem(
                    Kind.OUT_OF_USE,
                    new MapPoint(15, 20).toPoint().buffer(14),
                    Optional.empty(),
                    Optional.of(MadeWeeks.FIRST.plusDays(9)));
            GroundOnDay ground = new GroundOnDay(MadeWeeks.FIRST.plusDays(day), List.of(back));
            green = MadeWeeks.with(green, day, new GreenDay(ground, Wishes.none()));
        }
        Shortage shortage = only(plan(MadeWeeks.request(6, MadeWeeks.rests(7, 1), green)));
        assertThat(shortage.cause()).isEqualTo(Cause.GROUND);
        assertThat(shortage.wanted()).isEqualTo(6);
        assertThat(shortage.room()).isLessThan(6);
        assertThat(shortage.steps()).contains(new Step(Easing.ALL_GROUND, 7, 0));
    }

    /** Even thirds are wanted above all; the one spot that makes them even has to do for every day. */
    @Test
    void groundThatOtherWishesTookIsCalledThat() {
        List<Candidate> front = List.of(
                MadeGreens.good(5, 5, DifficultyClass.MEDIUM),
                MadeGreens.good(15, 5, DifficultyClass.MEDIUM),
                MadeGreens.good(25, 5, DifficultyClass.MEDIUM));
        List<Candidate> both = new ArrayList<>(front);
        both.add(MadeGreens.good(15, 25, DifficultyClass.MEDIUM));
        WeeksRequest request = MadeWeeks.request(
                3, MadeWeeks.rests(10, 1), MadeWeeks.green("1", 3, front), MadeWeeks.green("2", 3, both));
        Policy evenAboveAll = Policy.defaults().with(WeeksPolicy.WEIGHT_THIRDS, 10_000.0);
        Shortage shortage = only(plan(request, new WeeksPlanner(evenAboveAll, Optional.of(new CpSat()))));
        assertThat(shortage.holes()).containsExactly("2");
        assertThat(shortage.cause()).isEqualTo(Cause.TOGETHER);
        assertThat(shortage.proof()).isEqualTo(Proof.SHOWN);
        assertThat(shortage.planned()).isEqualTo(2);
    }

    /** Five greens with nothing but spots on the left: three of them at least are one too many. */
    @Test
    void leftAndRightAreBoundedOverAllDays() {
        GreenWeeks[] greens = IntStream.rangeClosed(1, 5)
                .mapToObj(hole -> MadeWeeks.green(
                        Integer.toString(hole),
                        4,
                        IntStream.range(0, 6)
                                .mapToObj(i -> MadeGreens.good(5, 3 + 4 * i, DifficultyClass.MEDIUM))
                                .toList()))
                .toArray(GreenWeeks[]::new);
        WeeksPlan plan = plan(MadeWeeks.request(4, MadeWeeks.rests(2, 1), greens));
        double leftRight = plan.days().stream()
                .mapToDouble(day -> day.terms().get(Term.LEFT_RIGHT))
                .sum();
        assertThat(plan.bounds().terms().get(Term.LEFT_RIGHT)).isEqualTo(12).isEqualTo(leftRight);
    }
}
