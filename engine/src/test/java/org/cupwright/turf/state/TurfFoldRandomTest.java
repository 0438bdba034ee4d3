package org.cupwright.turf.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** What must hold for the state of any logbook. The zone has nights of 23 and 25 hours. */
class TurfFoldRandomTest {
    private static final TurfState NOTHING = TurfState.empty(ZoneId.of("America/New_York"));

    @Test
    void losesNothingAndMindsNeitherOrderNorRepeatsNorWhatComesAfter() {
        int cases = Suite.count("turf fold", 10_000, 300);
        for (int i = 0; i < cases; i++) {
            Random random = new Random(Suite.seed() * 7_919 + i);
            List<Fact> facts = MadeFacts.sequence(random, random.nextInt(1, 80));
            Instant until = facts.get(random.nextInt(facts.size())).happenedAt();
            List<Fact> early = facts.stream()
                    .filter(fact -> !fact.happenedAt().isAfter(until))
                    .toList();
            List<Fact> arrived = new ArrayList<>(facts);
            arrived.addAll(facts.subList(0, facts.size() / 2));
            Collections.shuffle(arrived, random);

            List<Fact> upTo = Logbook.of(arrived).facts().stream()
                    .filter(fact -> !fact.happenedAt().isAfter(until))
                    .toList();
            TurfState state = TurfFold.fold(NOTHING, upTo);
            assertThat(state).as("case %d of seed %d", i, Suite.seed()).isEqualTo(TurfFold.fold(NOTHING, early));
            assertThat(state.facts()).isEqualTo(early.size());
        }
    }

    @Test
    void goingOnFromAKeptStateIsTheWholeFold() {
        int cases = Suite.count("turf fold in parts", 10_000, 300);
        for (int i = 0; i < cases; i++) {
            Random random = new Random(Suite.seed() * 104_729 + i);
            List<Fact> facts = Logbook.of(MadeFacts.sequence(random, 60)).facts();
            int first = random.nextInt(facts.size() + 1);
            int second = random.nextInt(first, facts.size() + 1);
            TurfState state = TurfFold.fold(NOTHING, facts.subList(0, first));
            state = TurfFold.fold(state, facts.subList(first, second));
            state = TurfFold.fold(state, facts.subList(second, facts.size()));
            assertThat(state).as("case %d of seed %d", i, Suite.seed()).isEqualTo(TurfFold.fold(NOTHING, facts));
        }
    }
}
