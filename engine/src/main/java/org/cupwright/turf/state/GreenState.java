package org.cupwright.turf.state;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.CareWork.Maintained;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.cupchange.GroundNote.GroundMarked;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.PlugWork;

/**
 * One green as the facts have left it.
 *
 * @param hole the hole's id
 * @param marked ground that was marked and has not ended
 * @param temporaryGreen a temporary green is in play: the hole is not on this green
 * @param speedFeet the last reading on this green
 */
public record GreenState(
        String hole,
        HolesOnGreen holes,
        PlugsOnGreen plugs,
        List<MarkedGround> marked,
        CareGiven care,
        boolean temporaryGreen,
        OptionalDouble speedFeet) {
    public GreenState {
        marked = List.copyOf(marked);
    }

    static GreenState of(String hole) {
        return new GreenState(
                hole, HolesOnGreen.NONE, PlugsOnGreen.NONE, List.of(), CareGiven.NONE, false, OptionalDouble.empty());
    }

    /**
     * Whether ground marked as diseased counts on a day: plugs from here go nowhere else, and this green comes last.
     */
    public boolean diseasedOn(LocalDate day) {
        return marked.stream().anyMatch(ground -> ground.reason() == GroundReason.DISEASE && ground.countsOn(day));
    }

    /**
     * The hole was cut at a new place; the plug went where the hole was. A hole on the temporary green is not on this
     * one.
     */
    GreenState cut(MapPoint at, LocalDate day) {
        if (temporaryGreen) {
            return this;
        }
        PlugsOnGreen filled =
                holes.now().map(before -> plugs.set(before.at(), day)).orElse(plugs);
        return with(holes.cut(at, day), filled);
    }

    /** The hole was cut at a place known only as a part of the green; the plug went where the hole was. */
    GreenState cutSomewhere(CutSomewhere part, LocalDate day) {
        if (temporaryGreen) {
            return this;
        }
        PlugsOnGreen filled =
                holes.now().map(before -> plugs.set(before.at(), day)).orElse(plugs);
        return with(holes.cutSomewhere(part, day), filled);
    }

    GreenState worked(PlugWork work, LocalDate day) {
        return with(holes, plugs.worked(work, day));
    }

    GreenState marked(GroundMarked mark, LocalDate day) {
        return new GreenState(
                hole, holes, plugs, MarkedGround.after(marked, mark, day), care, temporaryGreen, speedFeet);
    }

    GreenState cared(CareWork work, LocalDate day) {
        return new GreenState(
                hole, holes, disturbedBy(work, day).plugs, marked, care.after(work, day), temporaryGreen, speedFeet);
    }

    /** Work on all greens is kept with the course; here only the plugs feel it. */
    GreenState disturbedBy(CareWork work, LocalDate day) {
        boolean disturbs = work instanceof Maintained done && done.work().disturbsPlugs();
        return disturbs ? with(holes, plugs.disturbed(day)) : this;
    }

    GreenState temporary(boolean inPlay, LocalDate day) {
        HolesOnGreen after = inPlay ? holes.left(day) : holes;
        return new GreenState(hole, after, plugs, marked, care, inPlay, speedFeet);
    }

    GreenState read(double feet) {
        return new GreenState(hole, holes, plugs, marked, care, temporaryGreen, OptionalDouble.of(feet));
    }

    /** Where the hole is, if it is on this green. */
    public Optional<CupInGround> cup() {
        return holes.now();
    }

    private GreenState with(HolesOnGreen otherHoles, PlugsOnGreen otherPlugs) {
        return new GreenState(hole, otherHoles, otherPlugs, marked, care, temporaryGreen, speedFeet);
    }
}
