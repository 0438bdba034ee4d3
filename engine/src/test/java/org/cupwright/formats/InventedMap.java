package org.cupwright.formats;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.cupwright.finding.Finding;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.outlines.CourseOutlines;
import org.cupwright.formats.outlines.GeoJsonFeatures;
import org.cupwright.formats.outlines.OutlineRequest;
import org.cupwright.formats.outlines.ReadCourse;

/**
 * Writes map files of an invented course in the open Atlantic (30.5° W, 40° N; UTM zone 25 N), metres from that point.
 */
public final class InventedMap {
    private static final double LONGITUDE = -30.5;
    private static final double LATITUDE = 40;
    private static final double METRES_PER_DEGREE_NORTH = 111_035;
    private static final double METRES_PER_DEGREE_EAST = 85_394;

    private final List<String> features = new ArrayList<>();

    public static String position(double east, double north) {
        double longitude = LONGITUDE + east / METRES_PER_DEGREE_EAST;
        double latitude = LATITUDE + north / METRES_PER_DEGREE_NORTH;
        return String.format(Locale.ROOT, "[%.8f,%.8f]", longitude, latitude);
    }

    /** A circle of 48 sides. */
    public static String ring(double east, double north, double radius) {
        StringJoiner points = new StringJoiner(",", "[", "]");
        for (int i = 0; i <= 48; i++) {
            double angle = 2 * Math.PI * (i % 48) / 48;
            points.add(position(east + radius * StrictMath.cos(angle), north + radius * StrictMath.sin(angle)));
        }
        return points.toString();
    }

    public InventedMap area(double east, double north, double radius, String tags) {
        return feature("Polygon", "[" + ring(east, north, radius) + "]", tags);
    }

    public InventedMap green(double east, double north, double radius, String tags) {
        return area(east, north, radius, "\"golf\":\"green\"" + tags);
    }

    public InventedMap line(double fromEast, double fromNorth, double toEast, double toNorth, String tags) {
        String points = "[" + position(fromEast, fromNorth) + "," + position(toEast, toNorth) + "]";
        return feature("LineString", points, "\"golf\":\"hole\"" + tags);
    }

    /** A feature of any type. */
    public InventedMap feature(String type, String coordinates, String tags) {
        features.add("{\"type\":\"Feature\",\"geometry\":{\"type\":\"" + type + "\",\"coordinates\":" + coordinates
                + "},\"properties\":{" + tags + "}}");
        return this;
    }

    public String json() {
        return "{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",\n", features) + "]}";
    }

    public ReadCourse read() {
        return readCourse(json(), request());
    }

    public ReadCourse read(OutlineRequest request) {
        return readCourse(json(), request);
    }

    public static OutlineRequest request() {
        return OutlineRequest.of("invented", ZoneId.of("Atlantic/Azores"));
    }

    public static ReadCourse readCourse(String json, OutlineRequest request) {
        try {
            return CourseOutlines.read(GeoJsonFeatures.read(bytes(json), CourseOutlines::essential), request);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    /** What a file that cannot be read is said to be wrong with. */
    public static Finding troubleOf(Runnable reading) {
        try {
            reading.run();
        } catch (UnreadableFile trouble) {
            return trouble.finding();
        }
        throw new AssertionError("it was read without trouble");
    }
}
