package org.cupwright.app.desk.turf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.cupwright.app.desk.cache.ResultCache;
import org.cupwright.app.store.SqliteFolder;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** States from kept ones against the whole fold, on a real file; the zone has nights of 23 and 25 hours. */
class TurfHistoryIT {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");

    @TempDir
    private Path folder;

    private final Map<String, byte[]> kept = new HashMap<>();
    private int found;

    private final ResultCache cache = new ResultCache() {
        @Override
        public Optional<byte[]> find(String name) {
            found += kept.containsKey(name) ? 1 : 0;
            return Optional.ofNullable(kept.get(name));
        }

        @Override
        public void keep(String name, byte[] result) {
            kept.put(name, result);
        }
    };

    private SqliteFolder data(int number) {
        return new SqliteFolder(folder.resolve("" + number), Clock.systemUTC());
    }

    private TurfState before(SqliteFolder data, Instant moment) {
        return data.read(stores -> new TurfHistory(stores.facts(), cache, MadeFacts.COURSE, ZONE).before(moment));
    }

    private static TurfState whole(List<Fact> facts, Instant moment) {
        List<Fact> before = Logbook.of(facts).facts().stream()
                .filter(fact -> fact.happenedAt().isBefore(moment))
                .toList();
        return TurfFold.fold(TurfState.empty(ZONE), before);
    }

    @Test
    void isTheWholeFoldHoweverFactsAndCorrectionsArrive() {
        int logbooks = Suite.count("logbooks of kept turf states", 300, 2);
        for (int i = 0; i < logbooks; i++) {
            Random random = new Random(Suite.seed() * 15_485_863 + i);
            List<Fact> facts = withCorrections(random, MadeFacts.sequence(random, 120));
            Instant end = facts.get(119).happenedAt();
            Collections.shuffle(facts.subList(60, facts.size()), random);
            SqliteFolder data = data(i);
            kept.clear();
            List<Fact> arrived = new ArrayList<>();
            for (int from = 0; from < facts.size(); from += 20) {
                List<Fact> next = facts.subList(from, Math.min(facts.size(), from + 20));
                data.write(stores -> next.forEach(stores.facts()::add));
                arrived.addAll(next);
                for (int question = 0; question < 3; question++) {
                    Instant moment = end.minus(Duration.ofHours(random.nextInt(0, 24 * 60)));
                    assertThat(before(data, moment))
                            .as("logbook %d of seed %d, %d facts, before %s", i, Suite.seed(), arrived.size(), moment)
                            .isEqualTo(whole(arrived, moment));
                }
            }
        }
        assertThat(found).as("kept states looked at").isGreaterThan(10 * logbooks);
    }

    private static List<Fact> withCorrections(Random random, List<Fact> facts) {
        List<Fact> all = new ArrayList<>(facts);
        for (int i = 0; i < 12; i++) {
            Fact wrong = all.get(random.nextInt(all.size()));
            Instant when = random.nextBoolean()
                    ? wrong.happenedAt()
                    : wrong.happenedAt().plus(Duration.ofDays(random.nextInt(-20, 40)));
            boolean withdraws = random.nextBoolean() || wrong.payload() instanceof Correction;
            Correction correction = withdraws
                    ? Correction.withdrawing(wrong.id())
                    : Correction.to(wrong.id(), MadeFacts.recorded(random, when).payload());
            all.add(MadeFacts.fact(MadeFacts.id(random), when, Optional.of("2"), correction));
        }
        return all;
    }

    @Test
    void aKeptStateIsUsedAndADamagedOneMadeAnew() {
        Random random = new Random(Suite.seed());
        List<Fact> facts = MadeFacts.sequence(random, 120);
        Instant end = facts.get(119).happenedAt().plusSeconds(1);
        SqliteFolder data = data(0);
        data.write(stores -> facts.forEach(stores.facts()::add));
        TurfState whole = whole(facts, end);
        assertThat(before(data, end)).isEqualTo(whole);

        KeptTurf newest = kept.values().stream()
                .map(bytes -> TurfStateBytes.read(bytes).orElseThrow())
                .max((one, other) -> one.before().compareTo(other.before()))
                .orElseThrow();
        String name = KeptTurf.name(MadeFacts.COURSE, ZONE, newest.before());
        KeptTurf empty = new KeptTurf(MadeFacts.COURSE, newest.before(), newest.arrival(), TurfState.empty(ZONE));
        kept.put(name, TurfStateBytes.write(empty));
        assertThat(before(data, end)).as("what is kept is used").isNotEqualTo(whole);

        byte[] bytes = TurfStateBytes.write(newest);
        for (int i = 0; i < 25; i++) {
            int at = random.nextInt(10, bytes.length); // the first ten bytes are the format's, and do not count
            byte[] damaged = bytes.clone();
            damaged[at] ^= 4;
            kept.put(name, damaged);
            assertThat(before(data, end))
                    .as("byte %d of %d, seed %d", at, bytes.length, Suite.seed())
                    .isEqualTo(whole);
        }
    }
}
