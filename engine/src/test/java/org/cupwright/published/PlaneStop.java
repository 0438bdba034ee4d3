package org.cupwright.published;

import org.cupwright.units.GreenSpeed;

/**
 * A roll on a plane with a known end: derived from the closed form of rolling on a plane, g = 9.81 m/s²; distances
 * measured in the plane, printed to a micrometre.
 */
record PlaneStop(
        double metresPerSecond,
        double degreesFromDownhill,
        double speedFeet,
        double slope,
        double down,
        double across,
        double seconds,
        double path) {
    static PlaneStop[] all() {
        return new PlaneStop[] {
            new PlaneStop(2.0, 90, 10, 0.02, 0.498180, 3.706568, 3.900614, 3.773360),
            new PlaneStop(2.0, 60, 10, 0.03, 3.160915, 3.592814, 5.093466, 4.858139),
            new PlaneStop(2.0, 120, 10, 0.03, -1.113642, 2.964679, 3.455647, 3.220320),
            new PlaneStop(1.8288, 90, 12, 0.01, 0.287042, 3.679389, 4.096422, 3.701776),
        };
    }

    GreenSpeed speed() {
        return new GreenSpeed(speedFeet);
    }
}
