package org.cupwright.app.store;

import java.time.Clock;
import java.time.LocalDate;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.PolicyHistory;

record SqlPolicies(Sql sql, Clock clock) implements PolicyStore {
    @Override
    public PolicyHistory history(String courseId) {
        return new PolicyHistory(sql.list(
                row -> new PolicyChange(LocalDate.parse(row.getString(1)), row.getString(2), row.getString(3)),
                "SELECT effective, setting, value FROM policy_change WHERE course IN ('', ?) ORDER BY course = ?, id",
                courseId,
                courseId));
    }

    @Override
    public void add(String courseId, PolicyChange change) {
        sql.change(
                "INSERT INTO policy_change (course, recorded_at, effective, setting, value) VALUES (?, ?, ?, ?, ?)",
                courseId,
                clock.instant().toString(),
                change.effective().toString(),
                change.key(),
                change.value());
    }
}
