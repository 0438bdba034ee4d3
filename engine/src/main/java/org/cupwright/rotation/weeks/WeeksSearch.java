package org.cupwright.rotation.weeks;

import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Finds a plan for all days: first day by day, each the best given the days before it; then, as long as it may, single
 * holes are changed at random, and whole days exactly.
 */
final class WeeksSearch {
    /** A plan five points dearer is taken about every third time at first: found by trying, see the benchmark. */
    private static final double HOT = 5000;

    private static final double WARM = 500;
    private static final double COOL = 300;
    private static final double COLD = 50;

    /** More than any hole costs: out of any hollow. */
    private static final double SHAKING = 13_000_000;

    /** So many holes are priced in a pass for each that is planned: our choice. */
    private static final long PASS_PER_HOLE = 3000;

    /** As many again for each hole of a green that is packed anew: our choice. */
    private static final long REPACK_PER_HOLE = 5000;

    private static final int PACKINGS = 4;

    /** All packing of a round has at most one in so many parts of the work that is left: our choice. */
    private static final int REPACK_SHARE = 4;

    /** The share of the work that goes into the first, hot pass. */
    private static final double FIRST_PASS = 0.5;

    private final WeeksModel model;
    private final Choices choices;
    private final SplittableRandom random;
    private final Repacking repacking;
    private final long mostWork;
    private final SearchWatch watch;
    private boolean stopped;

    /** @param mostWork how many holes are priced at most, the first plan apart */
    WeeksSearch(WeeksModel model, long seed, long mostWork, SearchWatch watch) {
        this.model = model;
        this.choices = new Choices(model);
        this.random = new SplittableRandom(seed);
        this.repacking = new Repacking(model, choices, random);
        this.mostWork = mostWork;
        this.watch = watch;
    }

    /** The best plan found; as long as it gets better by little changes it is changed little, else shaken. */
    Choices find() {
        dayByDay();
        temper(HOT, COOL, Math.round(FIRST_PASS * mostWork));
        long work = -1;
        while (goesOn() && choices.work() > work) { // where nothing is to be chosen nothing is priced
            work = choices.work();
            long before = choices.total();
            repack();
            everyDay();
            temper(WARM, COLD, pass());
            while (goesOn() && choices.total() == before && choices.work() > work) {
                work = choices.work();
                temper(SHAKING, COLD, pass());
            }
        }
        return choices;
    }

    private long pass() {
        return PASS_PER_HOLE * model.greenCount() * model.dayCount();
    }

    boolean stopped() {
        return stopped;
    }

    /** The first full plan: each day the best there is, given the days before it. */
    private void dayByDay() {
        for (int day = 0; day < model.dayCount(); day++) {
            WholeDay.choose(model, choices, day);
        }
    }

    /** Every day anew, given all others, as long as that helps. */
    private void everyDay() {
        for (int day = 0; day < model.dayCount() && goesOn(); day++) {
            int[][] before = choices.copy();
            long total = choices.total();
            WholeDay.choose(model, choices, day);
            if (choices.total() > total) {
                choices.restore(before);
            }
        }
    }

    /** Greens that have holes on resting ground, one after another, until they have none. */
    private void repack() {
        for (int attempt = 0; attempt < PACKINGS; attempt++) {
            int[] greens = choices.greensWithSetAside();
            for (int green : greens) {
                if (goesOn()) {
                    long share = (mostWork - choices.work()) / (REPACK_SHARE * PACKINGS * greens.length);
                    long work = Math.min(REPACK_PER_HOLE * model.dayCount(), share);
                    repacking.run(green, attempt % 2 == 0, HOT, COLD, work, this::goesOn);
                }
            }
        }
    }

    private void temper(double hot, double cold, long work) {
        temper(hot, cold, work, IntStream.range(0, model.greenCount()).toArray());
    }

    private void temper(double hot, double cold, long work, int[] greens) {
        if (greens.length > 0 && goesOn()) {
            new Tempering(
                            model,
                            choices,
                            random,
                            greens,
                            (green, day) -> model.table(green).offered(day))
                    .run(hot, cold, work, this::goesOn);
        }
    }

    private boolean goesOn() {
        stopped = stopped || !watch.goOn(Math.min(choices.work(), mostWork), mostWork);
        return !stopped && choices.work() < mostWork;
    }
}
