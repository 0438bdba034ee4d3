package org.cupwright.roll;

/** Whether a hole takes a ball that crosses it. */
@FunctionalInterface
public interface Capture {
    /**
     * The greatest speed at which a ball is holed.
     *
     * @param offsetMetres distance of the hole's centre from the ball's line; never negative
     * @return m/s; 0 where no speed is slow enough
     */
    double greatestSpeed(double offsetMetres);
}
