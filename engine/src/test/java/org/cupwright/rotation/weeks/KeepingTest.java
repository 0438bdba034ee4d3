package org.cupwright.rotation.weeks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.MadeGreens;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;
import org.junit.jupiter.api.Test;

/** Two spots, of which the ground about the second is otherwise on the first day of a stay, on a later one, or both. */
class KeepingTest {
    private static final List<Candidate> TWO =
            List.of(MadeGreens.good(5, 15, DifficultyClass.MEDIUM), MadeGreens.good(25, 15, DifficultyClass.MEDIUM));
    private static final OnGround CLEAR = new OnGround(GroundOnDay.clear(MadeWeeks.FIRST), Policy.defaults());

    private static OnGround with(Kind kind) {
        GroundItem area = new GroundItem(kind, TWO.get(1).at().toPoint().buffer(2), Optional.empty(), Optional.empty());
        return new OnGround(new GroundOnDay(MadeWeeks.FIRST, List.of(area)), Policy.defaults());
    }

    private static BitSet still(OnGround first, OnGround later, Wishes wishes) {
        BitSet both = new BitSet();
        both.set(0, 2);
        return Keeping.still(both, TWO, first, later, wishes);
    }

    private static boolean isKept(OnGround first, OnGround later) {
        BitSet still = still(first, later, Wishes.none());
        assertThat(still.get(0)).isTrue();
        return still.get(1);
    }

    @Test
    void whatBecomesUnusableIsNotKept_whatWasSoFromTheStartIs() {
        assertThat(isKept(CLEAR, CLEAR)).isTrue();
        assertThat(isKept(CLEAR, with(Kind.OUT_OF_USE))).isFalse();
        assertThat(isKept(with(Kind.OUT_OF_USE), with(Kind.OUT_OF_USE))).isTrue();
        assertThat(isKept(with(Kind.OUT_OF_USE), CLEAR)).isTrue();
    }

    @Test
    void whatIsSavedLaterIsNotKept_whatWasSoFromTheStartIs() {
        assertThat(isKept(CLEAR, with(Kind.SAVED))).isFalse();
        assertThat(isKept(with(Kind.SAVED), with(Kind.SAVED))).isTrue();
        assertThat(isKept(with(Kind.SAVED), CLEAR)).isTrue();
    }

    @Test
    void whatAsksForCareLaterIsKept() {
        assertThat(isKept(CLEAR, with(Kind.LIGHT_USE))).isTrue();
    }

    @Test
    void whatSomebodyRulesOutIsNotKept() {
        Wishes off = new Wishes(
                Optional.empty(), List.of(new Wishes.Circle(TWO.get(0).at(), 1)), false);
        assertThat(still(CLEAR, CLEAR, off).stream().boxed()).containsExactly(1);
    }
}
