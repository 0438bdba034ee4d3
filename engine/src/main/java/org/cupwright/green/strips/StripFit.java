package org.cupwright.green.strips;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.SharedError;
import org.cupwright.green.strips.StripDiscs.Disc;

/**
 * By how much the slopes of strips differ over a disc: the least-squares fit of one quadratic, which is the ground, and
 * for every strip but the first of a plane besides it. So no bend of the ground passes for a difference.
 *
 * <p>Rows are the differences, two for each strip but the first: east, north. Each is a sum of heights times weights.
 */
final class StripFit {
    /** Coefficients of a quadratic in two variables, and of a plane. */
    private static final int GROUND = 6;

    private static final int PLANE = 3;

    /** Points farther off than so many standard deviations are left out: flags, feet (our choice). */
    private static final double FAR_OFF = 5;

    /** From the median of a normal variable's size to its standard deviation: 1/0.67449. */
    private static final double FROM_MEDIAN = 1.4826;

    /** No instrument's noise is less than this, m (our choice). */
    private static final double LEAST_NOISE_METRES = 2e-4;

    final Disc disc;
    private final SurveyPoints points;
    private final double radiusMetres;
    private final List<double[][]> weights = new ArrayList<>();
    private final double[] solution;

    /** @throws ArithmeticException when the points lie so that there is no one fit */
    private StripFit(SurveyPoints points, Disc disc, double radiusMetres) {
        this.points = points;
        this.disc = disc;
        this.radiusMetres = radiusMetres;
        int unknowns = GROUND + PLANE * (disc.members().size() - 1);
        double[][] normal = new double[unknowns][unknowns];
        double[] right = new double[unknowns];
        forEach((strip, i, row) -> {
            for (int a = 0; a < unknowns; a++) {
                right[a] += row[a] * height(i);
                for (int b = 0; b < unknowns; b++) {
                    normal[a][b] += row[a] * row[b];
                }
            }
        });
        this.solution = SharedError.solved(normal, right);
        weigh(normal);
    }

    /** The fit, points that are far off left out. */
    static StripFit of(SurveyPoints points, Disc disc, double radiusMetres) {
        StripFit all = new StripFit(points, disc, radiusMetres);
        List<int[]> near = new ArrayList<>();
        for (int strip = 0; strip < disc.members().size(); strip++) {
            near.add(near(disc.members().get(strip), all.residuals().get(strip)));
        }
        return new StripFit(points, new Disc(disc.east(), disc.north(), near), radiusMetres);
    }

    private static int[] near(int[] members, double[] residuals) {
        double[] sizes = Arrays.stream(residuals).map(Math::abs).sorted().toArray();
        double limit = FAR_OFF * Math.max(LEAST_NOISE_METRES, FROM_MEDIAN * sizes[sizes.length / 2]);
        return IntStream.range(0, members.length)
                .filter(k -> Math.abs(residuals[k]) <= limit)
                .map(k -> members[k])
                .toArray();
    }

    /** The same with no more than so many points of each strip: for what changes little over a disc. */
    StripFit thinned(int most) {
        List<int[]> few = disc.members().stream()
                .map(members -> IntStream.range(0, Math.min(most, members.length))
                        .map(k -> members[(int) ((long) k * members.length / Math.min(most, members.length))])
                        .toArray())
                .toList();
        return new StripFit(points, new Disc(disc.east(), disc.north(), few), radiusMetres);
    }

    /** What is done with a point: its strip's number in the disc, its own, and its row of the fit. */
    private interface Visit {
        void point(int strip, int point, double[] row);
    }

    private void forEach(Visit visit) {
        for (int strip = 0; strip < disc.members().size(); strip++) {
            for (int point : disc.members().get(strip)) {
                visit.point(strip, point, row(strip, point));
            }
        }
    }

    private double[] row(int strip, int point) {
        double x = (points.east(point) - disc.east()) / radiusMetres;
        double y = (points.north(point) - disc.north()) / radiusMetres;
        double[] row = new double[GROUND + PLANE * (disc.members().size() - 1)];
        System.arraycopy(new double[] {1, x, y, x * x, x * y, y * y}, 0, row, 0, GROUND);
        if (strip > 0) {
            System.arraycopy(new double[] {1, x, y}, 0, row, GROUND + PLANE * (strip - 1), PLANE);
        }
        return row;
    }

    /** Heights above the disc's first point: greens lie high above the sea. */
    private double height(int point) {
        return points.heightMetres(point) - points.heightMetres(disc.members().get(0)[0]);
    }

    private void weigh(double[][] normal) {
        double[][] gains = new double[rows()][];
        for (int row = 0; row < gains.length; row++) {
            double[] unit = new double[normal.length];
            unit[unknown(row)] = 1 / radiusMetres;
            gains[row] = SharedError.solved(normal, unit);
        }
        for (int strip = 0; strip < disc.members().size(); strip++) {
            weights.add(new double[rows()][disc.members().get(strip).length]);
        }
        int[] next = new int[disc.members().size()];
        forEach((strip, point, row) -> {
            for (int k = 0; k < gains.length; k++) {
                weights.get(strip)[k][next[strip]] = dot(gains[k], row);
            }
            next[strip]++;
        });
    }

    private static int unknown(int row) {
        return GROUND + PLANE * (row / 2) + 1 + row % 2;
    }

    private List<double[]> residuals() {
        List<double[]> residuals = new ArrayList<>();
        for (int strip = 0; strip < disc.members().size(); strip++) {
            int of = strip;
            residuals.add(Arrays.stream(disc.members().get(strip))
                    .mapToDouble(point -> height(point) - dot(solution, row(of, point)))
                    .toArray());
        }
        return residuals;
    }

    static double dot(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < other.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }

    int rows() {
        return 2 * (disc.members().size() - 1);
    }

    /** A difference, rise per metre. */
    double difference(int row) {
        return solution[unknown(row)] / radiusMetres;
    }

    /** The weights by which a strip's points come into every row. */
    double[][] weights(int strip) {
        return weights.get(strip);
    }

    /** The strip of the points with a number in the disc. */
    int strip(int number) {
        return points.strip(disc.members().get(number)[0]);
    }

    /** Covariance of the differences from what each point is off by itself; each strip has noise of its own. */
    double[][] noise() {
        List<double[]> residuals = residuals();
        int all = residuals.stream().mapToInt(of -> of.length).sum();
        double share = 1 - (double) solution.length / all;
        double[][] covariance = new double[rows()][rows()];
        for (int strip = 0; strip < residuals.size(); strip++) {
            double[] off = residuals.get(strip);
            double variance = Math.max(LEAST_NOISE_METRES * LEAST_NOISE_METRES, dot(off, off) / (off.length * share));
            double[][] of = weights(strip);
            for (int row = 0; row < rows(); row++) {
                for (int column = 0; column < rows(); column++) {
                    covariance[row][column] += variance * dot(of[row], of[column]);
                }
            }
        }
        return covariance;
    }
}
