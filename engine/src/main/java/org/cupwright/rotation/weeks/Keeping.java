package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.Wishes;

/** Which of the spots that a hole may have on the first day of its stay it may keep on a later one. */
final class Keeping {
    private Keeping() {}

    /**
     * All but those of which the later day's ground, or whoever rules ground out for it, says otherwise than the first
     * day's did: what a person asked for against the rules stays as well.
     *
     * @param spots the spots by number
     * @param first the ground of the stay's first day
     * @param later the ground of a later one
     * @param wishes what was decided for that
     */
    static BitSet still(BitSet offered, List<Candidate> spots, OnGround first, OnGround later, Wishes wishes) {
        List<Candidate> all = new ArrayList<>();
        offered.stream().mapToObj(spots::get).forEach(all::add);
        List<Candidate> before = first.of(all);
        List<Candidate> after = later.of(all);
        BitSet still = new BitSet();
        int i = 0;
        for (int spot = offered.nextSetBit(0); spot >= 0; spot = offered.nextSetBit(spot + 1)) {
            Candidate was = before.get(i);
            Candidate is = after.get(i);
            boolean worse = !is.usable() && is.verdict() != was.verdict() || is.onSavedGround() && !was.onSavedGround();
            if (!worse && wishes.forbidden().stream().noneMatch(circle -> circle.holds(is.at()))) {
                still.set(spot);
            }
            i++;
        }
        return still;
    }
}
