package org.cupwright.testing.trials;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** How invented ground is surveyed: where points are taken and how far each is off by itself. */
public enum TrialSurvey {
    /** From the air: 8 points/m² at random, 25 mm. */
    LIDAR(0.025) {
        @Override
        void places(SplittableRandom random, double half, Place place) {
            scatter(random, half, 8, place);
        }
    },
    /** Photographs from a drone: 25 points/m², 8 mm. */
    DRONE(0.008) {
        @Override
        void places(SplittableRandom random, double half, Place place) {
            scatter(random, half, 25, place);
        }
    },
    /** A rover walked in lines 0.4 m apart, a point every 0.3 m or so, 10 mm. */
    DENSE_RTK(0.010) {
        @Override
        void places(SplittableRandom random, double half, Place place) {
            lines(random, half, 0.4, 0.3, place);
        }
    },
    /** A rover set down every 0.5 to 1 m, 10 mm. */
    SPARSE_RTK(0.010) {
        @Override
        void places(SplittableRandom random, double half, Place place) {
            lines(random, half, 0.75, 0.75, place);
        }
    },
    /** A scanner on a tripod, thinned to 40 points/m², 3 mm. */
    SCAN(0.003) {
        @Override
        void places(SplittableRandom random, double half, Place place) {
            scatter(random, half, 40, place);
        }
    },
    /** A level or total station on a grid of 0.6 m, each point set by eye to 5 cm, 4 mm. */
    LEVELLED(0.004) {
        @Override
        void places(SplittableRandom random, double half, Place place) {
            for (double x = -half; x <= half; x += 0.6) {
                for (double y = -half; y <= half; y += 0.6) {
                    place.at(x + 0.05 * random.nextGaussian(), y + 0.05 * random.nextGaussian());
                }
            }
        }
    };

    /** Takes a place. */
    interface Place {
        void at(double x, double y);
    }

    final double sigmaMetres;

    TrialSurvey(double sigmaMetres) {
        this.sigmaMetres = sigmaMetres;
    }

    abstract void places(SplittableRandom random, double half, Place place);

    /** Places (x, y) in the order in which they are taken, over a square. */
    List<double[]> places(SplittableRandom random, double half) {
        List<double[]> places = new ArrayList<>();
        places(random, half, (x, y) -> {
            if (Math.abs(x) <= half && Math.abs(y) <= half) {
                places.add(new double[] {x, y});
            }
        });
        return places;
    }

    private static void scatter(SplittableRandom random, double half, double perSquareMetre, Place place) {
        long count = Math.round(perSquareMetre * 4 * half * half);
        for (long i = 0; i < count; i++) {
            place.at(half * (2 * random.nextDouble() - 1), half * (2 * random.nextDouble() - 1));
        }
    }

    /** To and fro, each step and line a third longer or shorter at most. */
    private static void lines(SplittableRandom random, double half, double apart, double step, Place place) {
        boolean up = true;
        for (double x = -half; x <= half; x += apart) {
            double along = -half;
            while (along <= half) {
                double wander = apart / 3 * (2 * random.nextDouble() - 1);
                place.at(x + wander, up ? along : -along);
                along += step * (2 + 2 * random.nextDouble()) / 3;
            }
            up = !up;
        }
    }
}
