package org.cupwright.rotation.weeks;

import java.time.LocalDate;

/** How long the ground about an old hole rests and its plug shows, by the day on which the hole was left. */
public interface RestDays {
    /** The last day on which the ground rests. */
    LocalDate restsUntil(LocalDate leftOn);

    /** The last day on which the plug is taken to show. */
    LocalDate plugShowsUntil(LocalDate leftOn);
}
