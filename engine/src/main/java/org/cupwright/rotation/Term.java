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
    NEAR_YESTERDAY(Unit.METRES),
    /** By how much holes are nearer to yesterday's than the distance that is enough, over all holes. */
    CLOSE_TO_YESTERDAY(Unit.METRES),
    /** Holes whose spot is to be used with care; a locked position the rules refuse counts too. */
    CARE(Unit.HOLES),
    /** Holes at whose spot a rule cannot tell for errors of measurement, and likelier refuses it. */
    DOUBTFUL(Unit.HOLES),
    /** Holes at whose spot nobody measured the slope, and of which nobody says that it is good. */
    NOT_VOUCHED_FOR(Unit.HOLES),
    /** Holes whose spot has less room about it than anybody paces: under {@link Aims#ROOM_AT_LEAST_METRES}. */
    NO_ROOM(Unit.HOLES),
    /** By how much the room about the spots falls short of enough, over all holes. */
    LITTLE_ROOM(Unit.METRES),
    /** By how many holes left and right are farther apart than the course allows. */
    LEFT_RIGHT(Unit.HOLES),
    /** Holes off an even spread over left, centre and right. */
    LATERAL(Unit.HOLES),
    /** Holes off the wanted spread over easier, medium and harder. */
    DIFFICULTY(Unit.HOLES);

    /** What a term is counted in. */
    public enum Unit {
        METRES,
        HOLES
    }

    private final Unit unit;

    Term(Unit unit) {
        this.unit = unit;
    }

    public Unit unit() {
        return unit;
    }

    /** The setting that holds its weight, points for each unit. */
    public Setting<Double> weight() {
        return switch (this) {
            case NEAR_YESTERDAY -> RotationPolicy.WEIGHT_NEAR_YESTERDAY;
            case CLOSE_TO_YESTERDAY -> RotationPolicy.WEIGHT_CLOSE_TO_YESTERDAY;
            case CARE -> RotationPolicy.WEIGHT_CARE;
            case DOUBTFUL -> RotationPolicy.WEIGHT_DOUBTFUL;
            case NOT_VOUCHED_FOR -> RotationPolicy.WEIGHT_NOT_VOUCHED_FOR;
            case NO_ROOM -> RotationPolicy.WEIGHT_NO_ROOM;
            case LITTLE_ROOM -> RotationPolicy.WEIGHT_LITTLE_ROOM;
            case LEFT_RIGHT -> RotationPolicy.WEIGHT_LEFT_RIGHT;
            case LATERAL -> RotationPolicy.WEIGHT_LATERAL;
            case DIFFICULTY -> RotationPolicy.WEIGHT_DIFFICULTY;
        };
    }

    /** Whether the term is of the day as a whole, not a sum over its holes. */
    public boolean ofTheWholeDay() {
        return this == LEFT_RIGHT || this == LATERAL || this == DIFFICULTY;
    }
}
