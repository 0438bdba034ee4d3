package org.cupwright.green.spline;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.green.Sharing;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.Walk;

/**
 * Errors that drift along a walk, with covariance σ²·exp(−w/ℓ) after w metres, as independent standard normal parts.
 *
 * <p>The drift is taken to stay as it is over short stretches of the walk. From one stretch to the next it is a
 * first-order autoregression, whose square root is known in closed form: what is new on each stretch fades from there.
 */
final class WalkedDrift {
    /** Stretches for each length (our choice: what happens within one is as good as noise). */
    private static final double STRETCHES_PER_LENGTH = 8;

    /** No fewer stretches than this, unless they would be shorter than a metre (our choice). */
    private static final double FEWEST_STRETCHES = 100;

    /** More stretches than this are longer (our choice: keeps a fit within seconds). */
    private static final double MOST_STRETCHES = 400;

    private WalkedDrift() {}

    /** What one standard deviation of each part adds to the heights of the points, m. */
    static List<double[]> parts(SurveyPoints points, Sharing sharing) {
        double[] walked = Walk.metres(points);
        double way = walked[walked.length - 1];
        double enough = Math.max(Math.min(way, FEWEST_STRETCHES), STRETCHES_PER_LENGTH * way / sharing.lengthMetres());
        int stretches = (int) Math.ceil(Math.max(1, Math.min(MOST_STRETCHES, enough)));
        double apart = way / stretches;
        double fade = StrictMath.exp(-apart / sharing.lengthMetres());
        List<double[]> parts = new ArrayList<>();
        for (int stretch = 0; stretch <= stretches; stretch++) {
            double fresh = sharing.sigmaMetres() * (stretch == 0 ? 1 : Math.sqrt(1 - fade * fade));
            parts.add(heights(walked, apart, stretch, fresh, fade));
        }
        return parts;
    }

    /** What is new on one stretch, as the points have it: nothing before, fading after. */
    private static double[] heights(double[] walked, double apart, int stretch, double fresh, double fade) {
        double[] heights = new double[walked.length];
        for (int i = 0; i < heights.length; i++) {
            double after = apart > 0 ? Math.floor(walked[i] / apart) - stretch : 0;
            heights[i] = after < 0 ? 0 : fresh * StrictMath.pow(fade, after);
        }
        return heights;
    }
}
