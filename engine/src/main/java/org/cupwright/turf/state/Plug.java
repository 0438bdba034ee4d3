package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.PlugWork.PlugLook;

/**
 * A plug that nobody has seen knit.
 *
 * @param setOn the day it was set, or first seen
 * @param knitsSince the day from which it knits: set, lifted, exchanged, or the ground tined or topdressed
 * @param wateredOn the last day it was watered by hand
 * @param look how it looked last, since it was last set
 * @param seenOn the day of that look
 */
public record Plug(
        MapPoint at,
        LocalDate setOn,
        LocalDate knitsSince,
        Optional<LocalDate> wateredOn,
        Optional<PlugLook> look,
        Optional<LocalDate> seenOn) {
    static Plug set(MapPoint at, LocalDate day) {
        return new Plug(at, day, day, Optional.empty(), Optional.empty(), Optional.empty());
    }

    Plug watered(LocalDate day) {
        return new Plug(at, setOn, knitsSince, Optional.of(day), look, seenOn);
    }

    Plug seen(PlugLook how, LocalDate day) {
        return new Plug(at, setOn, knitsSince, wateredOn, Optional.of(how), Optional.of(day));
    }

    /** The ground about it was broken or covered. */
    Plug disturbed(LocalDate day) {
        return new Plug(at, setOn, day, wateredOn, look, seenOn);
    }

    /** Taken up and set again, or exchanged: how it looked before no longer counts. */
    Plug setAgain(LocalDate day) {
        return new Plug(at, setOn, day, wateredOn, Optional.empty(), Optional.empty());
    }
}
