package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork.CutSomewhere;

/**
 * The hole of a green, and where it was before.
 *
 * @param now where it is; empty before the first change and while a temporary green is in play
 * @param old oldest first; those left more than {@link #KEPT_DAYS} ago are gone, but never the last {@link #LAST_KEPT}
 * @param rough the last two of which only the part of the green is known, oldest first
 */
public record HolesOnGreen(Optional<CupInGround> now, List<OldHole> old, List<RoughHole> rough) {
    /** Long past every rest, and past what foot traffic leaves to see (our choice). */
    public static final int KEPT_DAYS = 200;

    /** The rule about old holes asks for the last four. */
    public static final int LAST_KEPT = 4;

    static final HolesOnGreen NONE = new HolesOnGreen(Optional.empty(), List.of(), List.of());

    public HolesOnGreen {
        old = List.copyOf(old);
        rough = List.copyOf(rough);
    }

    HolesOnGreen cut(MapPoint at, LocalDate day) {
        HolesOnGreen before = left(day);
        return new HolesOnGreen(Optional.of(new CupInGround(at, day)), before.old, before.rough);
    }

    HolesOnGreen cutSomewhere(CutSomewhere part, LocalDate day) {
        HolesOnGreen before = left(day);
        List<RoughHole> known = new ArrayList<>(before.rough);
        known.add(new RoughHole(part, day, Optional.empty()));
        return new HolesOnGreen(
                Optional.empty(), before.old, known.subList(Math.max(0, known.size() - 2), known.size()));
    }

    /** Where the hole was before a day's change, where only the part of the green is known. */
    public Optional<RoughHole> roughlyBefore(LocalDate day) {
        return rough.stream().filter(hole -> hole.before(day)).reduce((earlier, later) -> later);
    }

    HolesOnGreen left(LocalDate day) {
        List<RoughHole> leftRough = rough.stream().map(hole -> hole.left(day)).toList();
        if (now.isEmpty()) {
            return new HolesOnGreen(now, old, leftRough);
        }
        LocalDate oldest = day.minusDays(KEPT_DAYS);
        int first = 0;
        while (first < old.size() - (LAST_KEPT - 1) && old.get(first).leftOn().isBefore(oldest)) {
            first++;
        }
        List<OldHole> kept = new ArrayList<>(old.size() - first + 1);
        kept.addAll(old.subList(first, old.size()));
        kept.add(new OldHole(now.get().at(), now.get().cutOn(), day));
        return new HolesOnGreen(Optional.empty(), kept, leftRough);
    }
}
