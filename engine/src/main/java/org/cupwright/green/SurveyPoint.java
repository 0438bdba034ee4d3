package org.cupwright.green;

/**
 * One surveyed point.
 *
 * @param east metres, course frame
 * @param north metres, course frame
 * @param heightMetres height above any level that is the same for the whole survey
 */
public record SurveyPoint(double east, double north, double heightMetres) {
    public SurveyPoint {
        if (!Double.isFinite(east) || !Double.isFinite(north) || !Double.isFinite(heightMetres)) {
            throw new IllegalArgumentException("not a point: " + east + ", " + north + ", " + heightMetres);
        }
    }
}
