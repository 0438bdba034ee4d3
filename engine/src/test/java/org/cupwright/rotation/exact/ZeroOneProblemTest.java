package org.cupwright.rotation.exact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.BitSet;
import org.cupwright.rotation.exact.ZeroOneAnswer.Outcome;
import org.cupwright.rotation.exact.ZeroOneProblem.Count;
import org.junit.jupiter.api.Test;

/** Problems of yes and no are kept as they were asked, and answers as they were given. */
class ZeroOneProblemTest {
    @Test
    void decisionsAreNumberedFromNoughtAndKeepTheirCosts() {
        ZeroOneProblem problem = new ZeroOneProblem();
        assertThat(problem.size()).isZero();
        assertThat(problem.decision(0)).isZero();
        assertThat(problem.hasCosts()).isFalse();
        assertThat(problem.decision(7)).isEqualTo(1);
        assertThat(problem.hasCosts()).isTrue();
        assertThat(problem.size()).isEqualTo(2);
        assertThat(problem.cost(1)).isEqualTo(7);
        assertThatThrownBy(() -> problem.decision(-1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("not -1");
    }

    @Test
    void whatGoesTogetherIsCounted() {
        ZeroOneProblem problem = new ZeroOneProblem();
        int[] some = {0, 2};
        problem.exactlyOne(some);
        problem.atMostOne(1, 2);
        problem.between(2, 3, 0, 1, 2);
        some[0] = 9;
        assertThat(problem.counts()).extracting(Count::least).containsExactly(1, 0, 2);
        assertThat(problem.counts()).extracting(Count::most).containsExactly(1, 1, 3);
        assertThat(problem.counts())
                .extracting(Count::decisions)
                .containsExactly(new int[] {0, 2}, new int[] {1, 2}, new int[] {0, 1, 2});
    }

    @Test
    void hintsAreKeptInTheirOrder() {
        ZeroOneProblem problem = new ZeroOneProblem();
        assertThat(problem.hinted()).isEmpty();
        problem.hint(3);
        problem.hint(1);
        assertThat(problem.hinted()).containsExactly(3, 1);
    }

    @Test
    void anAnswerIsFoundWhereItIsOneAndNobodyChangesIt() {
        BitSet yes = new BitSet();
        yes.set(2);
        ZeroOneAnswer best = new ZeroOneAnswer(Outcome.BEST, yes, 4, 4);
        yes.set(3);
        best.yes().set(5);
        assertThat(best.yes().stream()).containsExactly(2);
        assertThat(best.found()).isTrue();
        assertThat(new ZeroOneAnswer(Outcome.FOUND, yes, 4, 3).found()).isTrue();
        assertThat(new ZeroOneAnswer(Outcome.IMPOSSIBLE, yes, 0, 0).found()).isFalse();
        assertThat(new ZeroOneAnswer(Outcome.OPEN, yes, 0, 0).found()).isFalse();
    }
}
