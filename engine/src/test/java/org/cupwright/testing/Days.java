package org.cupwright.testing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.units.GreenSpeed;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** Invented days and what lies on a green on them. */
public final class Days {
    public static final LocalDate DATE = LocalDate.of(2026, 6, 20);

    private Days() {}

    /** A dry everyday day on a clear green. */
    public static DayConditions dry(double speedFeet) {
        return new DayConditions(new GreenSpeed(speedFeet), false, false, GroundOnDay.clear(DATE));
    }

    public static DayConditions rainy(double speedFeet) {
        return new DayConditions(new GreenSpeed(speedFeet), true, false, GroundOnDay.clear(DATE));
    }

    public static DayConditions event(double speedFeet) {
        return new DayConditions(new GreenSpeed(speedFeet), false, true, GroundOnDay.clear(DATE));
    }

    public static DayConditions dry(double speedFeet, GroundItem... items) {
        return new DayConditions(new GreenSpeed(speedFeet), false, false, ground(items));
    }

    public static GroundOnDay ground(GroundItem... items) {
        return new GroundOnDay(DATE, new ArrayList<>(List.of(items)));
    }

    /** A hole cut so many days before {@link #DATE}, whose ground still rests. */
    public static GroundItem restingHole(double east, double north, int daysAgo) {
        return new GroundItem(
                GroundItem.Kind.OLD_HOLE,
                point(east, north),
                Optional.of(DATE.minusDays(daysAgo)),
                Optional.of(DATE.plusDays(1)));
    }

    /** A hole cut so many days before {@link #DATE}, whose ground has rested. */
    public static GroundItem restedHole(double east, double north, int daysAgo) {
        return new GroundItem(
                GroundItem.Kind.OLD_HOLE,
                point(east, north),
                Optional.of(DATE.minusDays(daysAgo)),
                Optional.of(DATE.minusDays(1)));
    }

    public static GroundItem plug(double east, double north) {
        return new GroundItem(GroundItem.Kind.PLUG, point(east, north), Optional.empty(), Optional.empty());
    }

    public static GroundItem area(GroundItem.Kind kind, double west, double south, double east, double north) {
        Geometry place = Shapes.area(west, south, east, south, east, north, west, north);
        return new GroundItem(kind, place, Optional.empty(), Optional.empty());
    }

    private static Geometry point(double east, double north) {
        return new GeometryFactory().createPoint(new MapPoint(east, north).toCoordinate());
    }
}
