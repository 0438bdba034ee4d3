package org.cupwright.app.store;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.app.storage.PlanChange;
import org.cupwright.app.storage.PlanStore;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.policy.EnumNames;

record SqlPlans(Sql sql, Clock clock) implements PlanStore {
    @Override
    public Optional<StoredPlan> find(String courseId, LocalDate day) {
        return between(courseId, day, day).stream().findFirst();
    }

    @Override
    public Optional<StoredPlan> find(String courseId, long number) {
        return sql
                .checked(
                        row -> Documents.read(row.getString("document"), StoredPlan.class),
                        "plan_version",
                        "WHERE course = ? AND id = ?",
                        courseId,
                        number)
                .stream()
                .findFirst();
    }

    @Override
    public List<StoredPlan> between(String courseId, LocalDate first, LocalDate last) {
        return sql.checked(
                row -> Documents.read(row.getString("document"), StoredPlan.class),
                "plan_version",
                "WHERE id IN (SELECT max(id) FROM plan_version"
                        + " WHERE course = ? AND day BETWEEN ? AND ? GROUP BY day) ORDER BY day",
                courseId,
                first.toString(),
                last.toString());
    }

    @Override
    public List<LocalDate> days(String courseId, int atMost) {
        return sql.list(
                row -> LocalDate.parse(row.getString(1)),
                "SELECT DISTINCT day FROM plan_version WHERE course = ? ORDER BY day DESC LIMIT ?",
                courseId,
                atMost);
    }

    @Override
    public Map<LocalDate, Kept> kept(String courseId, LocalDate first, LocalDate last) {
        Map<LocalDate, Kept> kept = new TreeMap<>();
        sql.each(
                row -> kept.put(
                        LocalDate.parse(row.getString(1)), new Kept(row.getInt(2), Instant.parse(row.getString(3)))),
                "SELECT newest.day, counted.times, newest.recorded_at FROM plan_version newest"
                        + " JOIN (SELECT max(id) AS id, count(*) AS times FROM plan_version"
                        + " WHERE course = ? AND day BETWEEN ? AND ? GROUP BY day) counted ON counted.id = newest.id",
                courseId,
                first.toString(),
                last.toString());
        return kept;
    }

    @Override
    public Map<LocalDate, Long> numbers(String courseId, LocalDate first, LocalDate last) {
        Map<LocalDate, Long> numbers = new TreeMap<>();
        sql.each(
                row -> numbers.put(LocalDate.parse(row.getString(1)), row.getLong(2)),
                "SELECT day, max(id) FROM plan_version WHERE course = ? AND day BETWEEN ? AND ? GROUP BY day",
                courseId,
                first.toString(),
                last.toString());
        return numbers;
    }

    @Override
    public Optional<StoredPlan> before(String courseId, LocalDate day, PlanChange change) {
        List<StoredPlan> newestFirst = sql.checked(
                row -> Documents.read(row.getString("document"), StoredPlan.class),
                "plan_version",
                "WHERE course = ? AND day = ? ORDER BY id DESC",
                courseId,
                day.toString());
        int oldest = -1;
        for (int version = 0; version < newestFirst.size(); version++) {
            oldest = newestFirst.get(version).change().equals(Optional.of(change)) ? version : oldest;
        }
        return oldest < 0 || oldest + 1 == newestFirst.size()
                ? Optional.empty()
                : Optional.of(newestFirst.get(oldest + 1));
    }

    @Override
    public void add(StoredPlan plan) {
        sql.add(
                "plan_version",
                new CheckedRow()
                        .with("course", plan.courseId())
                        .with("day", plan.date().toString())
                        .with("recorded_at", clock.instant().toString())
                        .with("state", EnumNames.lowerCamel(plan.state()))
                        .with("policy_version", plan.basis().policyVersion())
                        .with("engine_version", plan.basis().engineVersion())
                        .with("document", Documents.write(plan)));
    }
}
