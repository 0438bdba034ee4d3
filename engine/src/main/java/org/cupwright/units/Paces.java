package org.cupwright.units;

/** Lengths as they are paced out on a green. */
public final class Paces {
    /** One pace of somebody who has not calibrated theirs, m: 3 ft (common practice, no source). */
    public static final double STANDARD_METRES = 0.914;

    private Paces() {}

    public static double fromMetres(double metres, double paceMetres) {
        return metres / paceMetres;
    }

    public static double toMetres(double paces, double paceMetres) {
        return paces * paceMetres;
    }

    /** The length in paces, to the nearest half pace: nobody paces finer than that. */
    public static double roundedToHalf(double metres, double paceMetres) {
        return Math.rint(2 * metres / paceMetres) / 2;
    }

    /**
     * The length in paces, down to the half pace below: for "good within so many paces", which must not promise too
     * much.
     */
    public static double roundedDownToHalf(double metres, double paceMetres) {
        double roundingOfTheDivision = 1e-9;
        return Math.floor(2 * metres / paceMetres + roundingOfTheDivision) / 2;
    }
}
