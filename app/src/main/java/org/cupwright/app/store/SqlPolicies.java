package org.cupwright.app.store;

import java.time.Clock;
import java.time.LocalDate;
import org.cupwright.app.storage.PolicyStore;
import org.cupwright.policy.PolicyChange;
import org.cupwright.policy.PolicyHistory;

record SqlPolicies(Sql sql, Clock clock) implements PolicyStore {
    @Override
    public PolicyHistory history(String courseId) {
        return new PolicyHistory(sql.checked(
                row -> new PolicyChange(
                        LocalDate.parse(row.getString("effective")), row.getString("setting"), row.getString("value")),
                "policy_change",
                "WHERE course IN ('', ?) ORDER BY course = ?, id",
                courseId,
                courseId));
    }

    @Override
    public void add(String courseId, PolicyChange change) {
        sql.add(
                "policy_change",
                new CheckedRow()
                        .with("course", courseId)
                        .with("recorded_at", clock.instant().toString())
                        .with("effective", change.effective().toString())
                        .with("setting", change.key())
                        .with("value", change.value()));
    }
}
