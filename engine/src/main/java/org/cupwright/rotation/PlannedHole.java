package org.cupwright.rotation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.holelocation.RuleId;
import org.cupwright.message.Message;
import org.cupwright.rotation.candidate.Candidate;

/**
 * Where one hole goes, and why.
 *
 * @param hole the hole's name
 * @param candidate the position
 * @param locked whether somebody fixed it beforehand
 * @param reasons why there, most telling first; keys begin with {@code rotation.reason.}
 * @param alternative the next best position of another kind on this green; empty for a locked hole and where there is
 *     none
 * @param since the day on which it was cut, where it stays; empty where it is cut on the day
 * @param area the number of the area it lies in, of those it was to lie in
 */
public record PlannedHole(
        String hole,
        Candidate candidate,
        boolean locked,
        List<Message> reasons,
        Optional<Alternative> alternative,
        Optional<LocalDate> since,
        Optional<String> area) {
    public PlannedHole {
        reasons = List.copyOf(reasons);
    }

    /** The same hole with one reason more, the last. */
    public PlannedHole withReason(Message reason) {
        List<Message> more = new ArrayList<>(reasons);
        more.add(reason);
        return new PlannedHole(hole, candidate, locked, more, alternative, since, area);
    }

    /** Rules set aside on this green that day. */
    public Set<RuleId> setAside() {
        return candidate.judgement().setAside();
    }
}
