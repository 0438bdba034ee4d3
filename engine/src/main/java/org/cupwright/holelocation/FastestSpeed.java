package org.cupwright.holelocation;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/**
 * How fast a green will be at its fastest on a day: the speed to judge by.
 *
 * <p>It is the day's reading, or the season's figure where nobody read, with what drying, the green's own offset,
 * rolling and a second mowing add. A speed that a person states as the day's fastest is taken as it is, without this
 * class.
 *
 * @param reading the day's reading on the green that is usually read
 * @param ownOffsetFeet how much faster than that this green is
 * @param rolled whether the greens are rolled after the reading
 * @param doubleCut whether they are mown twice after the reading
 */
public record FastestSpeed(Optional<GreenSpeed> reading, double ownOffsetFeet, boolean rolled, boolean doubleCut) {
    /** What quickens a green after the reading. */
    public enum Quickened {
        DRYING,
        ROLLED,
        DOUBLE_CUT
    }

    public GreenSpeed by(Policy policy) {
        GreenSpeed base = reading.orElseGet(() -> new GreenSpeed(policy.get(HoldPolicy.SEASON_SPEED_FEET)));
        double added = ownOffsetFeet;
        for (double feet : added(policy).values()) {
            added += feet;
        }
        return base.plus(added);
    }

    /** What comes on top of the reading for the whole course, ft; what adds nothing is not among it. */
    public Map<Quickened, Double> added(Policy policy) {
        Map<Quickened, Double> added = new EnumMap<>(Quickened.class);
        added.put(Quickened.DRYING, policy.get(HoldPolicy.DRYING_FEET));
        if (rolled) {
            added.put(Quickened.ROLLED, policy.get(HoldPolicy.ROLLED_FEET));
        }
        if (doubleCut) {
            added.put(Quickened.DOUBLE_CUT, policy.get(HoldPolicy.DOUBLE_CUT_FEET));
        }
        added.values().removeIf(feet -> feet == 0);
        return added;
    }
}
