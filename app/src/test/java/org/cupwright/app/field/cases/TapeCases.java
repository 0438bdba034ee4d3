package org.cupwright.app.field.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Spots and the marks about them: which two tapes fix each best, and how well; or that none do. */
final class TapeCases {
    private static final int CASES = 450;
    private static final double LONGEST = 50;
    private static final double SHARPEST = 30;

    private TapeCases() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        Random random = new Random(4700);
        while (lines.size() < CASES) {
            double[] at = point(random, 15, new double[] {0, 0});
            line(at, lines.size() % 3 == 0 ? borderline(at, random) : marks(random), lines);
        }
        return lines;
    }

    private static double[] point(Random random, double reach, double[] about) {
        return new double[] {
            Case.asWritten(about[0] + reach * (2 * random.nextDouble() - 1)),
            Case.asWritten(about[1] + reach * (2 * random.nextDouble() - 1))
        };
    }

    private static double[][] marks(Random random) {
        double reach = random.nextInt(4) == 0 ? 60 : 25;
        double[][] marks = new double[2 + random.nextInt(4)][];
        for (int i = 0; i < marks.length; i++) {
            marks[i] = point(random, reach, new double[] {0, 0});
        }
        return marks;
    }

    /** Two marks whose tapes meet at about the sharpest angle that does, or the flattest, or in hardly any. */
    private static double[][] borderline(double[] at, Random random) {
        double first = 360 * random.nextDouble();
        double angle = List.of(30.0, 150.0, 3.0, 177.0).get(random.nextInt(4)) + 2 * random.nextDouble() - 1;
        return new double[][] {seen(at, first, random), seen(at, first + angle, random)};
    }

    private static double[] seen(double[] at, double degrees, Random random) {
        double away = 4 + 30 * random.nextDouble();
        double turn = StrictMath.toRadians(degrees);
        return new double[] {
            Case.asWritten(at[0] + away * StrictMath.sin(turn)), Case.asWritten(at[1] + away * StrictMath.cos(turn))
        };
    }

    private static void line(double[] at, double[][] marks, List<String> lines) {
        int[] best = null;
        double least = Double.POSITIVE_INFINITY;
        boolean clear = true;
        for (int i = 0; i < marks.length; i++) {
            for (int j = i + 1; j < marks.length; j++) {
                SlowTapes tapes = new SlowTapes(at, marks[i], marks[j]);
                double angle = tapes.angleDegrees();
                double longest = Math.max(SlowPlane.distance(at, marks[i]), SlowPlane.distance(at, marks[j]));
                clear &= Math.abs(angle - SHARPEST) > 1e-3 && Math.abs(180 - angle - SHARPEST) > 1e-3;
                clear &= Math.abs(longest - LONGEST) > 1e-3;
                if (angle >= SHARPEST && angle <= 180 - SHARPEST && longest <= LONGEST) {
                    double error = tapes.positionError();
                    clear &= Math.abs(error - least) > 1e-7;
                    best = error < least ? new int[] {i, j} : best;
                    least = Math.min(error, least);
                }
            }
        }
        String says = "tapes marks=" + Case.written(marks) + " at=" + Case.written(at);
        if (clear && best == null) {
            lines.add(says + " pair=none");
        } else if (clear) {
            SlowTapes tapes = new SlowTapes(at, marks[best[0]], marks[best[1]]);
            double[] ellipse = tapes.ellipse();
            if (ellipse[0] - ellipse[1] > 1e-3) { // of a circle no axis is the longer one
                lines.add(says + " pair=" + best[0] + "," + best[1] + " read="
                        + Case.written(SlowPlane.distance(at, marks[best[0]]), SlowPlane.distance(at, marks[best[1]]))
                        + " angle=" + Case.written(tapes.angleDegrees()) + " longer=" + Case.written(ellipse[0])
                        + " shorter=" + Case.written(ellipse[1]) + " axis=" + Case.written(ellipse[2]));
            }
        }
    }
}
