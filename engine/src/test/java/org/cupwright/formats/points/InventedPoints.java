package org.cupwright.formats.points;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.InventedMap;

/** An invented course of two greens and points on the first, half a metre apart. */
final class InventedPoints {
    static final Course COURSE = new InventedMap()
            .green(0, 0, 12, ",\"ref\":\"1\"")
            .green(400, 0, 12, ",\"ref\":\"2\"")
            .read()
            .course();
    static final MapPoint MIDDLE = COURSE.find("1").orElseThrow().green().centroid();

    private InventedPoints() {}

    /** Lines of {@code pattern} filled with east, north and height of a 20 m square about the first green's middle. */
    static String lines(String pattern, DoubleBinaryOperator height, double scale) {
        StringBuilder text = new StringBuilder();
        for (double x = -10; x <= 10; x += 0.5) {
            for (double y = -10; y <= 10; y += 0.5) {
                double z = height.applyAsDouble(x, y);
                double east = (MIDDLE.east() + x) * scale;
                double north = (MIDDLE.north() + y) * scale;
                text.append(String.format(Locale.ROOT, pattern, east, north, z * scale))
                        .append('\n');
            }
        }
        return text.toString();
    }

    static String gentle(String pattern) {
        return lines(pattern, (x, y) -> 100 + 0.02 * x, 1);
    }

    static GreenPoints read(String text, PointRequest request) {
        return read(text, request, null);
    }

    static GreenPoints read(String text, PointRequest request, String columns) {
        PointCollector collector = new PointCollector(COURSE, request);
        try {
            PointsCsv.read(InventedMap.bytes(text), Optional.ofNullable(columns), collector);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return collector.finish();
    }

    static GreenPoints read(String text) {
        return read(text, PointRequest.asTheCourse());
    }
}
