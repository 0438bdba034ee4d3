package org.cupwright.app.desk.plan;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.message.Message;

/**
 * A hole that is elsewhere on a day than it was planned.
 *
 * @param from as it was planned; empty where it had no hole
 * @param to as it is planned now; empty where it has none
 * @param why the cause
 */
public record ChangedHole(
        LocalDate date, String hole, Optional<StoredHole> from, Optional<StoredHole> to, Message why) {}
