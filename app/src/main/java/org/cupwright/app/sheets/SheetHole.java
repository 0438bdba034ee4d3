package org.cupwright.app.sheets;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.cupchange.CupWork.CutSomewhere;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.settingout.Directions;
import org.cupwright.settingout.PacedPlace;

/**
 * One hole as it stands on paper.
 *
 * @param hole its name
 * @param cut where the hole is or is to be; empty where the plan leaves the green out
 * @param lastHole where the hole to be filled with the plug is, when known
 * @param roughHole its part of the green, where no more is known
 * @param drawing the green with what lies on it
 * @param temporary whether the hole is played to a temporary green
 * @param notices what has to be known at this hole, the gravest first
 * @param since the day on which the hole was cut, where it stays as it is; empty where it is changed
 * @param area what is to be said of the course's own area it lies in, where the day's scheme names one
 */
public record SheetHole(
        String hole,
        Optional<Cut> cut,
        Optional<PlaceOnGreen> lastHole,
        Optional<CutSomewhere> roughHole,
        GreenDrawing drawing,
        boolean temporary,
        List<String> notices,
        Optional<LocalDate> since,
        Optional<String> area) {
    public SheetHole {
        notices = List.copyOf(notices);
    }

    /** Whether the hole is left where it is. */
    public boolean stays() {
        return since.isPresent();
    }

    /** The place in paces, where there is a hole and a line of play. */
    public Optional<PacedPlace> paced() {
        return cut.flatMap(location -> location.directions().place());
    }

    /**
     * A hole location with what has to be known to cut there.
     *
     * @param directions words, paces and the way from a mark; with how far off is still good, where that was judged
     * @param withRoom where else, if there is hardly any room about the hole and more on no side
     * @param onePlace whether words and paces lead to one place alone
     * @param verdict what the rules say
     * @param slopeChecked whether the slope was checked at all
     * @param setAside rules set aside today
     * @param word what people say of the spot, if they say anything
     */
    public record Cut(
            Directions directions,
            Optional<PacedPlace> withRoom,
            boolean onePlace,
            Verdict verdict,
            boolean slopeChecked,
            Set<RuleId> setAside,
            Optional<PersonsOpinion> word) {
        public Cut {
            setAside = java.util.Collections.unmodifiableSet(new java.util.TreeSet<>(setAside));
        }
    }
}
