package org.cupwright.turf.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.cupwright.cupchange.Correction;
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

            TurfState state = TurfFold.fold(NOTHING, Logbook.of(arrived).upTo(until));
            assertThat(state).as("case %d of seed %d", i, Suite.seed()).isEqualTo(TurfFold.fold(NOTHING, early));
            assertThat(state.facts()).isEqualTo(early.size());
        }
    }

    @Test
    void aCheckpointAndTheRestAreTheWholeFoldAlsoWhenFactsAndCorrectionsComeLate() {
        int cases = Suite.count("turf checkpoints", 10_000, 300);
        for (int i = 0; i < cases; i++) {
            Random random = new Random(Suite.seed() * 104_729 + i);
            List<Fact> onTime = MadeFacts.sequence(random, 60);
            Instant end = onTime.get(59).happenedAt();
            Logbook first = Logbook.of(onTime);
            Checkpoints saved = Checkpoints.from(NOTHING);
            for (int at : new int[] {10, 25, 40, 55}) {
                saved = saved.with(saved.at(first, onTime.get(at).happenedAt()));
            }
            List<Fact> late = late(random, onTime);
            List<Fact> all = new ArrayList<>(onTime);
            all.addAll(late);
            Logbook then = Logbook.of(all);
            assertThat(saved.after(then, late).at(then, end))
                    .as("case %d of seed %d", i, Suite.seed())
                    .isEqualTo(TurfFold.fold(NOTHING, then.upTo(end)));
        }
    }

    private static List<Fact> late(Random random, List<Fact> onTime) {
        List<Fact> late = new ArrayList<>();
        Fact known = onTime.get(random.nextInt(onTime.size()));
        Instant shortlyAfter = known.happenedAt().plus(Duration.ofMinutes(random.nextInt(0, 2)));
        late.add(MadeFacts.recorded(random, shortlyAfter));
        Fact wrong = onTime.get(random.nextInt(onTime.size()));
        late.add(MadeFacts.fact(
                MadeFacts.id(random),
                wrong.happenedAt().plus(Duration.ofDays(30)),
                known.hole(),
                Correction.withdrawing(wrong.id())));
        return late;
    }
}
