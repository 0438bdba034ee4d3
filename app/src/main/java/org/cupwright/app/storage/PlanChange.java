package org.cupwright.app.storage;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/**
 * A change of the plans of some days that was made as a whole, and is taken back as a whole.
 *
 * @param id its own
 * @param at when
 * @param person who made it
 * @param days the days whose plans it made anew, in order
 */
public record PlanChange(UUID id, Instant at, String person, List<LocalDate> days) {
    public PlanChange {
        days = List.copyOf(days);
    }
}
