package org.cupwright.app.desk.begin;

import java.util.Optional;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Problem;

/** Positions as people type them: longitude and latitude in degrees, or easting and northing in the course's frame. */
final class TypedPlace {
    /** Nothing of a course lies farther from where it is said to lie, m: our choice. */
    static final double FARTHEST_METRES = 20_000;

    private static final double GREATEST_NUMBER = 1e8;

    private TypedPlace() {}

    /** Where a course is said to lie, in its own frame. */
    static MapPoint of(Place place) {
        return toCourse(place, place.longitudeDegrees(), place.latitudeDegrees());
    }

    private static MapPoint toCourse(Place place, double longitude, double latitude) {
        CoordinateFrame degrees = CoordinateFrame.of(CoordinateFrame.WGS84);
        return Projection.between(degrees, CoordinateFrame.of(place.epsg())).toCourse(longitude, latitude);
    }

    /**
     * The place typed into two fields; empty where nothing was, or something wrong, which is then told.
     *
     * @param east the field of longitude or easting
     * @param north the field of latitude or northing
     */
    static Optional<MapPoint> read(TypedFields fields, String east, String north, Place place) {
        if (fields.isBlank(east) && fields.isBlank(north)) {
            return Optional.empty();
        }
        Optional<Double> x = fields.number(east, -GREATEST_NUMBER, GREATEST_NUMBER);
        Optional<Double> y = fields.number(north, -GREATEST_NUMBER, GREATEST_NUMBER);
        if (x.isEmpty() || y.isEmpty()) {
            return Optional.empty();
        }
        Optional<MapPoint> at = read(x.get(), y.get(), place);
        double away = at.map(of(place)::distanceMetres).orElse(Double.POSITIVE_INFINITY);
        if (away > FARTHEST_METRES) {
            String typed = fields.text(east) + " / " + fields.text(north);
            Problem why = at.isEmpty()
                    ? Problem.of("begin.noPlace", east, typed)
                    : Problem.of("begin.farAway", east, typed, new Length(away));
            fields.refuse(east, why);
            return Optional.empty();
        }
        return at;
    }

    /** Small numbers are degrees: no easting and northing of a course are. */
    static Optional<MapPoint> read(double x, double y, Place place) {
        try {
            boolean degrees = Math.abs(x) <= 180 && Math.abs(y) <= 90;
            return Optional.of(degrees ? toCourse(place, x, y) : new MapPoint(x, y));
        } catch (UnreadableFile nowhere) {
            return Optional.empty();
        }
    }
}
