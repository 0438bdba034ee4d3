package org.cupwright.app.store.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.cupwright.app.storage.FactStore.Kept;
import org.cupwright.app.storage.Writes;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.MadeFacts;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The logbook on a real file. */
class SqlFactsTest {
    private static final Instant NOW = Instant.parse("2026-06-20T06:00:00Z");
    private static final Instant WHEN = Instant.parse("2026-06-20T04:40:00.123456Z");
    private static final UUID ID = new UUID(7, 7);

    @TempDir
    private Path folder;

    private SqliteFolder data;

    @BeforeEach
    void open() {
        data = new SqliteFolder(folder, Clock.fixed(NOW, ZoneOffset.UTC));
    }

    private static Fact cutAt(double east) {
        return MadeFacts.fact(ID, WHEN, Optional.of("7"), CupChanged.asPlanned(new MapPoint(east, 3)));
    }

    private Kept add(Fact fact) {
        List<Kept> kept = new ArrayList<>();
        Writes.to(data, stores -> kept.add(stores.facts().add(fact)));
        return kept.get(0);
    }

    private List<Fact> all() {
        return data.read(stores -> stores.facts().all(MadeFacts.COURSE));
    }

    @Test
    void aFactIsKeptOnceWithTheServersTime() {
        assertThat(add(cutAt(1))).isEqualTo(Kept.NEW);
        assertThat(add(cutAt(1))).isEqualTo(Kept.KNOWN);
        assertThat(all()).containsExactly(cutAt(1).receivedAt(NOW));
        assertThat(data.<Optional<Fact>>read(stores -> stores.facts().find(ID))).contains(cutAt(1).receivedAt(NOW));
    }

    @Test
    void theSameIdWithOtherContentsChangesNothing() {
        add(cutAt(1));
        assertThat(add(cutAt(2))).isEqualTo(Kept.DIFFERENT);
        assertThat(all()).containsExactly(cutAt(1).receivedAt(NOW));
    }

    @Test
    void factsComeBackInTheOrderInWhichTheyHappened() {
        Random random = new Random(Suite.seed());
        List<Fact> facts = MadeFacts.sequence(random, 300).stream()
                .map(fact -> fact.receivedAt(NOW))
                .toList();
        List<Fact> arrived = new ArrayList<>(facts);
        Collections.shuffle(arrived, random);
        Writes.to(data, stores -> arrived.forEach(stores.facts()::add));
        assertThat(all()).isEqualTo(facts);
        Instant from = facts.get(40).happenedAt();
        Instant before = facts.get(90).happenedAt();
        List<Fact> between = data.read(stores -> stores.facts().between(MadeFacts.COURSE, from, before));
        assertThat(between).isEqualTo(facts.subList(40, 90));
    }

    @Test
    void momentsOfAFractionOfAMillisecondCount() {
        add(cutAt(1));
        assertThat(data.<List<Fact>>read(
                        stores -> stores.facts().between(MadeFacts.COURSE, WHEN.plusNanos(1), WHEN.plusSeconds(1))))
                .isEmpty();
        assertThat(data.<List<Fact>>read(stores -> stores.facts().between(MadeFacts.COURSE, WHEN, WHEN.plusNanos(1))))
                .hasSize(1);
    }
}
