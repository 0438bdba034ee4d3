package org.cupwright.benchmarks;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.SurveyKind;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeSurvey;
import org.cupwright.testing.Shapes;

/**
 * How long a green of 30 × 30 m takes to fit, by kind of survey, with what its points share of their errors and
 * without: medians of five, in turns. Stops where sharing makes a slope better known than it was.
 */
public final class FitByKind {
    private static final Outline GREEN = Shapes.rectangle(0, 0, 30, 30);
    private static final MapPoint MIDDLE = new MapPoint(15, 15);
    private static final int TURNS = 5;

    private FitByKind() {}

    public static void main(String[] arguments) throws SurveyTooThin {
        System.out.println("| kind | points | nothing shared, ms | with what is shared, ms |");
        System.out.println("|---|---|---|---|");
        for (SurveyKind kind : SurveyKind.values()) {
            SurveyPoints points =
                    new MadeSurvey(MadeSurface.gentle(1, 15), -2, -2, 32, 32, perSquareMetre(kind), 0.01, 3).points();
            List<Long> without = new ArrayList<>();
            List<Long> with = new ArrayList<>();
            for (int turn = 0; turn < TURNS; turn++) {
                double own = fit(points, without);
                if (fit(points.as(kind), with) < own) {
                    throw new IllegalStateException(kind + ": sharing makes a slope better known");
                }
            }
            System.out.printf(
                    Locale.ROOT, "| %s | %d | %d | %d |%n", kind, points.count(), median(without), median(with));
        }
    }

    /** Our choice of what such surveys have. */
    private static double perSquareMetre(SurveyKind kind) {
        return switch (kind) {
            case LIDAR, LEVELLED -> 8;
            case DRONE -> 40;
            case RTK -> 2;
            case SCAN -> 100;
        };
    }

    /** The standard error of the slope in the green's middle. */
    private static double fit(SurveyPoints points, List<Long> milliseconds) throws SurveyTooThin {
        long began = System.nanoTime();
        SurveyedGround ground = SurveyedGround.fit(GREEN, points, Policy.defaults());
        milliseconds.add((System.nanoTime() - began) / 1_000_000);
        return ground.planeAt(MIDDLE).orElseThrow().slopeStandardError();
    }

    private static long median(List<Long> milliseconds) {
        Collections.sort(milliseconds);
        return milliseconds.get(TURNS / 2);
    }
}
