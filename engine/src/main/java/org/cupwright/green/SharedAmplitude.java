package org.cupwright.green;

/**
 * How much the points of a survey share of their errors, as ground that was covered twice has shown.
 *
 * @param sigmaMetres standard deviation of the shared error
 * @param errorMetres standard error of that
 * @param lengthMetres the length of the process it was measured for, as {@link Sharing#lengthMetres()}
 */
public record SharedAmplitude(double sigmaMetres, double errorMetres, double lengthMetres) {
    public SharedAmplitude {
        if (!(sigmaMetres > 0) || !(errorMetres > 0) || !(lengthMetres > 0)) {
            throw new IllegalArgumentException(
                    "no amplitude: " + sigmaMetres + " m, error " + errorMetres + " m, over " + lengthMetres + " m");
        }
    }
}
