package org.cupwright.benchmarks;

import org.cupwright.course.Hole;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.Green;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.holelocation.spot.GreenMeasurement;
import org.cupwright.holelocation.spot.MeasurementBytes;
import org.cupwright.policy.Policy;
import org.cupwright.units.GreenSpeed;

/**
 * What remembering measured greens saves: fitting and measuring every surveyed green of the invented course against
 * reading it from bytes, in one run, and whether every spot is the same to the bit.
 */
public final class RememberedGreens {
    private static final Policy POLICY = Policy.defaults();
    private static final GreenSpeed SPEED = new GreenSpeed(10);

    private RememberedGreens() {}

    public static void main(String[] arguments) throws SurveyTooThin {
        DemoCourse demo = new DemoCourse(1);
        double fresh = 0;
        double remembered = 0;
        long bytes = 0;
        int greens = 0;
        for (Hole hole : demo.course().holes()) {
            if (!demo.survey(hole.id()).isEmpty()) {
                SurveyPoints points = SurveyPoints.scattered(demo.survey(hole.id()));
                long start = System.nanoTime();
                SurveyedGround ground = SurveyedGround.fit(hole.green(), points, POLICY);
                GreenMeasurement measured = GreenMeasurement.measure(new Green(hole, ground), SPEED, POLICY);
                fresh += seconds(start);
                byte[] kept = MeasurementBytes.write(measured, ground);
                start = System.nanoTime();
                GreenMeasurement read = MeasurementBytes.read(kept, hole, () -> ground, SPEED, POLICY)
                        .orElseThrow();
                remembered += seconds(start);
                if (!read.grid().spots().equals(measured.grid().spots())) {
                    throw new IllegalStateException("hole " + hole.id() + " is remembered otherwise than measured");
                }
                bytes += kept.length;
                greens++;
            }
        }
        System.out.printf(
                "%d greens: measured in %.2f s, remembered in %.2f s, ratio %.0f; %.1f MB%n",
                greens, fresh, remembered, fresh / remembered, bytes / 1e6);
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
