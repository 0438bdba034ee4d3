package org.cupwright.holelocation;

/**
 * What may be conceded on a green where nothing passes, one at a time, in the order the course ranks them.
 *
 * <p>What is not in this list is never conceded: a hole on a plug, on ground out of use or the ground about it, ground
 * that people say is bad, off the green, or nearer to the edge than {@link DistancePolicy#EDGE_LEAST_PACES} (our
 * choice: nobody could call such a hole fair, or the turf would not hold it).
 */
public enum Concession {
    HOLLOW(RuleId.HOLLOW),
    EVEN_GRADE(RuleId.EVEN_GRADE),
    HAZARD(RuleId.HAZARD),
    /** Old holes may be as near as {@link DistancePolicy#OLD_HOLE_CLOSER_METRES}. */
    OLD_HOLE_CLOSER(RuleId.OLD_HOLE),
    RIDGE(RuleId.RIDGE),
    /** The edge may be as near as {@link DistancePolicy#EDGE_LEAST_PACES}. */
    EDGE(RuleId.EDGE),
    LEVEL(RuleId.LEVEL),
    HOLDABLE(RuleId.HOLDABLE),
    OLD_HOLE(RuleId.OLD_HOLE);

    private final RuleId rule;

    Concession(RuleId rule) {
        this.rule = rule;
    }

    /** The rule that is not held to. */
    public RuleId rule() {
        return rule;
    }

    /** Whether it is only made down to a distance: a position nearer than that keeps the rule's failure. */
    public boolean inPart() {
        return this == EDGE || this == OLD_HOLE_CLOSER;
    }
}
