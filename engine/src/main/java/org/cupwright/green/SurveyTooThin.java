package org.cupwright.green;

/** Points from which no surface can be made: too few, or all in a line. */
public final class SurveyTooThin extends Exception {
    private static final long serialVersionUID = 1L;

    private final int points;
    private final int needed;

    public SurveyTooThin(int points, int needed) {
        super(points + " points do not make a surface", null, false, false);
        this.points = points;
        this.needed = needed;
    }

    public int points() {
        return points;
    }

    /** How many are needed at least; no more than {@link #points()} when the points are enough but lie in a line. */
    public int needed() {
        return needed;
    }
}
