package org.cupwright.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.Ground;
import org.cupwright.green.Jet;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.Surface;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.surveyed.SurveyTooThin;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.policy.Policy;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.util.GeometricShapeFactory;

/**
 * Fits eighteen invented greens of 350 to 860 m², 9 points/m² with 10 mm of noise, on two threads, and reads plane and
 * change of slope at every 0.25 m cell; then evaluates one surface many times. Prints the times and checks that slopes
 * are right to their errors; then fits one green of 8,000 points by itself. Expected on two free cores: within 12 s and
 * 500 MB; within 60 ns an evaluation; within 1.5 s.
 *
 * <p>A main class: run it with the benchmarks module's class path, e.g. {@code java -Xmx500m -cp … }.
 */
public final class FitEighteenGreens {
    private static final int GREENS = 18;
    private static final int THREADS = 2;
    private static final double SIGMA_METRES = 0.01;
    private static final double PER_SQUARE_METRE = 9;
    private static final int EVALUATIONS = 20_000_000;

    /** With 3 m about it, 9 points/m² and its margin: some 8,000 points count. */
    private static final double ONE_SQUARE_METRES = 590;

    private FitEighteenGreens() {}

    /** A tilted plane with one long wave: invented, its gradient known everywhere. */
    private record Wave(double east, double north, double height, double metres) {
        double z(double x, double y) {
            return east * x + north * y + height * Math.sin(x / metres) * Math.cos(y / metres);
        }

        double slopeEast(double x, double y) {
            return east + height / metres * Math.cos(x / metres) * Math.cos(y / metres);
        }
    }

    private record Result(SurveyedGround ground, int cells, double meanSquaredZ) {}

    public static void main(String[] arguments) throws InterruptedException, ExecutionException {
        run("first time");
        List<Result> results = run("warmed up");
        evaluate(results.get(0).ground());
        fitOne();
    }

    /** One green of about 8,000 points by itself, on one thread: what a person who adds a survey waits for. */
    private static void fitOne() {
        Outline outline = outline(ONE_SQUARE_METRES, 1.2);
        SurveyPoints points = survey(outline, new Wave(0.02, -0.01, 0.12, 4), GREENS);
        double processor = processorSeconds();
        long started = System.nanoTime();
        SurveyedGround ground = fitted(outline, points);
        System.out.printf(
                "one green, %d points, %d of them counted: %.2f s, %.2f s of processor time%n",
                points.count(),
                ground.summary().pointsUsed(),
                (System.nanoTime() - started) / 1e9,
                processorSeconds() - processor);
    }

    private static SurveyedGround fitted(Outline outline, SurveyPoints points) {
        try {
            return SurveyedGround.fit(outline, points, Policy.defaults());
        } catch (SurveyTooThin tooThin) {
            throw new IllegalStateException("the invented survey is too thin", tooThin);
        }
    }

    private static List<Result> run(String label) throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        double processor = processorSeconds();
        long started = System.nanoTime();
        List<Future<Result>> futures = new ArrayList<>();
        for (int i = 0; i < GREENS; i++) {
            int green = i;
            futures.add(threads.submit(() -> fit(green)));
        }
        List<Result> results = new ArrayList<>();
        for (Future<Result> future : futures) {
            results.add(future.get());
        }
        threads.shutdown();
        int cells = results.stream().mapToInt(Result::cells).sum();
        double z = results.stream().mapToDouble(Result::meanSquaredZ).average().orElseThrow();
        System.out.printf(
                "%s: %d greens, %d cells: %.2f s, %.2f s of processor time, "
                        + "mean squared error in standard errors %.2f%n",
                label, GREENS, cells, (System.nanoTime() - started) / 1e9, processorSeconds() - processor, z);
        if (!(z > 0.1 && z < 1.5)) {
            throw new IllegalStateException("errors of the slopes do not fit their standard errors: " + z);
        }
        return results;
    }

    /** Tells how much the machine's other work disturbed the time. */
    private static double processorSeconds() {
        OperatingSystemMXBean system = ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
        return system.getProcessCpuTime() / 1e9;
    }

    private static Result fit(int green) {
        Outline outline = outline(350 + 30.0 * green, 1 + 0.05 * green);
        Wave wave = new Wave(0.02, -0.01, 0.12, 4 + 0.1 * green);
        SurveyedGround ground = fitted(outline, survey(outline, wave, green));
        int cells = 0;
        int bends = 0;
        double squares = 0;
        Coordinate[] box = outline.polygon().getEnvelope().getCoordinates();
        for (double east = box[0].x; east <= box[2].x; east += 0.25) {
            for (double north = box[0].y; north <= box[2].y; north += 0.25) {
                MapPoint cell = new MapPoint(east, north);
                if (outline.contains(cell) && ground.planeAt(cell).isPresent()) {
                    PlaneFit plane = ground.planeAt(cell).orElseThrow();
                    bends += ground.bendAt(cell, Ground.DISC_RADIUS_METRES).isPresent() ? 1 : 0;
                    double error = plane.gradientEast() - wave.slopeEast(east, north);
                    squares += error * error / plane.varianceEast();
                    cells++;
                }
            }
        }
        if (bends != cells) {
            throw new IllegalStateException(cells - bends + " cells have a slope and no change of slope");
        }
        return new Result(ground, cells, squares / cells);
    }

    /** An ellipse of an area, longer than wide. */
    private static Outline outline(double squareMetres, double longerBy) {
        GeometricShapeFactory shape = new GeometricShapeFactory(new GeometryFactory());
        double width = 2 * Math.sqrt(squareMetres / Math.PI / longerBy);
        shape.setCentre(new Coordinate(0, 0));
        shape.setWidth(width);
        shape.setHeight(width * longerBy);
        return new Outline(shape.createEllipse());
    }

    private static SurveyPoints survey(Outline outline, Wave wave, long seed) {
        Random random = new Random(seed);
        Coordinate[] box =
                outline.polygon().getEnvelope().buffer(3).getEnvelope().getCoordinates();
        double width = box[2].x - box[0].x;
        double depth = box[2].y - box[0].y;
        int count = (int) (PER_SQUARE_METRE * width * depth);
        double[] east = new double[count];
        double[] north = new double[count];
        double[] height = new double[count];
        for (int i = 0; i < count; i++) {
            east[i] = box[0].x + width * random.nextDouble();
            north[i] = box[0].y + depth * random.nextDouble();
            height[i] = wave.z(east[i], north[i]) + SIGMA_METRES * random.nextGaussian();
        }
        return SurveyPoints.scattered(east, north, height);
    }

    private static void evaluate(SurveyedGround ground) {
        Surface surface = ground.surface().orElseThrow();
        Jet jet = new Jet();
        double sum = 0;
        long started = System.nanoTime();
        for (int i = 0; i < EVALUATIONS; i++) {
            surface.at(i % 1999 * 0.01 - 10, i % 997 * 0.02 - 10, jet);
            sum += jet.z + jet.zx + jet.zyy;
        }
        double each = (double) (System.nanoTime() - started) / EVALUATIONS;
        System.out.printf("surface: %.0f ns an evaluation (sum %.3f)%n", each, sum);
    }
}
