package org.cupwright.rotation.solver;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Random;
import org.cupwright.rotation.exact.ZeroOneAnswer;
import org.cupwright.rotation.exact.ZeroOneAnswer.Outcome;
import org.cupwright.rotation.exact.ZeroOneProblem;
import org.cupwright.rotation.exact.ZeroOneProblem.Count;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** What the solver answers, against every choice there is. */
class CpSatTest {
    private static final int DECISIONS = 9;

    private static ZeroOneProblem problem(Random random) {
        ZeroOneProblem problem = new ZeroOneProblem();
        boolean costly = random.nextBoolean();
        for (int i = 0; i < DECISIONS; i++) {
            problem.decision(costly ? random.nextInt(20) : 0);
        }
        for (int i = 0; i < 5; i++) {
            int[] some = random.ints(0, DECISIONS).distinct().limit(3).toArray();
            switch (random.nextInt(5)) {
                case 0 -> problem.exactlyOne(some);
                case 1 -> problem.atMostOne(some);
                case 2 -> problem.between(0, 2, some);
                case 3 -> problem.between(1, 2, some);
                default -> problem.between(2, 3, some);
            }
        }
        if (random.nextBoolean()) {
            problem.hint(random.nextInt(DECISIONS));
        }
        return problem;
    }

    private static boolean holds(ZeroOneProblem problem, BitSet yes) {
        for (Count count : problem.counts()) {
            int those = 0;
            for (int decision : count.decisions()) {
                those += yes.get(decision) ? 1 : 0;
            }
            if (those < count.least() || those > count.most()) {
                return false;
            }
        }
        return true;
    }

    private static long cost(ZeroOneProblem problem, BitSet yes) {
        return yes.stream().mapToLong(problem::cost).sum();
    }

    @Test
    void theCheapestOfAllChoicesIsFound_orThatThereIsNone() {
        Random random = new Random(Suite.seed());
        int count = Suite.count("problems of yes and no", 1000, 100);
        int impossible = 0;
        for (int i = 0; i < count; i++) {
            ZeroOneProblem problem = problem(random);
            long cheapest = Long.MAX_VALUE;
            for (long choice = 0; choice < 1 << DECISIONS; choice++) {
                BitSet yes = BitSet.valueOf(new long[] {choice});
                cheapest = holds(problem, yes) ? Math.min(cheapest, cost(problem, yes)) : cheapest;
            }
            ZeroOneAnswer answer = new CpSat().solve(problem, 10);
            if (cheapest == Long.MAX_VALUE) {
                impossible++;
                assertThat(answer.outcome()).as("case %s", i).isEqualTo(Outcome.IMPOSSIBLE);
                assertThat(answer.found()).isFalse();
            } else {
                assertThat(answer.outcome()).as("case %s", i).isEqualTo(Outcome.BEST);
                assertThat(holds(problem, answer.yes())).isTrue();
                assertThat(cost(problem, answer.yes())).isEqualTo(cheapest);
                assertThat(answer.cost()).isEqualTo(cheapest);
                assertThat(answer.bound()).isEqualTo(cheapest);
            }
        }
        assertThat(impossible).isBetween(1, count - 1);
    }

    @Test
    void equalProblemsHaveEqualAnswers_alsoWhereWorkRunsOut() {
        for (double work : new double[] {1e-6, 0.001, 1}) {
            ZeroOneAnswer one = new CpSat().solve(large(), work);
            ZeroOneAnswer other = new CpSat().solve(large(), work);
            assertThat(other).isEqualTo(one);
        }
        assertThat(new CpSat().solve(large(), 1e-6).outcome()).isNotEqualTo(Outcome.BEST);
    }

    /** Whoever knows a good answer says so: with little work it is what comes, where otherwise a worse one does. */
    @Test
    void anAnswerThatIsKnownIsBuiltUpon() {
        double little = 0.02;
        ZeroOneAnswer good = new CpSat().solve(large(), 3);
        ZeroOneProblem known = large();
        good.yes().stream().forEach(known::hint);
        assertThat(new CpSat().solve(known, little).cost()).isEqualTo(good.cost());
        assertThat(new CpSat().solve(large(), little).cost()).isGreaterThan(good.cost());
    }

    /** As many nos as can be, among many that stand in each other's way. */
    private static ZeroOneProblem large() {
        Random random = new Random(3);
        ZeroOneProblem problem = new ZeroOneProblem();
        for (int i = 0; i < 300; i++) {
            problem.decision(1 + random.nextInt(9));
        }
        for (int i = 0; i < 1500; i++) {
            problem.between(1, 3, random.ints(0, 300).distinct().limit(3).toArray());
        }
        return problem;
    }
}
