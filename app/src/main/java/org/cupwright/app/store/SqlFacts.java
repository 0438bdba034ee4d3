package org.cupwright.app.store;

import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.storage.DamagedRow;
import org.cupwright.app.storage.DayRange;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Said;

record SqlFacts(Sql sql, Dialect dialect, Clock clock, Set<DamagedRow> leftOut) implements FactStore {
    private static final String IN_STRETCH = "fact.course = ? AND fact.happened_millis BETWEEN ? AND ?";

    /** What {@link FactReader} takes. */
    private static final String ROW = "fact.document, fact.received, fact.check_sum";

    @Override
    public Kept add(Fact fact) {
        Instant now = clock.instant();
        DayRange.check(fact, now);
        Fact received = fact.recordedAtServer().isPresent() ? fact : fact.receivedAt(now);
        Object corrects = fact.payload() instanceof Correction correction
                ? correction.of().toString()
                : null;
        int added = sql.add(
                "fact",
                "received",
                new CheckedRow()
                        .with("id", fact.id().toString())
                        .with("course", fact.course())
                        .with("hole", fact.hole().orElse(null))
                        .with("kind", fact.payload().kind())
                        .with("happened_millis", fact.happenedAt().toEpochMilli())
                        .with("recorded_at", now.toString())
                        .with("document", FactJson.write(received))
                        .with("corrects", corrects),
                dialect.unlessThere("id"));
        if (added == 1) {
            return Kept.NEW;
        }
        Fact known = find(fact.id()).orElseThrow();
        return known.receivedAt(Instant.EPOCH).equals(fact.receivedAt(Instant.EPOCH)) ? Kept.KNOWN : Kept.DIFFERENT;
    }

    @Override
    public Optional<Fact> find(UUID id) {
        FactReader reader = new FactReader(damaged -> {
            throw damaged.problem(new Said(Message.of("row.changed")));
        });
        read(reader, "SELECT " + ROW + " FROM fact WHERE id = ?", id.toString());
        return reader.facts().stream().findFirst();
    }

    @Override
    public List<UUID> ids(String courseId, String start) {
        return sql.list(
                row -> UUID.fromString(row.getString(1)),
                "SELECT id FROM fact WHERE id >= ? AND id < ? AND course = ? AND corrects IS NULL ORDER BY id",
                start,
                start + '~', // comes after every letter and digit
                courseId);
    }

    @Override
    public List<Fact> all(String courseId) {
        FactReader reader = new FactReader(leftOut::add);
        read(reader, "SELECT " + ROW + " FROM fact WHERE course = ?", courseId);
        return reader.facts();
    }

    /** Rows lie as they arrived: each is looked at once, and says with its document whether anything corrects it. */
    @Override
    public List<Fact> between(String courseId, Instant from, Instant before) {
        List<Object> stretch = List.of(courseId, from.toEpochMilli(), before.toEpochMilli());
        FactReader reader = new FactReader(leftOut::add);
        List<String> corrected = new ArrayList<>();
        sql.each(
                row -> {
                    reader.take(row);
                    if (row.getBoolean(4)) {
                        corrected.add(row.getString(5));
                    }
                },
                "SELECT " + ROW
                        + ", EXISTS (SELECT 1 FROM fact AS correction WHERE correction.corrects = fact.id), id"
                        + " FROM fact WHERE " + IN_STRETCH + " ORDER BY happened_millis",
                stretch.toArray());
        if (!corrected.isEmpty()) {
            List<Object> arguments = new ArrayList<>(List.of(dialect.argument(corrected)));
            arguments.addAll(stretch);
            read(
                    reader,
                    "WITH RECURSIVE part (id) AS (SELECT correction.id FROM "
                            + dialect.eachText("corrected") + dialect.joinAfter()
                            + "fact AS correction ON correction.corrects = corrected.value"
                            + withCorrections() + " WHERE NOT (" + IN_STRETCH + ")",
                    arguments.toArray());
        }
        return reader.facts().stream()
                .filter(fact -> fact.payload() instanceof Correction
                        || !fact.happenedAt().isBefore(from)
                                && fact.happenedAt().isBefore(before))
                .toList();
    }

    /** {@code became}: what was corrected into one of the kinds, up every chain to where it began. */
    @Override
    public List<Fact> ofKinds(String courseId, Set<String> kinds, Instant from, Instant before) {
        String asked = "(" + String.join(", ", Collections.nCopies(kinds.size(), "?")) + ")";
        List<Object> stretch = List.of(courseId, from.toEpochMilli(), before.toEpochMilli());
        List<Object> arguments = new ArrayList<>(List.of(courseId));
        arguments.addAll(kinds);
        arguments.addAll(stretch);
        arguments.addAll(kinds);
        arguments.addAll(stretch);
        String joined = dialect.joinAfter() + "fact";
        FactReader reader = new FactReader(leftOut::add);
        read(
                reader,
                "WITH RECURSIVE became (id) AS (SELECT corrects FROM fact WHERE course = ? AND kind = 'correction'"
                        + " AND " + dialect.textIn("document", "payload", "replacement", "kind") + " IN " + asked
                        + " UNION SELECT fact.corrects FROM became" + joined + " ON fact.id = became.id"
                        + " WHERE fact.corrects IS NOT NULL),"
                        + " part (id) AS (SELECT id FROM fact WHERE " + IN_STRETCH + " AND kind IN " + asked
                        + " UNION SELECT fact.id FROM became" + joined + " ON fact.id = became.id WHERE "
                        + IN_STRETCH + withCorrections(),
                arguments.toArray());
        return reader.facts();
    }

    @Override
    public Optional<Instant> first(String courseId) {
        return sql.find(
                row -> Instant.ofEpochMilli(row.getLong(1)),
                "SELECT happened_millis FROM fact WHERE course = ? ORDER BY happened_millis LIMIT 1",
                courseId);
    }

    @Override
    public List<Fact> receivedAfter(String courseId, long number) {
        FactReader reader = new FactReader(leftOut::add);
        read(
                reader,
                "SELECT " + ROW + " FROM fact WHERE received > ? AND " + dialect.passingIndex("course")
                        + " = ? ORDER BY received",
                number,
                courseId);
        return reader.inOrderRead();
    }

    @Override
    public Optional<Arrival> lastArrival() {
        return sql.find(
                row -> new Arrival(row.getLong(1), UUID.fromString(row.getString(2))),
                "SELECT received, id FROM fact ORDER BY received DESC LIMIT 1");
    }

    /** By the course's index the database would read all of the course instead of the few that came since. */
    @Override
    public boolean isUnchangedBefore(String courseId, Instant moment, Arrival since) {
        return sql.find(
                        row -> row.getBoolean(1),
                        "WITH RECURSIVE arrived (id, corrects, happened_millis) AS ("
                                + "SELECT id, corrects, happened_millis FROM fact "
                                + "WHERE received > ? AND " + dialect.passingIndex("course") + " = ?"
                                + " UNION SELECT fact.id, fact.corrects, fact.happened_millis"
                                + " FROM arrived" + dialect.joinAfter() + "fact ON fact.id = arrived.corrects)"
                                + " SELECT EXISTS (SELECT 1 FROM fact WHERE received = ? AND id = ?)"
                                + " AND NOT EXISTS (SELECT 1 FROM arrived WHERE happened_millis < ?)",
                        since.number(),
                        courseId,
                        since.number(),
                        since.id().toString(),
                        moment.toEpochMilli())
                .orElseThrow();
    }

    /** Documents of the facts {@code part} begins with, and of all that correct one of them, directly or by a chain. */
    private String withCorrections() {
        String joined = dialect.joinAfter() + "fact";
        return " UNION SELECT fact.id FROM part" + joined + " ON fact.corrects = part.id)" + " SELECT " + ROW
                + " FROM part" + joined + " ON fact.id = part.id";
    }

    private void read(FactReader reader, String query, Object... arguments) {
        sql.each(reader::take, query, arguments);
    }
}
