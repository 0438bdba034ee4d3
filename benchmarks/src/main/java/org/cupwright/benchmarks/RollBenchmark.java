package org.cupwright.benchmarks;

import java.util.concurrent.TimeUnit;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Surface;
import org.cupwright.roll.BallRoller;
import org.cupwright.roll.ReferenceRoll;
import org.cupwright.roll.RollState;
import org.cupwright.units.GreenSpeed;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Time of one typical putt on one thread, on bicubic patches of 0.5 m and on the surface they were made from, and by
 * the reference integrator. {@link PuttsPerSecond} checks the stops.
 *
 * <pre>
 * mvn -q package -DskipTests -pl benchmarks -am
 * java -cp 'benchmarks/target/*:benchmarks/target/lib/*' org.openjdk.jmh.Main RollBenchmark
 * </pre>
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class RollBenchmark {
    private static final int PUTTS = 4096;

    /** The surface: patches, or the exact one they were made from. */
    @Param({"patches", "exact"})
    public String ground = "patches";

    private final GreenSpeed speed = new GreenSpeed(10);
    private final Putts putts = new Putts(7, PUTTS);
    private final RollState state = new RollState();
    private BallRoller roller;
    private ReferenceRoll reference;
    private int next;

    @Setup
    public void makeGround() {
        MadeSurface exact = MadeSurface.gentle(7, 12);
        Surface surface = ground.equals("exact") ? exact : new PatchSurface(exact, 40, 0.5);
        roller = new BallRoller(surface, speed);
        reference = new ReferenceRoll(surface, speed, 1e-6);
    }

    @Benchmark
    public double engine() {
        next = (next + 1) % PUTTS;
        putts.roll(roller, next, state);
        return state.east;
    }

    @Benchmark
    public double hipparchus() {
        next = (next + 1) % PUTTS;
        return putts.roll(reference, next)[1];
    }
}
