package org.cupwright.app.people;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.storage.FactStore;
import org.cupwright.app.storage.Stores;
import org.cupwright.message.Problem;

/** Who changed what. */
public record ListAudit(Session session) {
    /**
     * The trail.
     *
     * @param zone by whose clock days are meant: the course's, or the machine's where no course is meant
     * @param lines in the order in which they were written
     */
    public record Trail(ZoneId zone, List<AuditLine> lines) {}

    /**
     * What was done on some days.
     *
     * @param from the first; empty: from the beginning
     * @param to the last; empty: up to now
     */
    public Trail between(Optional<LocalDate> from, Optional<LocalDate> to) {
        return session.look(Right.PEOPLE, stores -> {
            ZoneId zone = zone(stores);
            Instant first = from.map(day -> day.atStartOfDay(zone).toInstant()).orElse(FactStore.LONG_AGO);
            Instant end = to.map(day -> day.plusDays(1).atStartOfDay(zone).toInstant())
                    .orElse(FactStore.LONG_HENCE);
            return new Trail(zone, stores.audit().between(first, end));
        });
    }

    private ZoneId zone(Stores stores) {
        try {
            return session.course(stores).frame().zone();
        } catch (Problem noneMeant) {
            return session.clock().getZone();
        }
    }
}
