package org.cupwright.green.spline;

import java.util.Arrays;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.testing.MadeSurvey;

/**
 * What the same fit (knots, penalty, places of the points that counted) makes of known ground without noise: how far
 * that is off is the fit's systematic error.
 */
public final class SameFit {
    private SameFit() {}

    public static Surface through(Surface ground, SurveySpline spline) {
        SurveyPoints used = spline.used();
        double[] heights = new double[used.count()];
        Jet jet = new Jet();
        Arrays.setAll(heights, i -> {
            ground.at(used.east(i), used.north(i), jet);
            return jet.z;
        });
        FittedSpline fitted = spline.refit(1, MadeSurvey.withHeights(used, heights));
        return new PolynomialSurface(fitted.equations.grid, fitted.coefficients, fitted.equations.datumMetres);
    }
}
