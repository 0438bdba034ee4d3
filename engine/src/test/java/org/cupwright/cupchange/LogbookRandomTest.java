package org.cupwright.cupchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.Test;

/** What must hold for any sequence of facts, however it arrives. */
class LogbookRandomTest {
    @Test
    void neitherLosesFactsNorMindsOrderOrRepeats() {
        int cases = Suite.count("logbook order and repeats", 10_000, 500);
        for (int i = 0; i < cases; i++) {
            Random random = new Random(Suite.seed() * 1_000_003 + i);
            List<Fact> facts = withCorrections(random);
            List<Fact> arrived = new ArrayList<>(facts);
            facts.stream().filter(fact -> random.nextBoolean()).forEach(arrived::add);
            Collections.shuffle(arrived, random);
            Logbook book = Logbook.of(arrived);
            assertThat(book.facts()).as("case %d of seed %d", i, Suite.seed()).isEqualTo(slowly(facts));
        }
    }

    @Test
    void aCorrectedFactEqualsTheRightFactAlone() {
        int cases = Suite.count("logbook corrections", 10_000, 500);
        for (int i = 0; i < cases; i++) {
            Random random = new Random(Suite.seed() * 1_000_033 + i);
            List<Fact> right = MadeFacts.sequence(random, 12);
            List<Fact> arrived = new ArrayList<>();
            for (Fact fact : right) {
                if (random.nextInt(3) == 0 && fact.hole().isPresent()) {
                    Fact wrong = MadeFacts.recorded(random, fact.happenedAt());
                    arrived.add(new Fact(
                            fact.id(),
                            1,
                            fact.happenedAt(),
                            fact.recordedAtDevice(),
                            Optional.empty(),
                            fact.person(),
                            fact.course(),
                            wrong.hole(),
                            wrong.payload()));
                    arrived.add(MadeFacts.fact(
                            MadeFacts.id(random),
                            fact.happenedAt().plusSeconds(random.nextInt(1, 9_000_000)),
                            fact.hole(),
                            Correction.to(fact.id(), fact.payload())));
                } else {
                    arrived.add(fact);
                }
            }
            Collections.shuffle(arrived, random);
            assertThat(Logbook.of(arrived).facts())
                    .as("case %d of seed %d", i, Suite.seed())
                    .isEqualTo(Logbook.of(right).facts());
        }
    }

    /** Facts with corrections of facts and of corrections among them. */
    static List<Fact> withCorrections(Random random) {
        List<Fact> facts = MadeFacts.sequence(random, random.nextInt(1, 25));
        int corrections = random.nextInt(0, 8);
        for (int i = 0; i < corrections; i++) {
            Fact target = facts.get(random.nextInt(facts.size()));
            Payload replacement = MadeFacts.payload(random, java.time.LocalDate.of(2024, 3, 1));
            facts.add(MadeFacts.fact(
                    MadeFacts.id(random),
                    target.recordedAtDevice().plusSeconds(random.nextInt(0, 5000)),
                    Optional.of("" + random.nextInt(1, 4)),
                    random.nextInt(3) == 0
                            ? Correction.withdrawing(target.id())
                            : Correction.to(target.id(), replacement)));
        }
        return facts;
    }

    /**
     * The same by plain replay: the newest correction nobody has taken back is applied, then struck out together with
     * all that speak of it, until none is left.
     */
    private static List<Fact> slowly(List<Fact> facts) {
        Map<UUID, Fact> byId = new HashMap<>();
        facts.forEach(fact -> byId.put(fact.id(), fact));
        List<Fact> corrections = new ArrayList<>(facts);
        corrections.removeIf(fact -> !(fact.payload() instanceof Correction));
        // Innermost first: a correction that no other speaks of any more can be settled.
        Set<UUID> open = new HashSet<>();
        corrections.forEach(fact -> open.add(fact.id()));
        while (!open.isEmpty()) {
            UUID target = corrections.stream()
                    .map(fact -> ((Correction) fact.payload()).of())
                    .filter(of -> corrections.stream()
                            .filter(fact -> open.contains(fact.id()))
                            .filter(fact -> ((Correction) fact.payload()).of().equals(of))
                            .allMatch(fact -> nobodySpeaksOf(fact.id(), corrections, open)))
                    .filter(of -> corrections.stream()
                            .anyMatch(fact -> open.contains(fact.id())
                                    && ((Correction) fact.payload()).of().equals(of)))
                    .findFirst()
                    .orElseThrow();
            settle(target, corrections, open, byId);
        }
        List<Fact> left = new ArrayList<>(byId.values());
        left.removeIf(fact -> fact.payload() instanceof Correction);
        left.sort(Fact.ORDER);
        return left;
    }

    private static boolean nobodySpeaksOf(UUID id, List<Fact> corrections, Set<UUID> open) {
        return corrections.stream()
                .noneMatch(fact -> open.contains(fact.id())
                        && ((Correction) fact.payload()).of().equals(id));
    }

    private static void settle(UUID target, List<Fact> corrections, Set<UUID> open, Map<UUID, Fact> byId) {
        Fact newest = null;
        for (Fact fact : corrections) {
            if (!open.contains(fact.id()) || !((Correction) fact.payload()).of().equals(target)) {
                continue;
            }
            open.remove(fact.id());
            Fact now = byId.get(fact.id());
            if (now == null) {
                continue; // withdrawn
            }
            boolean later = newest == null
                    || now.recordedAtDevice().isAfter(newest.recordedAtDevice())
                    || (now.recordedAtDevice().equals(newest.recordedAtDevice())
                            && now.id().compareTo(newest.id()) > 0);
            newest = later ? now : newest;
        }
        if (newest != null) {
            replace(target, newest, byId);
        }
    }

    private static void replace(UUID target, Fact correction, Map<UUID, Fact> byId) {
        Optional<Payload> says = ((Correction) correction.payload()).replacement();
        Fact was = byId.get(target);
        if (says.isEmpty()) {
            byId.remove(target);
            return;
        }
        Payload now = was.payload() instanceof Correction of ? Correction.to(of.of(), says.get()) : says.get();
        byId.put(
                target,
                new Fact(
                        was.id(),
                        correction.version(),
                        was.happenedAt(),
                        was.recordedAtDevice(),
                        was.recordedAtServer(),
                        was.person(),
                        was.course(),
                        correction.hole(),
                        now));
    }
}
