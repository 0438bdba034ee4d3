package org.cupwright.green.spline;

import org.cupwright.green.spline.StepMisfit.Missed;

/**
 * What a fit has missed at steps, node by node of {@link DiscCovariances}: what is added to the covariances there and
 * to the quantities themselves.
 *
 * <p>The residuals of one disc are few; their squares are averaged over the nodes about it, and of what they show the
 * share counts that noise does not explain ({@link MissedShare}).
 */
final class MissedAtNodes {
    /** At least so much of the noise is left in residuals (our choice). */
    private static final double NOISE_LEFT = 0.1;

    private static final int QUANTITIES = DiscCovariances.DIAGONAL.length;
    private static final int SIZE = DiscCovariances.SIZE;

    private final DiscCovariances of;
    private final Missed[] missed;
    private final int reach;
    private final double[] before;
    private final double[] values;
    private final double[] corrections;

    MissedAtNodes(DiscCovariances of, StepMisfit misfit) {
        this.of = of;
        this.missed = missed(of, misfit);
        this.reach = of.nodesWithin(misfit.nearMetres());
        this.before = of.values();
        this.values = of.values();
        this.corrections = new double[QUANTITIES * missed.length];
        for (int node = 0; node < missed.length; node++) {
            if (missed[node] != null) {
                add(node);
            }
        }
    }

    private static Missed[] missed(DiscCovariances of, StepMisfit misfit) {
        Missed[] missed = new Missed[of.count()];
        for (int node = 0; node < missed.length; node++) {
            if (of.isKnown(node) && misfit.touches(of.east(node), of.north(node))) {
                missed[node] = misfit.at(of.east(node), of.north(node));
            }
        }
        return missed;
    }

    /** The covariances' entries with what was missed, {@link DiscCovariances#SIZE} a node. */
    double[] values() {
        return values;
    }

    /** What is to be added to the five quantities at each node. */
    double[] corrections() {
        return corrections;
    }

    /** Sums over the nodes about one: products of what the residuals show, and what noise makes of their squares. */
    private static final class Sums {
        private final double[] products = new double[SIZE];
        private final double[] noise = new double[QUANTITIES];
        private int count;
    }

    private Sums about(int node) {
        Sums sums = new Sums();
        for (int i = -reach; i <= reach; i++) {
            for (int j = -reach; j <= reach; j++) {
                int row = node % of.rows + j;
                int other = (node / of.rows + i) * of.rows + row;
                boolean within = i * i + j * j <= reach * reach && row >= 0 && row < of.rows;
                if (within && other >= 0 && other < missed.length && missed[other] != null) {
                    add(other, sums);
                }
            }
        }
        return sums;
    }

    private void add(int node, Sums sums) {
        Missed one = missed[node];
        for (int k = 0; k < SIZE; k++) {
            int[] entry = DiscCovariances.ENTRIES[k];
            sums.products[k] += one.values()[entry[0]] * one.values()[entry[1]];
        }
        for (int k = 0; k < QUANTITIES; k++) {
            // What the fit has taken up of the noise is no longer in the residuals.
            double left = one.noise()[k] - before[SIZE * node + DiscCovariances.DIAGONAL[k]];
            sums.noise[k] += Math.max(left, NOISE_LEFT * one.noise()[k]);
        }
        sums.count++;
    }

    private void add(int node) {
        Sums sums = about(node);
        double[] p = sums.products;
        double[] n = sums.noise;
        add(node, sums, 0, 2, MissedShare.SLOPE_SHAPE, p[0] + p[2], n[0] + n[1]);
        add(node, sums, 2, QUANTITIES, MissedShare.BEND_SHAPE, p[3] + p[6] + p[8], n[2] + n[3] + n[4]);
    }

    /** Adds what was missed of some of the quantities, the plane's two or the quadratic's three. */
    private void add(int node, Sums sums, int from, int to, int shape, double squares, double noise) {
        double share = MissedShare.of(shape, squares, noise);
        double unsure = share * (1 - share) * (1 - share) * MissedShare.shortfall(squares, noise);
        for (int k = DiscCovariances.DIAGONAL[from]; k <= DiscCovariances.DIAGONAL[to - 1]; k++) {
            values[SIZE * node + k] *= missed[node].rougher();
            values[SIZE * node + k] += unsure * sums.products[k] / sums.count;
        }
        for (int k = from; k < to; k++) {
            corrections[QUANTITIES * node + k] = share * missed[node].values()[k];
            values[SIZE * node + DiscCovariances.DIAGONAL[k]] +=
                    share * share * missed[node].own()[k];
        }
    }
}
