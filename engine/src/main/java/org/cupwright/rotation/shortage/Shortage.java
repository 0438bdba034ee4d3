package org.cupwright.rotation.shortage;

import java.time.LocalDate;
import java.util.List;

/**
 * Why a plan of weeks cannot keep to all hard rules, as far as it is known.
 *
 * @param cause what stands against it
 * @param holes those that are played to the green
 * @param first the first of the days that want more than there is
 * @param last the last of them
 * @param wanted holes that are wanted on those days
 * @param room holes that fit at most
 * @param fit holes that surely fit; of {@link Cause#OPEN} less than wanted
 * @param restDays the longest rest of a hole of those days
 * @param planned holes of the whole plan on these greens for which a rule is set aside: on resting ground, or eased
 * @param atLeast so many are in every plan, or beside the other hole of their day: proved
 * @param proof how that is known
 * @param steps what setting something aside would buy, for the green by itself; what buys nothing is left out
 */
public record Shortage(
        Cause cause,
        List<String> holes,
        LocalDate first,
        LocalDate last,
        int wanted,
        int room,
        int fit,
        long restDays,
        int planned,
        int atLeast,
        Proof proof,
        List<Step> steps) {
    public Shortage {
        holes = List.copyOf(holes);
        steps = List.copyOf(steps);
    }

    /** What stands against keeping all rules. */
    public enum Cause {
        /** More holes are wanted on a green than fit on it while the ground about each of them rests. */
        GROUND,
        /** Its days cannot all have rested ground between them, though no window by itself has too many. */
        DAYS,
        /** Holes that were fixed beforehand are too near to each other, or to an old hole. */
        FIXED,
        /** The green by itself has ground for all its days; other wishes of the same days took it. */
        TOGETHER,
        /** Neither a plan nor a proof was found. */
        OPEN
    }

    /** How sure a cause is. */
    public enum Proof {
        /** By counting. */
        COUNTED,
        /** By the solver. */
        SOLVED,
        /** By a plan that was found. */
        SHOWN,
        /** Not at all: the solver's work ended before it had an answer. */
        WORK_ENDED,
        /** Not at all: this machine has no solver to ask. */
        NO_SOLVER
    }

    /** What may be set aside. */
    public enum Easing {
        /** Ground rests for fewer days. */
        REST_DAYS,
        /** Closed and saved ground, and what was ruled out for holes, may be used. */
        ALL_GROUND,
        /** Holes that were fixed beforehand may go elsewhere. */
        NOTHING_FIXED
    }

    /**
     * What setting something aside would buy.
     *
     * @param easing what is set aside
     * @param restDays for how many days ground would rest at most; as before for other easings
     * @param holesSetAside holes for which a rule is set aside all the same, in a plan that was found
     */
    public record Step(Easing easing, long restDays, int holesSetAside) {}
}
