package org.cupwright.app.store;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.log.FactJson;
import org.cupwright.app.desk.log.FactStore;
import org.cupwright.cupchange.Fact;

final class SqlFacts implements FactStore {
    private final Sql sql;
    private final Clock clock;

    SqlFacts(Sql sql, Clock clock) {
        this.sql = sql;
        this.clock = clock;
    }

    @Override
    public Kept add(Fact fact) {
        Instant now = clock.instant();
        Fact received = fact.recordedAtServer().isPresent() ? fact : fact.receivedAt(now);
        int added = sql.change(
                "INSERT INTO fact (id, course, hole, kind, happened_millis, recorded_at, document)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING",
                fact.id().toString(),
                fact.course(),
                fact.hole().orElse(null),
                fact.payload().kind(),
                fact.happenedAt().toEpochMilli(),
                now.toString(),
                FactJson.write(received));
        if (added == 1) {
            return Kept.NEW;
        }
        Fact known = find(fact.id()).orElseThrow();
        return known.receivedAt(Instant.EPOCH).equals(fact.receivedAt(Instant.EPOCH)) ? Kept.KNOWN : Kept.DIFFERENT;
    }

    @Override
    public Optional<Fact> find(UUID id) {
        return sql.find(
                row -> FactJson.read(row.getString(1)), "SELECT document FROM fact WHERE id = ?", id.toString());
    }

    @Override
    public List<Fact> all(String courseId) {
        return ordered(sql.list(
                row -> FactJson.read(row.getString(1)), "SELECT document FROM fact WHERE course = ?", courseId));
    }

    @Override
    public List<Fact> between(String courseId, Instant from, Instant before) {
        return ordered(sql
                .list(
                        row -> FactJson.read(row.getString(1)),
                        "SELECT document FROM fact WHERE course = ? AND happened_millis BETWEEN ? AND ?",
                        courseId,
                        from.toEpochMilli(),
                        before.toEpochMilli())
                .stream()
                .filter(fact ->
                        !fact.happenedAt().isBefore(from) && fact.happenedAt().isBefore(before))
                .toList());
    }

    private static List<Fact> ordered(List<Fact> facts) {
        return facts.stream().sorted(Fact.ORDER).toList();
    }
}
