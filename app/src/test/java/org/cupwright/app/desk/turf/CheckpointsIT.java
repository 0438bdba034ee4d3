package org.cupwright.app.desk.turf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.cupwright.app.desk.history.Checkpoints;
import org.cupwright.app.desk.history.FoldedFacts;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.storage.ResultCache;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.weather.RecordedWeather;
import org.cupwright.turf.weather.WeatherDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Turf and weather from kept states against the whole logbook, on a real file; the zone has nights of 23 and 25 hours.
 */
class CheckpointsIT {
    private static final ZoneId ZONE = ZoneId.of("America/New_York");
    private static final FoldedTurf TURF = new FoldedTurf(ZONE);

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

        @Override
        public void clear() {
            kept.clear();
        }
    };

    private SqliteFolder data(int number) {
        return new SqliteFolder(folder.resolve("" + number), Clock.systemUTC());
    }

    private <S> S before(FoldedFacts<S> folded, SqliteFolder data, Instant moment) {
        return data.read(
                stores -> new Checkpoints<>(folded, stores.facts(), cache, MadeFacts.COURSE, ZONE).before(moment));
    }

    private TurfState before(SqliteFolder data, Instant moment) {
        return before(TURF, data, moment);
    }

    private static List<Fact> counting(List<Fact> facts, Instant moment) {
        return Logbook.of(facts).facts().stream()
                .filter(fact -> fact.happenedAt().isBefore(moment))
                .toList();
    }

    private static TurfState whole(List<Fact> facts, Instant moment) {
        return TurfFold.fold(TurfState.empty(ZONE), counting(facts, moment));
    }

    private static List<WeatherDay> days(RecordedWeather weather) {
        List<WeatherDay> days = new ArrayList<>(weather.entered().days());
        days.addAll(weather.forecasts().days());
        return days;
    }

    @Test
    void isTheWholeFoldHoweverFactsAndCorrectionsArrive() {
        int weatherDays = 0;
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
                Writes.to(data, stores -> next.forEach(stores.facts()::add));
                arrived.addAll(next);
                for (int question = 0; question < 3; question++) {
                    Instant moment = end.minus(Duration.ofHours(random.nextInt(0, 24 * 60)));
                    assertThat(before(data, moment))
                            .as("logbook %d of seed %d, %d facts, before %s", i, Suite.seed(), arrived.size(), moment)
                            .isEqualTo(whole(arrived, moment));
                    List<WeatherDay> weather = days(RecordedWeather.of(counting(arrived, moment)));
                    assertThat(days(before(new FoldedWeather(), data, moment)))
                            .as("weather of logbook %d of seed %d before %s", i, Suite.seed(), moment)
                            .isEqualTo(weather);
                    weatherDays += weather.size();
                }
            }
        }
        assertThat(weatherDays).as("days of weather compared").isGreaterThan(20 * logbooks);
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
        Writes.to(data, stores -> facts.forEach(stores.facts()::add));
        TurfState whole = whole(facts, end);
        assertThat(before(data, end)).isEqualTo(whole);

        assertThat(before(new Forgetful(), data, end))
                .as("what is kept is used")
                .isNotEqualTo(whole);

        String name = kept.keySet().stream()
                .max(Comparator.comparing(each -> kept.get(each).length))
                .orElseThrow();
        byte[] bytes = kept.get(name);
        for (int i = 0; i < 25; i++) {
            int at = random.nextInt(bytes.length);
            byte[] damaged = bytes.clone();
            damaged[at] ^= 4;
            kept.put(name, damaged);
            assertThat(before(data, end))
                    .as("byte %d of %d, seed %d", at, bytes.length, Suite.seed())
                    .isEqualTo(whole);
        }
    }

    /** The turf, but what is kept of it reads as nothing. */
    private static final class Forgetful implements FoldedFacts<TurfState> {
        @Override
        public String name() {
            return TURF.name();
        }

        @Override
        public TurfState nothing() {
            return TURF.nothing();
        }

        @Override
        public List<Fact> between(FactsInEffect facts, Instant from, Instant before) {
            return TURF.between(facts, from, before);
        }

        @Override
        public TurfState with(TurfState before, List<Fact> next) {
            return TURF.with(before, next);
        }

        @Override
        public byte[] write(TurfState state) {
            return TURF.write(state);
        }

        @Override
        public Optional<TurfState> read(byte[] bytes) {
            return Optional.of(nothing());
        }
    }
}
