package org.cupwright.benchmarks;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Collections;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.cupwright.course.Hole;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Surface;
import org.cupwright.holelocation.spot.PuttingArea;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.Edge;
import org.cupwright.roll.ReferenceRoll;
import org.cupwright.roll.RollState;
import org.cupwright.testing.Shapes;
import org.cupwright.units.GreenSpeed;

/**
 * How many putts a second the engine rolls on two threads, on bicubic patches of 0.5 m, beside Hipparchus'
 * Dormand–Prince 8(5,3) at 1e-6 on the same putts in the same run. The stops are compared with the reference at 1e-10
 * first: fast and wrong does not count.
 *
 * <pre>
 * mvn -q package -DskipTests -pl benchmarks -am
 * java -cp 'benchmarks/target/*:benchmarks/target/lib/*' org.cupwright.benchmarks.PuttsPerSecond
 * </pre>
 */
public final class PuttsPerSecond {
    private static final long SEED = 7;
    private static final int THREADS = 2;
    private static final int PUTTS = 4096;
    private static final int CHECKED = 400;
    private static final double WARM_UP_SECONDS = 2;
    private static final double MEASURED_SECONDS = 4;
    private static final double MOST_P99_METRES = 0.002;

    private static final ThreadMXBean THREAD = (ThreadMXBean) ManagementFactory.getThreadMXBean();

    private final GreenSpeed speed = new GreenSpeed(10);
    private final Putts putts = new Putts(SEED, PUTTS);
    private final Surface patches = new PatchSurface(MadeSurface.gentle(SEED, 12), 40, 0.5);

    private PuttsPerSecond() {}

    public static void main(String[] arguments) throws Exception {
        PuttsPerSecond benchmark = new PuttsPerSecond();
        benchmark.checkStops();
        ExecutorService threads = Executors.newFixedThreadPool(THREADS);
        try {
            benchmark.measure(threads);
        } finally {
            threads.shutdown();
        }
    }

    private void checkStops() {
        BallRoller roller = new BallRoller(patches, speed);
        ReferenceRoll reference = new ReferenceRoll(patches, speed, 1e-10);
        RollState rolled = new RollState();
        double[] errors = new double[CHECKED];
        for (int i = 0; i < CHECKED; i++) {
            putts.roll(roller, i, rolled);
            double[] stop = putts.roll(reference, i);
            errors[i] = Math.hypot(rolled.east - stop[1], rolled.north - stop[2]);
        }
        Arrays.sort(errors);
        double p99 = errors[(int) Math.ceil(0.99 * CHECKED) - 1];
        System.out.printf(
                "stops of %d putts against the reference: mean %.4f mm, p99 %.4f mm%n",
                CHECKED, 1000 * Arrays.stream(errors).average().orElseThrow(), 1000 * p99);
        if (p99 > MOST_P99_METRES) {
            throw new IllegalStateException("p99 of the error is " + p99 + " m, more than " + MOST_P99_METRES);
        }
    }

    private void measure(ExecutorService threads) throws Exception {
        Rate free = rate(threads, () -> engine(Edge.NONE));
        Rate edged = rate(threads, () -> engine(new PuttingArea(Hole.of("1", Shapes.circle(0, 0, 12)))::contains));
        Rate reference = rate(threads, this::hipparchus);
        free.print("engine, no edge");
        edged.print("engine, with an edge");
        reference.print("Hipparchus at 1e-6");
        System.out.printf("ratio of the first to the last, by processor time: %.1f%n", free.busy / reference.busy);
        System.out.printf("allocated by the engine: %.1f bytes a putt%n", bytesPerPutt());
    }

    /**
     * Putts a second.
     *
     * @param wall by the clock, all threads together
     * @param busy by the processor time the threads got, all threads together: what a machine with nothing else to do
     *     would reach
     */
    private record Rate(double wall, double busy) {
        Rate plus(Rate other) {
            return new Rate(wall + other.wall, busy + other.busy);
        }

        void print(String what) {
            System.out.printf(
                    "%-22s %,9.0f putts/s on %d threads (%,9.0f by processor time)%n", what, wall, THREADS, busy);
        }
    }

    /** One thread's way to roll the putt of a number. */
    private interface Roller {
        double stopEast(int putt);
    }

    private Roller engine(Edge edge) {
        BallRoller roller = new BallRoller(patches, speed, edge);
        RollState state = new RollState();
        return putt -> {
            putts.roll(roller, putt, state);
            return state.east;
        };
    }

    private Roller hipparchus() {
        ReferenceRoll reference = new ReferenceRoll(patches, speed, 1e-6);
        return putt -> putts.roll(reference, putt)[1];
    }

    private Rate rate(ExecutorService threads, Callable<Roller> way) throws Exception {
        onAllThreads(threads, way, WARM_UP_SECONDS);
        return onAllThreads(threads, way, MEASURED_SECONDS);
    }

    private Rate onAllThreads(ExecutorService threads, Callable<Roller> way, double seconds) throws Exception {
        Callable<Rate> work = () -> rollFor(way.call(), seconds);
        Rate sum = new Rate(0, 0);
        for (Future<Rate> rate : threads.invokeAll(Collections.nCopies(THREADS, work))) {
            sum = sum.plus(rate.get());
        }
        return sum;
    }

    /** This thread's rate; every putt is rolled equally often, and each time to the same stop. */
    private Rate rollFor(Roller roller, double seconds) {
        long start = System.nanoTime();
        long startBusy = THREAD.getCurrentThreadCpuTime();
        double first = Double.NaN;
        double rounds = 0;
        double elapsed = 0;
        while (elapsed < seconds) {
            double sum = 0;
            for (int i = 0; i < PUTTS; i++) {
                sum += roller.stopEast(i);
            }
            if (rounds++ > 0 && sum != first) {
                throw new IllegalStateException("the same putts stopped elsewhere: " + sum + " and " + first);
            }
            first = sum;
            elapsed = 1e-9 * (System.nanoTime() - start);
        }
        double busy = 1e-9 * (THREAD.getCurrentThreadCpuTime() - startBusy);
        return new Rate(rounds * PUTTS / elapsed, rounds * PUTTS / busy);
    }

    private double bytesPerPutt() {
        Roller roller = engine(Edge.NONE);
        rollFor(roller, WARM_UP_SECONDS);
        long before = THREAD.getCurrentThreadAllocatedBytes();
        for (int i = 0; i < PUTTS; i++) {
            roller.stopEast(i);
        }
        return (double) (THREAD.getCurrentThreadAllocatedBytes() - before) / PUTTS;
    }
}
