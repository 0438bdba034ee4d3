package org.cupwright.testing.trials;

/** The least-squares plane and quadratic to true heights over a disc, from a fine square lattice of places. */
final class TrueShape {
    private static final double STEP_METRES = 0.05;

    private TrueShape() {}

    /** Slope east and north, then second derivatives east², east·north, north². */
    static double[] over(TrialGround.Height ground, double x, double y, double radius) {
        double[] sums = new double[5];
        double xx = 0;
        double fourth = 0;
        double mixed = 0;
        int count = 0;
        int reach = (int) (radius / STEP_METRES);
        double meanSquare = meanSquare(radius);
        double round = 0;
        for (int i = -reach; i <= reach; i++) {
            for (int j = -reach; j <= reach; j++) {
                double dx = i * STEP_METRES;
                double dy = j * STEP_METRES;
                if (dx * dx + dy * dy <= radius * radius) {
                    double z = ground.at(x + dx, y + dy);
                    double square = dx * dx + dy * dy - meanSquare;
                    sums[0] += dx * z;
                    sums[1] += dy * z;
                    sums[2] += (dx * dx - dy * dy) * z;
                    sums[3] += dx * dy * z;
                    sums[4] += square * z;
                    xx += dx * dx;
                    fourth += Math.pow(dx * dx - dy * dy, 2);
                    mixed += dx * dx * dy * dy;
                    round += square * square;
                    count++;
                }
            }
        }
        double saddle = sums[2] / fourth;
        double bowl = sums[4] / round;
        return new double[] {
            sums[0] / xx, sums[1] / xx, 2 * (bowl + saddle), sums[3] / mixed, 2 * (bowl - saddle), count
        };
    }

    private static double meanSquare(double radius) {
        int reach = (int) (radius / STEP_METRES);
        double sum = 0;
        int count = 0;
        for (int i = -reach; i <= reach; i++) {
            for (int j = -reach; j <= reach; j++) {
                double square = STEP_METRES * STEP_METRES * (i * i + j * j);
                if (square <= radius * radius) {
                    sum += square;
                    count++;
                }
            }
        }
        return sum / count;
    }

    /** The greatest size of the second derivative over all directions, 1/m. */
    static double greatestBend(double[] shape) {
        double trace = shape[2] + shape[4];
        double root = Math.sqrt(Math.pow(shape[2] - shape[4], 2) + 4 * shape[3] * shape[3]);
        return (Math.abs(trace) + root) / 2;
    }
}
