package org.cupwright.green;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.units.Heading;

/**
 * The slope of the ground at a spot, read with a level: the gradient of the plane about it.
 *
 * @param place the spot
 * @param gradientEast rise per metre towards east
 * @param gradientNorth rise per metre towards north
 * @param standardError of either component, rise per metre
 * @param person who read it; empty where nobody said
 * @param readOn the day it was read; empty where nobody said
 */
public record LevelReading(
        MapPoint place,
        double gradientEast,
        double gradientNorth,
        double standardError,
        Optional<String> person,
        Optional<LocalDate> readOn) {
    /** Two readings are taken to be at right angles when they are within so many degrees of it (our choice). */
    private static final double SQUARE_WITHIN_DEGREES = 30;

    public LevelReading {
        if (!Double.isFinite(gradientEast) || !Double.isFinite(gradientNorth) || !(standardError > 0)) {
            throw new IllegalArgumentException("not a level reading at " + place + ": " + gradientEast + ", "
                    + gradientNorth + ", standard error " + standardError);
        }
    }

    public LevelReading(MapPoint place, double gradientEast, double gradientNorth, double standardError) {
        this(place, gradientEast, gradientNorth, standardError, Optional.empty(), Optional.empty());
    }

    /** The same reading, with who read it and when. */
    public LevelReading by(String reader, LocalDate day) {
        return new LevelReading(
                place, gradientEast, gradientNorth, standardError, Optional.of(reader), Optional.of(day));
    }

    /** The steepest slope and the direction in which a ball would run. */
    public static LevelReading steepest(
            MapPoint place, double slopePercent, Heading downhill, double standardErrorPercent) {
        double rise = -slopePercent / 100;
        return new LevelReading(place, rise * downhill.east(), rise * downhill.north(), standardErrorPercent / 100);
    }

    /**
     * Two readings across each other, each positive where the ground rises in the direction the level points.
     *
     * <p>They should be at right angles; where they are not quite, the gradient that gives both is found, and its error
     * grows as the directions close up.
     *
     * @throws IllegalArgumentException when the headings are more than 30 degrees from a right angle
     */
    public static LevelReading across(
            MapPoint place,
            double firstPercent,
            Heading first,
            double secondPercent,
            Heading second,
            double standardErrorPercent) {
        double turn = first.east() * second.north() - first.north() * second.east();
        if (!(Math.abs(turn) >= StrictMath.cos(Math.toRadians(SQUARE_WITHIN_DEGREES)))) {
            throw new IllegalArgumentException("readings along " + first.degrees() + " and " + second.degrees()
                    + " degrees at " + place + " do not cross; turn the level by a right angle");
        }
        double east = (firstPercent * second.north() - secondPercent * first.north()) / turn;
        double north = (secondPercent * first.east() - firstPercent * second.east()) / turn;
        return new LevelReading(place, east / 100, north / 100, standardErrorPercent / 100 / Math.abs(turn));
    }

    /** The reading as the plane about the spot. */
    public PlaneFit plane() {
        double variance = standardError * standardError;
        return new PlaneFit(gradientEast, gradientNorth, variance, 0, variance);
    }
}
