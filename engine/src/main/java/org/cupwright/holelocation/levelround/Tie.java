package org.cupwright.holelocation.levelround;

/**
 * The covariance of a spot's gradient with the gradient at a reading: first letter the spot's component, second the
 * reading's.
 */
record Tie(double ee, double en, double ne, double nn) {
    static Tie of(double[] rows) {
        return new Tie(rows[0], rows[1], rows[2], rows[3]);
    }

    /** C K C': what a reading takes off the spot's covariance, K being the inverse of the reading's own. */
    GradientSpread taken(GradientSpread inverse) {
        double a = ee * inverse.east2() + en * inverse.eastNorth();
        double b = ee * inverse.eastNorth() + en * inverse.north2();
        double c = ne * inverse.east2() + nn * inverse.eastNorth();
        double d = ne * inverse.eastNorth() + nn * inverse.north2();
        return new GradientSpread(a * ee + b * en, a * ne + b * nn, c * ne + d * nn);
    }

    /**
     * This tie to one reading after another was taken: C − C₁ K C₂', the ties of the spot and of this reading to that
     * other.
     */
    Tie after(Tie toOther, GradientSpread inverse, Tie readingToOther) {
        double a = toOther.ee * inverse.east2() + toOther.en * inverse.eastNorth();
        double b = toOther.ee * inverse.eastNorth() + toOther.en * inverse.north2();
        double c = toOther.ne * inverse.east2() + toOther.nn * inverse.eastNorth();
        double d = toOther.ne * inverse.eastNorth() + toOther.nn * inverse.north2();
        return new Tie(
                ee - a * readingToOther.ee - b * readingToOther.en,
                en - a * readingToOther.ne - b * readingToOther.nn,
                ne - c * readingToOther.ee - d * readingToOther.en,
                nn - c * readingToOther.ne - d * readingToOther.nn);
    }
}
