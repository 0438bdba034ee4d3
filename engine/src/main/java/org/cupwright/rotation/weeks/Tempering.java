package org.cupwright.rotation.weeks;

import java.util.SplittableRandom;
import java.util.function.BooleanSupplier;

/**
 * Changes one hole after another at random, dearer plans at first often and later hardly ever accepted: simulated
 * annealing (Kirkpatrick, Gelatt and Vecchi, Science 220, 1983).
 */
final class Tempering {
    private static final int MOVES_AT_ONE_HEAT = 256;

    /** The spots a green may have on a day. */
    interface Offer {
        int[] spots(int green, int day);
    }

    private final WeeksModel model;
    private final Choices choices;
    private final SplittableRandom random;
    private final int[] greens;
    private final Offer offer;
    private int[][] best;
    private long bestTotal;

    /** @param greens those whose holes are changed; the others change only in exchange with one of them */
    Tempering(WeeksModel model, Choices choices, SplittableRandom random, int[] greens, Offer offer) {
        this.model = model;
        this.choices = choices;
        this.random = random;
        this.greens = greens.clone();
        this.offer = offer;
        keep();
    }

    private void keep() {
        best = choices.copy();
        bestTotal = choices.total();
    }

    /**
     * Works for a while, and leaves the best plan it came by. Where there is nothing to choose, nothing is priced, and
     * it is done at once.
     *
     * @param hot a plan so many thousandths of a point dearer is accepted about every third time at first
     * @param cold the same at the end
     * @param work how many holes are priced at most
     * @param goesOn asked now and then whether to go on
     */
    void run(double hot, double cold, long work, BooleanSupplier goesOn) {
        long from = choices.work();
        long atLastHeat = -1;
        double heat = hot;
        for (int move = 0; choices.work() - from < work; move++) {
            if (move % MOVES_AT_ONE_HEAT == 0) {
                heat = hot * StrictMath.pow(cold / hot, (double) (choices.work() - from) / work);
                if (choices.work() == atLastHeat || !goesOn.getAsBoolean()) {
                    break;
                }
                atLastHeat = choices.work();
            }
            // A change is taken if it costs less than this: the same chance as asking after it is priced.
            double most = -heat * StrictMath.log(1 - random.nextDouble());
            if (random.nextInt(3) == 0) {
                exchange(most);
            } else {
                single(most);
            }
            if (choices.total() < bestTotal) {
                keep();
            }
        }
        choices.restore(best);
    }

    private void single(double most) {
        int green = greens[random.nextInt(greens.length)];
        int day = random.nextInt(model.dayCount());
        int[] offered = offer.spots(green, day);
        if (offered.length < 2) {
            return;
        }
        int spot = offered[random.nextInt(offered.length)];
        if (choices.change(green, day, spot) < most) {
            choices.put(green, day, spot);
        }
    }

    /** Two greens of a day at once: what one gives up of a third, a side or a difficulty the other may take. */
    private void exchange(double most) {
        int day = random.nextInt(model.dayCount());
        int one = greens[random.nextInt(greens.length)];
        int other = random.nextInt(model.greenCount());
        int[] offeredOne = offer.spots(one, day);
        int[] offeredOther = offer.spots(other, day);
        if (one == other || offeredOne.length == 0 || offeredOther.length == 0) {
            return;
        }
        long before = choices.total();
        int back = choices.chosen(one, day);
        choices.put(one, day, offeredOne[random.nextInt(offeredOne.length)]);
        long gained = before - choices.total();
        int spot = offeredOther[random.nextInt(offeredOther.length)];
        if (choices.change(other, day, spot) < most + gained) {
            choices.put(other, day, spot);
        } else {
            choices.put(one, day, back);
        }
    }
}
