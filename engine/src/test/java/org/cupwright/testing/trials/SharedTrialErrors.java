package org.cupwright.testing.trials;

import java.util.List;
import java.util.SplittableRandom;

/** Invented errors that the points of a survey share: added to heights in the order in which points are taken. */
public enum SharedTrialErrors {
    NONE {
        @Override
        double[] of(List<double[]> places, SplittableRandom random) {
            return new double[places.size()];
        }
    },
    /** Of a model from photographs: patches of 3 m, 8 mm, as many plane waves with normal wave numbers. */
    PATCHES {
        @Override
        double[] of(List<double[]> places, SplittableRandom random) {
            double[][] waves = new double[WAVES][];
            for (int i = 0; i < WAVES; i++) {
                waves[i] = new double[] {
                    random.nextGaussian() / 3, random.nextGaussian() / 3, 2 * Math.PI * random.nextDouble()
                };
            }
            return places.stream()
                    .mapToDouble(place -> {
                        double sum = 0;
                        for (double[] wave : waves) {
                            sum += Math.cos(wave[0] * place[0] + wave[1] * place[1] + wave[2]);
                        }
                        return 0.008 * Math.sqrt(2.0 / WAVES) * sum;
                    })
                    .toArray();
        }
    },
    /** Of a receiver: drifts of 1 to 8 minutes, together 9 mm, walked at a point every second and a half. */
    DRIFT {
        @Override
        double[] of(List<double[]> places, SplittableRandom random) {
            double[][] swings = new double[6][];
            double squares = 0;
            for (int i = 0; i < swings.length; i++) {
                double seconds = 60 * Math.pow(8, (i + random.nextDouble()) / swings.length);
                double size = Math.sqrt(seconds);
                squares += size * size / 2;
                swings[i] = new double[] {2 * Math.PI * 1.5 / seconds, 2 * Math.PI * random.nextDouble(), size};
            }
            double[] errors = new double[places.size()];
            for (int i = 0; i < errors.length; i++) {
                for (double[] swing : swings) {
                    errors[i] += 0.009 / Math.sqrt(squares) * swing[2] * Math.cos(swing[0] * i + swing[1]);
                }
            }
            return errors;
        }
    },
    /** A tilt of up to half a point and a dome of 20 mm over the green, all of the survey alike. */
    TILT {
        @Override
        double[] of(List<double[]> places, SplittableRandom random) {
            double turn = 2 * Math.PI * random.nextDouble();
            double tilt = 0.003 + 0.002 * random.nextDouble();
            return places.stream()
                    .mapToDouble(place -> tilt * (Math.cos(turn) * place[0] + Math.sin(turn) * place[1]))
                    .toArray();
        }
    };

    private static final int WAVES = 80;

    /** How far each point is off besides its own error, m. */
    abstract double[] of(List<double[]> places, SplittableRandom random);
}
