package org.cupwright.green.strips;

import java.util.HashMap;
import java.util.Map;
import org.cupwright.green.Sharing;
import org.cupwright.green.SurveyPoints;

/** Covariance of what two points of one strip share of their errors; points of two strips share nothing. */
final class SharedLikeness {
    private final SurveyPoints points;
    private final Sharing sharing;
    private final double[] walked;

    SharedLikeness(SurveyPoints points, Sharing sharing) {
        this.points = points;
        this.sharing = sharing;
        this.walked = sharing.alongWalk() ? walked(points) : new double[0];
    }

    /** Metres walked up to each point within its own strip. */
    private static double[] walked(SurveyPoints points) {
        double[] walked = new double[points.count()];
        Map<Integer, Integer> before = new HashMap<>();
        for (int i = 0; i < walked.length; i++) {
            Integer last = before.put(points.strip(i), i);
            walked[i] = last == null ? 0 : walked[last] + apart(points, last, i);
        }
        return walked;
    }

    private static double apart(SurveyPoints points, int one, int other) {
        return Math.hypot(points.east(other) - points.east(one), points.north(other) - points.north(one));
    }

    /** m². */
    double covariance(int one, int other) {
        double length = sharing.lengthMetres();
        double lengths = (sharing.alongWalk() ? walked[other] - walked[one] : apart(points, one, other)) / length;
        double fade = sharing.alongWalk() ? Math.abs(lengths) : lengths * lengths / 2;
        return sharing.sigmaMetres() * sharing.sigmaMetres() * StrictMath.exp(-fade);
    }
}
