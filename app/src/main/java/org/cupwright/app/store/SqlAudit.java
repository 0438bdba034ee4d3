package org.cupwright.app.store;

import java.time.Instant;
import java.util.List;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.AuditStore;

record SqlAudit(Sql sql) implements AuditStore {
    private static final String AUDIT = "audit";

    @Override
    public void add(AuditLine line) {
        sql.add(AUDIT, PeopleRows.row(line));
    }

    @Override
    public List<AuditLine> between(Instant from, Instant before) {
        return sql.checked(
                PeopleRows::audit,
                AUDIT,
                "WHERE at_millis >= ? AND at_millis < ? ORDER BY id",
                from.toEpochMilli(),
                before.toEpochMilli());
    }
}
