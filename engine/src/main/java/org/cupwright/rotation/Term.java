package org.cupwright.rotation;

import org.cupwright.policy.Setting;

/**
 * One wish of the day's plan, measured in its own unit; 0 is a wish fully met, and nothing is better than 0.
 *
 * <p>The plan keeps front, middle and back as even as the greens allow, and among all such plans has the least sum of
 * weight times term.
 */
public enum Term {
    /** By how much holes are nearer to yesterday's than the least distance, over all holes. */
    NEAR_YESTERDAY(Unit.METRES, RotationPolicy.WEIGHT_NEAR_YESTERDAY),
    /** By how much holes are nearer to yesterday's than the distance that is enough, over all holes. */
    CLOSE_TO_YESTERDAY(Unit.METRES, RotationPolicy.WEIGHT_CLOSE_TO_YESTERDAY),
    /** Holes in the third where the hole was, where nobody knows more of yesterday's place. */
    SAME_THIRD(Unit.HOLES, RotationPolicy.WEIGHT_SAME_THIRD),
    /** Holes whose spot is to be used with care; a locked position the rules refuse counts too. */
    CARE(Unit.HOLES, RotationPolicy.WEIGHT_CARE),
    /** Holes at whose spot a rule cannot tell for errors of measurement, and likelier refuses it. */
    DOUBTFUL(Unit.HOLES, RotationPolicy.WEIGHT_DOUBTFUL),
    /** Holes at whose spot nobody measured the slope, and of which nobody says that it is good. */
    NOT_VOUCHED_FOR(Unit.HOLES, RotationPolicy.WEIGHT_NOT_VOUCHED_FOR),
    /** Holes whose spot has less room about it than anybody paces: under {@link Aims#ROOM_AT_LEAST_METRES}. */
    NO_ROOM(Unit.HOLES, RotationPolicy.WEIGHT_NO_ROOM),
    /** By how much the room about the spots falls short of enough, over all holes. */
    LITTLE_ROOM(Unit.METRES, RotationPolicy.WEIGHT_LITTLE_ROOM),
    /** By how many holes left and right are farther apart than the course allows. */
    LEFT_RIGHT(Unit.HOLES, RotationPolicy.WEIGHT_LEFT_RIGHT),
    /** Holes off an even spread over left, centre and right. */
    LATERAL(Unit.HOLES, RotationPolicy.WEIGHT_LATERAL),
    /** Holes off the wanted spread over easier, medium and harder. */
    DIFFICULTY(Unit.HOLES, RotationPolicy.WEIGHT_DIFFICULTY);

    /** What a term is counted in. */
    public enum Unit {
        METRES,
        HOLES
    }

    private final Unit unit;
    private final Setting<Double> weight;

    Term(Unit unit, Setting<Double> weight) {
        this.unit = unit;
        this.weight = weight;
    }

    public Unit unit() {
        return unit;
    }

    /** The setting that holds its weight, points for each unit. */
    public Setting<Double> weight() {
        return weight;
    }
}
