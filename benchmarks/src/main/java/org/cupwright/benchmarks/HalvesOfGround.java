package org.cupwright.benchmarks;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.BendFit;
import org.cupwright.green.Ground;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.cupwright.testing.Shapes;

/**
 * How well errors that the fit states agree with real ground: the points of a survey are split at random into halves,
 * each half is fitted by itself, and slopes of the two are compared at spots a metre apart.
 *
 * <p>If each half knows its own error, the difference over the root of both variances has a standard deviation of 1;
 * below, errors are stated too wide. What both halves share (relief that both miss, an error of the whole survey) is
 * not in the difference.
 *
 * <p>{@code benchmarks/run HalvesOfGround -- FILE EAST NORTH SIDE [CLASS]}: FILE with its full path, text of x, y, z
 * and, where a class is asked for, the class in the fourth column; south-west corner and side of the
 * square that is fitted, in the file's metres.
 */
public final class HalvesOfGround {
    private static final int SPLITS = 10;

    /** As far beyond the square as points shape a green's edge. */
    private static final double MARGIN_METRES = 3;

    /** Spots lie so far inside the square, m. */
    private static final double INSIDE_METRES = 1;

    private final Outline square;
    private final double east;
    private final double north;
    private final double side;
    private final List<Double> slopes = new ArrayList<>();
    private final List<Double> bends = new ArrayList<>();
    private double errors;
    private double squares;

    private HalvesOfGround(double east, double north, double side) {
        this.square = Shapes.rectangle(east, north, east + side, north + side);
        this.east = east;
        this.north = north;
        this.side = side;
    }

    public static void main(String[] arguments) throws IOException, SurveyTooThin {
        if (arguments.length < 4) {
            System.err.println("Usage: HalvesOfGround FILE EAST NORTH SIDE [CLASS]");
            System.exit(2);
        }
        HalvesOfGround halves = new HalvesOfGround(
                Double.parseDouble(arguments[1]), Double.parseDouble(arguments[2]), Double.parseDouble(arguments[3]));
        String ofClass = arguments.length > 4 ? arguments[4] : "";
        halves.run(halves.read(Path.of(arguments[0]), ofClass));
    }

    private List<double[]> read(Path file, String ofClass) throws IOException {
        List<double[]> points = new ArrayList<>();
        try (BufferedReader in = Files.newBufferedReader(file)) {
            for (String line = in.readLine(); line != null; line = in.readLine()) {
                String[] fields = line.split("[,; \t]+");
                boolean numbers = fields.length >= 3 && fields[0].matches("[-+0-9.]+");
                if (numbers && (ofClass.isEmpty() || fields[3].equals(ofClass))) {
                    double[] point = Arrays.stream(fields)
                            .limit(3)
                            .mapToDouble(Double::parseDouble)
                            .toArray();
                    if (isNear(point[0] - east) && isNear(point[1] - north)) {
                        points.add(point);
                    }
                }
            }
        }
        return points;
    }

    private boolean isNear(double offset) {
        return offset >= -MARGIN_METRES && offset <= side + MARGIN_METRES;
    }

    private void run(List<double[]> points) throws SurveyTooThin {
        double perSquareMetre = points.size() / Math.pow(side + 2 * MARGIN_METRES, 2);
        System.out.printf(Locale.ROOT, "%d points, %.1f a square metre%n", points.size(), perSquareMetre);
        for (int split = 0; split < SPLITS; split++) {
            split(points, 1 + split);
        }
        System.out.printf(
                Locale.ROOT,
                "%d splits, seed 1: sd of z %.3f of slopes (%d), %.3f of changes of slope (%d); "
                        + "standard error of a component %.3f, of the halves' difference over root 2 %.3f points%n",
                SPLITS,
                deviation(slopes),
                slopes.size(),
                deviation(bends),
                bends.size(),
                100 * errors / slopes.size(),
                100 * Math.sqrt(squares / slopes.size() / 2));
        if (slopes.isEmpty()) {
            throw new IllegalStateException("no spot is surveyed in both halves");
        }
    }

    private void split(List<double[]> points, int seed) throws SurveyTooThin {
        Random random = new Random(seed);
        List<List<double[]>> halves = List.of(new ArrayList<>(), new ArrayList<>());
        for (double[] point : points) {
            halves.get(random.nextBoolean() ? 1 : 0).add(point);
        }
        SurveyedGround one = fitted(halves.get(0));
        SurveyedGround other = fitted(halves.get(1));
        int before = slopes.size();
        for (double x = INSIDE_METRES; x <= side - INSIDE_METRES; x++) {
            for (double y = INSIDE_METRES; y <= side - INSIDE_METRES; y++) {
                MapPoint spot = new MapPoint(east + x, north + y);
                if (one.planeAt(spot).isPresent() && other.planeAt(spot).isPresent()) {
                    compare(one, other, spot);
                }
            }
        }
        System.out.printf(
                Locale.ROOT,
                "  split %d: noise %.1f and %.1f mm, %d and %d left out, sd of z %.3f%n",
                seed,
                1000 * one.surveySigmaMetres(),
                1000 * other.surveySigmaMetres(),
                one.blunders().size(),
                other.blunders().size(),
                deviation(slopes.subList(before, slopes.size())));
    }

    private SurveyedGround fitted(List<double[]> points) throws SurveyTooThin {
        SurveyPoints survey = SurveyPoints.scattered(
                points.stream().mapToDouble(point -> point[0]).toArray(),
                points.stream().mapToDouble(point -> point[1]).toArray(),
                points.stream().mapToDouble(point -> point[2]).toArray());
        return SurveyedGround.fit(square, survey, Policy.defaults());
    }

    private void compare(SurveyedGround one, SurveyedGround other, MapPoint spot) {
        PlaneFit a = one.planeAt(spot).orElseThrow();
        PlaneFit b = other.planeAt(spot).orElseThrow();
        add(a.gradientEast() - b.gradientEast(), a.varianceEast(), b.varianceEast());
        add(a.gradientNorth() - b.gradientNorth(), a.varianceNorth(), b.varianceNorth());
        BendFit.Change change =
                one.bendAt(spot, Ground.DISC_RADIUS_METRES).orElseThrow().greatest();
        BendFit.Change against =
                other.bendAt(spot, Ground.DISC_RADIUS_METRES).orElseThrow().greatest();
        bends.add((Math.abs(change.points()) - Math.abs(against.points()))
                / Math.hypot(change.standardErrorPoints(), against.standardErrorPoints()));
    }

    private void add(double difference, double variance, double otherVariance) {
        slopes.add(difference / Math.sqrt(variance + otherVariance));
        errors += Math.sqrt((variance + otherVariance) / 2);
        squares += difference * difference;
    }

    /** About zero, which both halves' difference should have for its mean. */
    private static double deviation(List<Double> values) {
        return Math.sqrt(
                values.stream().mapToDouble(value -> value * value).average().orElse(Double.NaN));
    }
}
