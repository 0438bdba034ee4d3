package org.cupwright.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/** Invented surveys of {@link MadeCourse}'s greens with known faults, and of the same ground after it was worked on. */
final class MadeFaults {
    private static final double APART = 100;

    /** One point in every square of half a metre: no gap by chance. */
    private static final double STEP = 0.5;

    private static final double BEYOND = 2;

    private MadeFaults() {}

    /** The height that was surveyed at a spot of a green, its west and south edge being 0; NaN where nobody went. */
    private interface Heights {
        double at(int hole, double east, double north);
    }

    /** A gentle shoulder on ground that falls 1.2 % to the front. */
    private static double ground(double east, double north) {
        return 20 + 0.012 * north + bell(0.06, 3, east - 8, north - 14);
    }

    private static double bell(double height, double width, double east, double north) {
        return height * StrictMath.exp(-(east * east + north * north) / (2 * width * width));
    }

    /**
     * The first survey: green 1 rises 1 % too much to the east; on green 2 nobody went within 2.5 m of (6, 15), and one
     * point stands a quarter of a metre too high at (17, 9).
     */
    static Path first(Path folder) throws IOException {
        return write(folder.resolve("first.csv"), 1, new int[] {1, 2, 3}, (hole, east, north) -> {
            double height = ground(east, north);
            if (hole == 1) {
                return height + 0.01 * east;
            }
            boolean gap = hole == 2 && Math.hypot(east - 6, north - 15) < 2.5;
            return gap ? Double.NaN : height;
        });
    }

    /** The second: green 3 has a mound of 0.12 m at (11, 11) and a hollow of 0.05 m at (17, 5). */
    static Path second(Path folder) throws IOException {
        return write(
                folder.resolve("second.csv"),
                2,
                new int[] {3},
                (hole, east, north) -> ground(east, north)
                        + bell(0.12, 2, east - 11, north - 11)
                        - bell(0.05, 1.4, east - 17, north - 5));
    }

    private static Path write(Path file, long seed, int[] holes, Heights heights) throws IOException {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder("x,y,z\n");
        for (int hole : holes) {
            for (double row = -BEYOND; row < MadeCourse.SIDE + BEYOND; row += STEP) {
                for (double column = -BEYOND; column < MadeCourse.SIDE + BEYOND; column += STEP) {
                    double east = column + 0.8 * STEP * random.nextDouble();
                    double north = row + 0.8 * STEP * random.nextDouble();
                    line(hole, east, north, heights.at(hole, east, north) + 0.006 * random.nextGaussian(), text);
                }
            }
            if (hole == 2) {
                line(2, 17, 9, ground(17, 9) + 0.25, text);
            }
        }
        return MadeCourse.write(file, text.toString());
    }

    private static void line(int hole, double east, double north, double height, StringBuilder text) {
        if (!Double.isNaN(height)) {
            text.append(String.format(
                    Locale.ROOT,
                    "%.3f,%.3f,%.4f%n",
                    MadeCourse.WEST + APART * (hole - 1) + east,
                    MadeCourse.SOUTH + north,
                    height));
        }
    }
}
