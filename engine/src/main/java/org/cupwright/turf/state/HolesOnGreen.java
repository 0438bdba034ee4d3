package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;

/**
 * The hole of a green, and where it was before.
 *
 * @param now where it is; empty before the first change and while a temporary green is in play
 * @param old oldest first; those left more than {@link #KEPT_DAYS} ago are gone, but never the last {@link #LAST_KEPT}
 */
public record HolesOnGreen(Optional<CupInGround> now, List<OldHole> old) {
    /** Long past every rest, and past what foot traffic leaves to see (our choice). */
    public static final int KEPT_DAYS = 200;

    /** The rule about old holes asks for the last four. */
    public static final int LAST_KEPT = 4;

    static final HolesOnGreen NONE = new HolesOnGreen(Optional.empty(), List.of());

    public HolesOnGreen {
        old = List.copyOf(old);
    }

    HolesOnGreen cut(MapPoint at, LocalDate day) {
        return new HolesOnGreen(Optional.of(new CupInGround(at, day)), left(day).old);
    }

    HolesOnGreen left(LocalDate day) {
        if (now.isEmpty()) {
            return this;
        }
        LocalDate oldest = day.minusDays(KEPT_DAYS);
        int first = 0;
        while (first < old.size() - (LAST_KEPT - 1) && old.get(first).leftOn().isBefore(oldest)) {
            first++;
        }
        List<OldHole> kept = new ArrayList<>(old.size() - first + 1);
        kept.addAll(old.subList(first, old.size()));
        kept.add(new OldHole(now.get().at(), now.get().cutOn(), day));
        return new HolesOnGreen(Optional.empty(), kept);
    }
}
