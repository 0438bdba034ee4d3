package org.cupwright.app.desk.green;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.turf.DayTurf;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.items.GroundItems;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.turf.state.CupInGround;
import org.cupwright.turf.state.HolesOnGreen;
import org.cupwright.turf.state.OldHole;
import org.cupwright.turf.state.RoughHole;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.today.ComingGround;
import org.cupwright.turf.today.TurfDay;

/**
 * What lies on the greens on a day, before its holes are cut: as the logbook has it, and the plans where it is silent.
 */
public final class DayGround {
    private final LocalDate date;
    private final Course course;
    private final TurfDay turf;
    private final TurfState state;
    private final ComingGround coming;

    private DayGround(CourseDay day, TurfDay turf) {
        this.date = day.date();
        this.course = day.course();
        this.turf = turf;
        this.state = turf.state();
        this.coming = new ComingGround(turf);
    }

    static DayGround of(Stores stores, CourseDay day) {
        return new DayGround(day, DayTurf.of(stores, day));
    }

    /** What the logbook says of the turf on the day. */
    TurfDay turf() {
        return turf;
    }

    /** A green's ground: what the turf's clocks say of it, for all the holes played to it, and what else is known. */
    GroundOnDay on(Hole hole, GroundItems others) {
        List<GroundItem> items = new ArrayList<>(others.of(hole.id()));
        items.addAll(coming(hole, date));
        return new GroundOnDay(date, items);
    }

    /** What will lie on a green on a coming day besides its old holes, if nothing was cut until then. */
    GroundOnDay withoutHoles(Hole hole, LocalDate day) {
        List<GroundItem> items = new ArrayList<>(coming(hole, day));
        items.removeIf(item -> item.kind() == GroundItem.Kind.OLD_HOLE);
        return new GroundOnDay(day, items);
    }

    private List<GroundItem> coming(Hole hole, LocalDate day) {
        return course.onGreenOf(hole).stream()
                .flatMap(id -> coming.on(id, day).items().stream())
                .toList();
    }

    /** The holes of a green until now. */
    HolesOnGreen holes(String hole) {
        return state.green(hole).holes();
    }

    /** Whether the hole is played to a temporary green, so that its own green is left in peace. */
    boolean temporaryGreen(String hole) {
        return state.green(hole).temporaryGreen();
    }

    /** Where the hole is before the day's change, where only the part of the green is known. */
    Optional<RoughHole> roughly(String hole) {
        return state.green(hole).holes().roughlyBefore(date);
    }

    /** Where the hole is before the day's change; empty when nobody knows, or it is not on this green. */
    Optional<MapPoint> last(String hole) {
        HolesOnGreen holes = state.green(hole).holes();
        if (holes.roughlyBefore(date).isPresent()) {
            return Optional.empty();
        }
        Optional<CupInGround> now = holes.now();
        if (now.isPresent() && now.get().cutOn().isBefore(date)) {
            return now.map(CupInGround::at);
        }
        return now.flatMap(cutToday -> holes.old().stream()
                .filter(old -> old.cutOn().isBefore(date))
                .reduce((earlier, later) -> later)
                .map(OldHole::at));
    }
}
