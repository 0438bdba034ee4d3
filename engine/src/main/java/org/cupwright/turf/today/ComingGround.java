package org.cupwright.turf.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.cupwright.cupchange.PlugWork.PlugLook;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.turf.state.GreenState;
import org.cupwright.turf.state.HolesOnGreen;
import org.cupwright.turf.state.MarkedGround;
import org.cupwright.turf.state.OldHole;
import org.cupwright.turf.state.Plug;

/** What will lie on a green on a coming day, as it is before that day's hole is cut. */
public final class ComingGround {
    private final TurfDay turf;
    private final Clocks clocks;

    public ComingGround(TurfDay turf) {
        this.turf = turf;
        this.clocks = new Clocks(turf);
    }

    /**
     * The ground of a green on a day.
     *
     * <p>Old holes that still rest, and the last four whether or not they do, carry the last day on which they were
     * played to and the last day of their rest. The hole that is in use now is an old hole without an end, unless it
     * was cut on the asked day itself; where it was, no plug is foreseen, since nobody knows when it will be left. A
     * plug seen high, low or damaged counts until somebody sees it mended.
     *
     * @param day this day or a coming one, at most {@link TurfDay#DAYS_AHEAD} days from it
     */
    public GroundOnDay on(String hole, LocalDate day) {
        GreenState green = turf.state().green(hole);
        List<GroundItem> items = new ArrayList<>();
        List<OldHole> old = green.holes().old();
        for (int i = 0; i < old.size(); i++) {
            LocalDate restsUntil = clocks.rest(old.get(i)).lastDay();
            if (!restsUntil.isBefore(day) || i >= old.size() - HolesOnGreen.LAST_KEPT) {
                items.add(item(Kind.OLD_HOLE, old.get(i).at(), old.get(i).lastDay(), Optional.of(restsUntil)));
            }
        }
        green.cup()
                .filter(cup -> cup.cutOn().isBefore(day))
                .map(cup -> item(Kind.OLD_HOLE, cup.at(), day.minusDays(1), Optional.empty()))
                .ifPresent(items::add);
        for (VisiblePlug visible : clocks.plugsOn(hole, turf.day())) {
            items.add(item(
                    Kind.PLUG,
                    visible.plug().at(),
                    visible.plug().setOn(),
                    faulty(visible.plug()) ? Optional.empty() : Optional.of(visible.countsUntil())));
        }
        for (MarkedGround ground : green.marked()) {
            if (ground.countsOn(day)) {
                items.add(
                        new GroundItem(kind(ground.use()), ground.place(), Optional.of(ground.from()), ground.until()));
            }
        }
        return new GroundOnDay(day, items);
    }

    private static boolean faulty(Plug plug) {
        return plug.look().filter(look -> look != PlugLook.LEVEL).isPresent();
    }

    private static Kind kind(GroundUse use) {
        return switch (use) {
            case CLOSED -> Kind.OUT_OF_USE;
            case LIGHT_USE -> Kind.LIGHT_USE;
            case SAVED -> Kind.SAVED;
            case FREE -> throw new IllegalStateException("freed ground is not kept as marked");
        };
    }

    private static GroundItem item(Kind kind, MapPoint at, LocalDate since, Optional<LocalDate> until) {
        return new GroundItem(kind, at.toPoint(), Optional.of(since), until);
    }
}
