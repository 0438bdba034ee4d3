package org.cupwright.holelocation.spot;

/**
 * How far balls roll on that cross a spot at the course's pace, over the headings from which a putt can come.
 *
 * <p>A ball that runs off the green, or further than {@link LeaveMeter#FARTHEST_METRES}, counts as that far.
 *
 * @param worstMetres distance from the spot to where the worst ball rests
 * @param meanMetres mean over the headings
 * @param headings how many headings count; none where no putt can start on the green
 */
public record Leave(double worstMetres, double meanMetres, int headings) {
    /** Nothing is known of the ground, or no putt can come from anywhere. */
    public static final Leave UNKNOWN = new Leave(Double.NaN, Double.NaN, 0);

    public boolean known() {
        return headings > 0;
    }
}
