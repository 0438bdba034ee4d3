package org.cupwright.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Makes the example files of {@code examples/data}: a course of three holes that does not exist, in the open Atlantic.
 * Its one argument is the folder to write to; the same files come out every time.
 */
public final class ThreeInventedHoles {
    /** UTM zone 25 N on WGS84. */
    static final int EPSG = 32625;

    private static final long SEED = 1;
    private static final double POINTS_PER_SQUARE_METRE = 5;
    private static final double NOISE_METRES = 0.010;
    private static final double COLLAR_METRES = 3;

    static final List<InventedHole> HOLES = List.of(
            new InventedHole(1, 4, 542_700, 4_428_000, 13, 20, 340, 1.6, 0.0),
            new InventedHole(2, 3, 542_950, 4_428_120, 11.5, 140, 155, 2.2, 0.20),
            new InventedHole(3, 5, 542_500, 4_427_700, 14, 265, 470, 1.2, 0.30));

    private ThreeInventedHoles() {}

    /** Writes the files. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Files.writeString(folder.resolve("outlines.geojson"), outlines());
        Files.writeString(folder.resolve("points.csv"), points());
        Files.writeString(folder.resolve("levels.csv"), levels());
        Files.writeString(folder.resolve("ground.geojson"), ground());
    }

    static String outlines() {
        MapText text = new MapText(EPSG);
        for (InventedHole hole : HOLES) {
            text.add(hole.green(), Map.of("golf", "green"));
            text.add(hole.line(), lineTags(hole));
            text.add(hole.tee(), Map.of("golf", "tee"));
            hole.bunkers().forEach(bunker -> text.add(bunker, Map.of("golf", "bunker")));
        }
        return text.text();
    }

    private static Map<String, Object> lineTags(InventedHole hole) {
        Map<String, Object> tags = new LinkedHashMap<>();
        tags.put("golf", "hole");
        tags.put("ref", String.valueOf(hole.ref()));
        tags.put("par", hole.par());
        tags.put("dist", hole.lengthMetres());
        return tags;
    }

    static String points() {
        StringBuilder text = new StringBuilder("# invented points, EPSG:" + EPSG + ", metres\nx,y,z,class\n");
        Random random = new Random(SEED);
        for (InventedHole hole : HOLES) {
            Geometry surveyed = hole.green().buffer(COLLAR_METRES);
            Envelope box = surveyed.getEnvelopeInternal();
            long count = Math.round(box.getArea() * POINTS_PER_SQUARE_METRE);
            for (long i = 0; i < count; i++) {
                Coordinate place = new Coordinate(
                        box.getMinX() + random.nextDouble() * box.getWidth(),
                        box.getMinY() + random.nextDouble() * box.getHeight());
                double height = hole.heightMetres(place) + NOISE_METRES * random.nextGaussian();
                if (surveyed.contains(surveyed.getFactory().createPoint(place))) {
                    text.append(String.format(Locale.ROOT, "%.2f,%.2f,%.3f,2\n", place.x, place.y, height));
                }
            }
        }
        return text.toString();
    }

    static String levels() {
        return """
                # invented level readings: paces on and from the side; \
                percent downhill along the line of play and to its right
                hole,on,side,heading,fall,fallRight
                1,14,L12,play,-1.5,-0.6
                1,20,R10,play,-1.8,0.2
                2,9,L11,play,-2.1,-0.5
                3,24,R13,play,-1.3,-0.4
                """;
    }

    static String ground() {
        InventedHole first = HOLES.get(0);
        InventedHole second = HOLES.get(1);
        Polygon saved = (Polygon)
                second.green().getFactory().createPoint(second.at(2, 5)).buffer(2.5);
        return new MapText(EPSG)
                .add(
                        first.green().getFactory().createPoint(first.at(-3, 4)),
                        new TreeMap<>(Map.of("kind", "oldHole", "since", "2026-05-30")))
                .add(first.green().getFactory().createPoint(first.at(4, -2)), Map.of("kind", "plug"))
                .add(saved, new TreeMap<>(Map.of("kind", "saved", "until", "2026-06-14")))
                .text();
    }
}
