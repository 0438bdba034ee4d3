package org.cupwright.rotation.counting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Counts small enough to be checked by hand. */
class TallyTest {
    private static final long FRONT = Tally.HOLE + Split.THIRD.one(0);
    private static final long BACK = Tally.HOLE + Split.THIRD.one(2);

    private static CountingTable table(List<List<Option>> greens, long... endCosts) {
        return new CountingTable(
                greens,
                List.of(Split.THIRD),
                tally -> endCosts[Split.THIRD.parts(tally).first()],
                tally -> true);
    }

    @Test
    void countsStandSideBySide() {
        long tally = 3 * FRONT
                + 2 * BACK
                + 4 * Split.LATERAL.one(1)
                + 63 * Split.DIFFICULTY.one(0)
                + Split.DIFFICULTY.one(2);
        assertThat(Tally.holes(tally)).isEqualTo(5);
        assertThat(Split.THIRD.parts(tally)).isEqualTo(new Parts(3, 0, 2));
        assertThat(Split.LATERAL.parts(tally)).isEqualTo(new Parts(0, 4, 0));
        assertThat(Split.DIFFICULTY.parts(tally)).isEqualTo(new Parts(63, 0, 1));
        // six bits a count, three counts a split: 18 bits each, then the holes in bits 54 to 59
        assertThat(Split.THIRD.mask()).isEqualTo(0x3FFFFL);
        assertThat(Split.LATERAL.mask()).isEqualTo(0x3FFFFL << 18);
        assertThat(Split.DIFFICULTY.mask()).isEqualTo(0x3FFFFL << 36);
        assertThat(Tally.HOLES).isEqualTo(0x3FL << 54);
    }

    @Test
    void partsAreNumberedFromZeroToTwo() {
        Parts parts = new Parts(5, 3, 2);
        assertThat(parts.total()).isEqualTo(10);
        assertThat(List.of(parts.count(0), parts.count(1), parts.count(2))).containsExactly(5, 3, 2);
        assertThatThrownBy(() -> parts.count(3)).hasMessageContaining("not 3");
    }

    @Test
    void sharesAreRoundedDownAndUp() {
        // of ten holes by 3, 2, 1: 5, 3.33 and 1.67
        Shares busy = new Shares(3, 2, 1);
        assertThat(List.of(busy.least(0, 10), busy.least(1, 10), busy.least(2, 10)))
                .containsExactly(5, 3, 1);
        assertThat(List.of(busy.most(0, 10), busy.most(1, 10), busy.most(2, 10)))
                .containsExactly(5, 4, 2);
    }

    @Test
    void onePartMayHaveAsMuchAsTheOthersTogether() {
        assertThat(new Shares(2, 1, 1).least(0, 8)).isEqualTo(4);
        assertThat(new Shares(1, 2, 1).least(1, 8)).isEqualTo(4);
        assertThat(new Shares(1, 1, 2).least(2, 8)).isEqualTo(4);
    }

    @Test
    void anOptionIsOneHoleAtNoNegativeCost() {
        assertThat(new Option(FRONT, 0).cost()).isZero();
        assertThatThrownBy(() -> new Option(FRONT, -1)).hasMessageContaining("-1");
        assertThatThrownBy(() -> new Option(Split.THIRD.one(0), 1)).hasMessageContaining("one hole");
        assertThatThrownBy(() -> new Option(2 * Tally.HOLE, 1)).hasMessageContaining("one hole");
    }

    @Test
    void aTableAddsUpTheCheapestWayFromWhereATallyStands() {
        // two greens; both at the front cost 2 + 1 and 50 for that, one each 2 + 4 or 7 + 1, and both at the back 11 +
        // 5
        List<List<Option>> greens = List.of(
                List.of(new Option(FRONT, 2), new Option(BACK, 7)), List.of(new Option(FRONT, 1), new Option(BACK, 4)));
        CountingTable table = table(greens, 5, 0, 50);
        assertThat(table.leastFrom(0)).isEqualTo(6);
        assertThat(table.leastFrom(FRONT)).isEqualTo(4);
        assertThat(table.leastFrom(BACK)).isEqualTo(1);
        assertThat(table.leastFrom(2 * FRONT)).isEqualTo(50);
        // what the table does not look at changes nothing
        assertThat(table.leastFrom(FRONT + Split.LATERAL.one(2))).isEqualTo(4);
        assertThat(table.leastFrom(0)).isEqualTo(6);
    }

    @Test
    void ofOptionsThatATableCannotTellApartTheCheapestCounts() {
        List<List<Option>> greens = List.of(
                List.of(new Option(FRONT + Split.LATERAL.one(0), 9), new Option(FRONT, 3), new Option(FRONT, 8)));
        assertThat(table(greens, 0, 0).leastFrom(0)).isEqualTo(3);
    }

    @Test
    void whatIsNotWorthAskingIsImpossible() {
        List<List<Option>> greens = List.of(List.of(new Option(FRONT, 2)), List.of(new Option(FRONT, 1)));
        List<Long> asked = new ArrayList<>();
        CountingTable table = new CountingTable(greens, List.of(Split.THIRD), tally -> 0, tally -> {
            asked.add(tally);
            return tally != FRONT;
        });
        assertThat(table.leastFrom(FRONT)).isEqualTo(CountingTable.IMPOSSIBLE);
        assertThat(table.leastFrom(0)).isEqualTo(CountingTable.IMPOSSIBLE);
        assertThat(table.leastFrom(0)).isEqualTo(CountingTable.IMPOSSIBLE);
        assertThat(asked).containsExactly(FRONT, 0L); // once each: then it is known
    }

    @Test
    void aMapOfTalliesGrowsAndForgetsNothing() {
        TallyMap map = new TallyMap();
        assertThat(map.get(FRONT)).isEqualTo(TallyMap.ABSENT);
        for (long tally = 0; tally < 5000; tally++) {
            map.put(tally * FRONT, 3 * tally);
            map.put(tally * FRONT, 3 * tally + 1);
        }
        for (long tally = 0; tally < 5000; tally++) {
            assertThat(map.get(tally * FRONT)).isEqualTo(3 * tally + 1);
        }
        assertThat(map.get(BACK)).isEqualTo(TallyMap.ABSENT);
    }

    @Test
    void theCheapestChoiceIsToldWithWhatItCostToFindIt() {
        List<List<Option>> greens = List.of(List.of(new Option(BACK, 5), new Option(FRONT, 1)));
        CheapestChoice.Choice choice =
                CheapestChoice.find(greens, table(greens, 0, 3)::leastFrom).orElseThrow();
        // 1 + 3 is less than 5; the empty choice and this one were followed up
        assertThat(choice).isEqualTo(new CheapestChoice.Choice(List.of(1), 4, FRONT, 2));
    }

    @Test
    void ofTwoOptionsThatAreAlikeTheFirstIsChosen() {
        List<List<Option>> greens = List.of(List.of(new Option(FRONT, 5), new Option(FRONT, 5)));
        assertThat(CheapestChoice.find(greens, tally -> 0).orElseThrow().options())
                .containsExactly(0);
    }

    @Test
    void whereNothingIsAllowedThereIsNoChoice() {
        List<List<Option>> greens = List.of(List.of(new Option(FRONT, 5)));
        long impossible = CountingTable.IMPOSSIBLE;
        assertThat(CheapestChoice.find(greens, tally -> Tally.holes(tally) == 1 ? impossible : 0))
                .isEqualTo(Optional.empty());
    }

    @Test
    void aDayHasAtMostSixtyThreeGreens() {
        List<List<Option>> most = Collections.nCopies(63, List.of(new Option(Tally.HOLE, 1)));
        assertThat(CheapestChoice.find(most, tally -> 63 - Tally.holes(tally))
                        .orElseThrow()
                        .cost())
                .isEqualTo(63);
        List<List<Option>> more = Collections.nCopies(64, List.of(new Option(Tally.HOLE, 1)));
        assertThatThrownBy(() -> CheapestChoice.find(more, tally -> 0)).hasMessageContaining("not 64");
    }
}
