package org.cupwright.testing.trials;

import java.util.SplittableRandom;

/** Kinds of invented ground that surveys are tried on: heights only, made for this suite and used by nothing else. */
public enum TrialGround {
    /** Long swells: four plane waves of 12 to 25 m, slopes of some 1 to 4 %. */
    ROLLING {
        @Override
        Made made(SplittableRandom random) {
            return new Made(swells(random), NO_STEP);
        }
    },
    /** Swells with a tier of 0.3 m over 0.6 m along a bow that may be nearly straight. */
    TIER_06 {
        @Override
        Made made(SplittableRandom random) {
            return tier(random, 0.6);
        }
    },
    /** The same over 1 m. */
    TIER_1 {
        @Override
        Made made(SplittableRandom random) {
            return tier(random, 1.0);
        }
    },
    /** Ground whose spectrum falls with the 3.6th power of the frequency (Hurst exponent 0.8), sd 10 mm at 4 m. */
    FRACTAL {
        @Override
        Made made(SplittableRandom random) {
            return new Made(fractal(random, 0.8, 0.010), NO_STEP);
        }
    };

    private static final Height NO_STEP = (x, y) -> Double.POSITIVE_INFINITY;
    private static final double TIER_METRES = 0.3;

    /** A number at a place. */
    interface Height {
        double at(double x, double y);
    }

    /**
     * Ground and where its step is.
     *
     * @param fromStep distance to the nearest part of the step, m
     */
    record Made(Height height, Height fromStep) {}

    abstract Made made(SplittableRandom random);

    private static Height swells(SplittableRandom random) {
        double[][] waves = new double[4][];
        for (int i = 0; i < waves.length; i++) {
            double perMetre = 2 * Math.PI / (12 + 13 * random.nextDouble());
            double turn = 2 * Math.PI * random.nextDouble();
            double slope = 0.005 + 0.015 * random.nextDouble();
            waves[i] = new double[] {
                perMetre * Math.cos(turn),
                perMetre * Math.sin(turn),
                2 * Math.PI * random.nextDouble(),
                slope / perMetre
            };
        }
        return waves(waves);
    }

    private static Height waves(double[][] waves) {
        return (x, y) -> {
            double sum = 0;
            for (double[] wave : waves) {
                sum += wave[3] * Math.sin(wave[0] * x + wave[1] * y + wave[2]);
            }
            return sum;
        };
    }

    /** A smooth step 3t² − 2t³ across a circle of 15 m or more that passes within 1.5 m of the middle. */
    private static Made tier(SplittableRandom random, double width) {
        Height under = swells(random);
        double radius = 15 + 85 * random.nextDouble();
        double turn = 2 * Math.PI * random.nextDouble();
        double off = radius + 3 * random.nextDouble() - 1.5;
        double cx = off * Math.cos(turn);
        double cy = off * Math.sin(turn);
        Height across = (x, y) -> Math.hypot(x - cx, y - cy) - radius;
        Height height = (x, y) -> {
            double t = Math.min(1, Math.max(0, across.at(x, y) / width + 0.5));
            return under.at(x, y) + TIER_METRES * t * t * (3 - 2 * t);
        };
        return new Made(height, (x, y) -> Math.max(0, Math.abs(across.at(x, y)) - width / 2));
    }

    /** Plane waves of 0.3 to 30 m whose heights make the structure function sd·(d/4 m)^hurst, and a tilt. */
    private static Height fractal(SplittableRandom random, double hurst, double sdAtFourMetres) {
        int count = 240;
        double[][] waves = new double[count][];
        double squares = 0;
        for (int i = 0; i < count; i++) {
            double length = 0.3 * Math.pow(100, (i + random.nextDouble()) / count);
            double perMetre = 2 * Math.PI / length;
            double turn = 2 * Math.PI * random.nextDouble();
            double amplitude = Math.pow(length, hurst);
            waves[i] = new double[] {
                perMetre * Math.cos(turn), perMetre * Math.sin(turn), 2 * Math.PI * random.nextDouble(), amplitude
            };
            // Mean square of a wave's difference over 4 m, all directions alike, is about a²(1 − J0), here taken as a².
            squares += amplitude * amplitude * (length < 8 ? 1 : Math.pow(8 / length, 2));
        }
        for (double[] wave : waves) {
            wave[3] *= sdAtFourMetres / Math.sqrt(squares);
        }
        double tiltEast = 0.02 * (2 * random.nextDouble() - 1);
        double tiltNorth = 0.02 * (2 * random.nextDouble() - 1);
        Height rough = waves(waves);
        return (x, y) -> rough.at(x, y) + tiltEast * x + tiltNorth * y;
    }
}
