package org.cupwright.app.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.cupwright.app.storage.DayRain;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.Basis;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Writes;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.message.Message;
import org.cupwright.rotation.Scheme;
import org.cupwright.rotation.Totals;
import org.cupwright.rotation.counting.Parts;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Plans are kept with message keys: whatever key one ever held has a sentence today. */
class StoredKeysTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 20);
    private static final Pattern IN_PLANS = Pattern.compile(
            "(rotation\\.(reason|whyNot|finding)|rule|third|difficulty|log\\.kind)\\..+|meanwhile\\.entry");

    @TempDir
    Path data;

    private static InputStream shipped(String name) {
        return StoredKeysTest.class.getResourceAsStream(name);
    }

    private static Set<String> keysInPlans() throws IOException {
        try (InputStream stream = shipped("keys-in-stored-plans.txt")) {
            return new TreeSet<>(new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList());
        }
    }

    private static Texts texts(MessageFiles files) {
        return Texts.find(files, "en", Door.COMMANDS, UnitSystem.METRIC, Paces.STANDARD_METRES)
                .orElseThrow();
    }

    @Test
    void everyKeyThatAPlanEverHeldHasASentence() throws IOException {
        Texts english = texts(MessageFiles.SHIPPED);
        assertThat(keysInPlans()).hasSizeGreaterThan(150).allMatch(english::knows);
    }

    /** So that a key that is new today is held against the table of retired keys when it is dropped one day. */
    @Test
    void everyKeyThatAPlanCanHoldTodayIsInTheList() throws IOException {
        Set<String> today =
                new TreeSet<>(MessageFiles.SHIPPED.of("en").orElseThrow().keySet());
        today.removeIf(key -> !IN_PLANS.matcher(key).matches());
        assertThat(keysInPlans()).containsAll(today);
    }

    @Test
    void aRetiredKeyHasNoSentenceOfItsOwnAndLeadsToOne() {
        Map<String, String> english = MessageFiles.SHIPPED.of("en").orElseThrow();
        MessageFiles.SHIPPED.retired().forEach((old, now) -> {
            assertThat(english).doesNotContainKey(old);
            assertThat(english).containsKey(now);
        });
    }

    @Test
    void aStoredPlanWithARetiredKeyIsReadAndWorded() {
        byte[] retired = "rotation.finding.shut = rotation.finding.closed".getBytes(StandardCharsets.UTF_8);
        Texts english = texts(new MessageFiles(name ->
                name.equals("messages_retired.properties") ? new ByteArrayInputStream(retired) : shipped(name)));
        try (SqliteFolder folder = new SqliteFolder(data, Clock.systemUTC())) {
            StoredPlan plan = plan(Message.of("rotation.finding.shut", new Message.Name("7")));
            Writes.to(folder, stores -> stores.plans().add(plan));
            StoredPlan read =
                    folder.read(stores -> stores.plans().find("made", DAY).orElseThrow());
            assertThat(read.findings().stream().map(english::say)).containsExactly("Closed, without a hole: 7.");
        }
    }

    private static StoredPlan plan(Message finding) {
        Basis basis =
                new Basis(1, DaySpeed.of(10, DaySpeed.From.SAID), DayRain.NONE, 0, "an older version", Scheme.FREE);
        Parts none = new Parts(0, 0, 0);
        Totals totals = new Totals(0, none, none, none);
        return new StoredPlan(
                "made", DAY, State.DRAFT, basis, List.of(), totals, Map.of(), Map.of(), List.of(finding), List.of());
    }
}
