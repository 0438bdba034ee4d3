package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.cupchange.GroundNote.GroundMarked;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.locationtech.jts.geom.Geometry;

/**
 * A piece of ground that somebody marked.
 *
 * @param place one polygon or several, in the course's frame
 * @param from the first day it counts
 * @param until the last; empty while nobody has ended it
 */
public record MarkedGround(
        GroundUse use, Geometry place, GroundReason reason, LocalDate from, Optional<LocalDate> until) {
    /** Slivers smaller than this are left by drawing, not meant, m² (our choice). */
    private static final double SLIVER_SQUARE_METRES = 0.01;

    public boolean countsOn(LocalDate day) {
        return !day.isBefore(from) && until.map(last -> !day.isAfter(last)).orElse(true);
    }

    /** What is marked once one mark more is made; what ended before {@code day} is dropped. */
    static List<MarkedGround> after(List<MarkedGround> marked, GroundMarked mark, LocalDate day) {
        List<MarkedGround> after = new ArrayList<>();
        Geometry place = mark.area().toGeometry();
        for (MarkedGround ground : marked) {
            boolean over = ground.until.map(last -> last.isBefore(day)).orElse(false);
            if (!over && mark.use() == GroundUse.FREE) {
                ground.freed(place, mark.from(), after);
            } else if (!over) {
                after.add(ground);
            }
        }
        if (mark.use() != GroundUse.FREE) {
            after.add(new MarkedGround(mark.use(), place, mark.reason(), mark.from(), mark.until()));
        }
        return List.copyOf(after);
    }

    /** This ground until the day before it is freed, and what of it is not freed after that. */
    private void freed(Geometry freed, LocalDate freeFrom, List<MarkedGround> into) {
        boolean touched = place.intersects(freed)
                && until.map(last -> !last.isBefore(freeFrom)).orElse(true);
        if (!touched) {
            into.add(this);
            return;
        }
        if (from.isBefore(freeFrom)) {
            into.add(new MarkedGround(use, place, reason, from, Optional.of(freeFrom.minusDays(1))));
        }
        Geometry rest = place.difference(freed);
        if (rest.getArea() > SLIVER_SQUARE_METRES) {
            LocalDate restFrom = from.isBefore(freeFrom) ? freeFrom : from;
            into.add(new MarkedGround(use, rest, reason, restFrom, until));
        }
    }
}
