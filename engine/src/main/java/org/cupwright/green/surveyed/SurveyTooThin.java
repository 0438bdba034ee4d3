package org.cupwright.green.surveyed;

/** A survey from which no surface can be fitted on a green; carries what a finding needs to say so. */
public final class SurveyTooThin extends Exception {
    private static final long serialVersionUID = 1L;

    /** What is wrong with it. */
    public enum Reason {
        /** Fewer points on the green and its margin than a single disc needs. */
        TOO_FEW_POINTS,
        /** All points lie on one line or one spot. */
        ON_A_LINE,
        /** A grid whose cells are too wide to show the slope about a hole. */
        CELLS_TOO_WIDE,
        /** Heights or places so far apart that no surface through them can be worked out. */
        NO_FIT
    }

    private final Reason reason;
    private final int points;
    private final double found;
    private final double needed;

    /**
     * @param points points on the green and its margin
     * @param found what there is: points, metres across the line, or metres of cell
     * @param needed what there must be, in the same unit
     */
    public SurveyTooThin(Reason reason, int points, double found, double needed) {
        super(reason + ": " + points + " points, " + found + " where " + needed + " is the limit");
        this.reason = reason;
        this.points = points;
        this.found = found;
        this.needed = needed;
    }

    public Reason reason() {
        return reason;
    }

    public int points() {
        return points;
    }

    public double found() {
        return found;
    }

    public double needed() {
        return needed;
    }
}
