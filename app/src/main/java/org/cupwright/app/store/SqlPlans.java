package org.cupwright.app.store;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.PlanStore;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.policy.EnumNames;

record SqlPlans(Sql sql, Clock clock) implements PlanStore {
    @Override
    public Optional<StoredPlan> find(String courseId, LocalDate day) {
        return between(courseId, day, day).stream().findFirst();
    }

    @Override
    public List<StoredPlan> between(String courseId, LocalDate first, LocalDate last) {
        return sql
                .texts(
                        "SELECT document FROM plan_version WHERE id IN (SELECT max(id) FROM plan_version"
                                + " WHERE course = ? AND day BETWEEN ? AND ? GROUP BY day) ORDER BY day",
                        courseId,
                        first.toString(),
                        last.toString())
                .stream()
                .map(document -> Documents.read(document, StoredPlan.class))
                .toList();
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
    public void add(StoredPlan plan) {
        sql.change(
                "INSERT INTO plan_version (course, day, recorded_at, state, policy_version, engine_version, document)"
                        + " VALUES (?, ?, ?, ?, ?, ?, ?)",
                plan.courseId(),
                plan.date().toString(),
                clock.instant().toString(),
                EnumNames.lowerCamel(plan.state()),
                plan.basis().policyVersion(),
                plan.basis().engineVersion(),
                Documents.write(plan));
    }
}
