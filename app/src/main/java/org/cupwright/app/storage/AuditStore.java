package org.cupwright.app.storage;

import java.time.Instant;
import java.util.List;

/**
 * The audit trail: who changed what, written in the transaction of the change. Lines are only ever added; a name in
 * them is replaced where a person is erased.
 */
public interface AuditStore {
    void add(AuditLine line);

    /** Lines from one moment on and before another, in the order in which they were written. */
    List<AuditLine> between(Instant from, Instant before);
}
