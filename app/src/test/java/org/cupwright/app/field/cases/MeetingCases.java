package org.cupwright.app.field.cases;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** What two tapes read, and where whoever reads them stands; or that they do not meet. */
final class MeetingCases {
    private static final int CASES = 450;

    private MeetingCases() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        Random random = new Random(47_000);
        while (lines.size() < CASES) {
            double[][][] green = {ring(random)};
            double[] first = mark(random);
            double[] second = mark(random);
            double[] near = {24 * (random.nextDouble() - 0.5), 24 * (random.nextDouble() - 0.5)};
            boolean misread = lines.size() % 6 == 0;
            double r = Case.asWritten(SlowPlane.distance(first, near) * (misread ? 0.2 + random.nextDouble() : 1));
            double s = Case.asWritten(SlowPlane.distance(second, near) * (misread ? 0.2 + random.nextDouble() : 1));
            line(green, first, r, second, s, lines);
        }
        return lines;
    }

    private static double[] mark(Random random) {
        double turn = 2 * Math.PI * random.nextDouble();
        double away = 14 + 10 * random.nextDouble();
        return new double[] {Case.asWritten(away * StrictMath.sin(turn)), Case.asWritten(away * StrictMath.cos(turn))};
    }

    /** A green whose middle is at 0, 0: of each corner there is another one straight across. */
    private static double[][] ring(Random random) {
        int half = 5 + random.nextInt(12);
        double[][] ring = new double[2 * half][];
        for (int i = 0; i < half; i++) {
            double turn = Math.PI * i / half;
            double radius = 8 + 5 * random.nextDouble();
            double x = Case.asWritten(radius * StrictMath.sin(turn));
            double y = Case.asWritten(radius * StrictMath.cos(turn));
            ring[i] = new double[] {x, y};
            ring[half + i] = new double[] {-x, -y};
        }
        return ring;
    }

    private static void line(
            double[][][] green, double[] first, double r, double[] second, double s, List<String> lines) {
        double between = SlowPlane.distance(first, second);
        // as good as touching, or one mark as good as on the other: neither is told apart by such numbers
        if (Math.abs(r + s - between) < 0.05 || Math.abs(Math.abs(r - s) - between) < 0.05 || between < 1) {
            return;
        }
        List<double[]> both = SlowPlane.meetings(first, r, second, s);
        String says = "meet green=" + Case.written(green) + " first=" + Case.written(first) + " r=" + Case.written(r)
                + " second=" + Case.written(second) + " s=" + Case.written(s);
        if (both.isEmpty()) {
            lines.add(says + " at=none");
            return;
        }
        Comparator<double[]> offGreen = Comparator.comparing(at -> !SlowPlane.inside(green, at[0], at[1]));
        double[] middle = {0, 0};
        double[] meant = both.stream()
                .min(offGreen.thenComparing(at -> SlowPlane.distance(at, middle)))
                .orElseThrow();
        double[] other = both.get(both.get(0) == meant ? 1 : 0);
        boolean alike = Math.abs(SlowPlane.distance(meant, middle) - SlowPlane.distance(other, middle)) < 0.01;
        if (!alike && clear(green, meant) && clear(green, other)) {
            lines.add(says + " at=" + Case.written(meant));
        }
    }

    /** Not on the edge itself. */
    private static boolean clear(double[][][] green, double[] at) {
        boolean inside = SlowPlane.inside(green, at[0], at[1]);
        for (int i = 0; i < 8; i++) {
            double turn = Math.PI * i / 4;
            double x = at[0] + 0.01 * StrictMath.sin(turn);
            double y = at[1] + 0.01 * StrictMath.cos(turn);
            if (SlowPlane.inside(green, x, y) != inside) {
                return false;
            }
        }
        return true;
    }
}
