package org.cupwright.app.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.green.OnConvention;
import org.cupwright.policy.Policy;

/**
 * A day's hole locations as paper needs them.
 *
 * @param course the course's name
 * @param date the day
 * @param speedFeet the speed the day was judged at
 * @param convention from where "on" is measured
 * @param paceMetres how long a pace is
 * @param asCutAt the time as of which the holes are as they were cut; empty while the sheet is a plan
 * @param holes in round order
 * @param policy the course's settings
 */
public record DaySheet(
        String course,
        LocalDate date,
        double speedFeet,
        OnConvention convention,
        double paceMetres,
        Optional<String> asCutAt,
        List<SheetHole> holes,
        Policy policy) {
    public DaySheet {
        holes = List.copyOf(holes);
    }
}
