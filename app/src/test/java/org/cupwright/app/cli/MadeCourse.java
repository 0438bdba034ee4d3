package org.cupwright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;

/**
 * Files of an invented course of square greens in the open Atlantic (UTM zone 26 north), 22 m a side, all played
 * northwards.
 */
public final class MadeCourse {
    /** West edge of the first green, m. */
    public static final double WEST = 500_000;

    /** South edge of every green, m. */
    public static final double SOUTH = 4_400_000;

    public static final double SIDE = 22;
    private static final double APART = 100;

    private MadeCourse() {}

    /** A map of so many greens, with lines of play. */
    public static Path outlines(Path folder, int greens) throws IOException {
        StringBuilder features = new StringBuilder();
        for (int i = 0; i < greens; i++) {
            double west = WEST + APART * i;
            features.append(i == 0 ? "" : ",")
                    .append(green(Integer.toString(i + 1), west))
                    .append(',')
                    .append(line(i + 1, west));
        }
        return write(folder.resolve("outlines.geojson"), collection(features.toString()));
    }

    public static String collection(String features) {
        return "{\"type\":\"FeatureCollection\",\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"EPSG:32626\"}},"
                + "\"features\":[" + features + "]}";
    }

    /** One square green. */
    public static String green(String ref, double west) {
        return polygon(
                ref, west, SOUTH, west + SIDE, SOUTH, west + SIDE, SOUTH + SIDE, west, SOUTH + SIDE, west, SOUTH);
    }

    /** A green from its corners, closed or not as they are given. */
    public static String polygon(String ref, double... eastNorth) {
        StringBuilder ring = new StringBuilder();
        for (int i = 0; i < eastNorth.length; i += 2) {
            ring.append(i == 0 ? "" : ",").append(pair(eastNorth[i], eastNorth[i + 1]));
        }
        return "{\"type\":\"Feature\",\"properties\":{\"golf\":\"green\",\"ref\":\"" + ref
                + "\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[" + ring + "]]}}";
    }

    private static String line(int ref, double west) {
        double middle = west + SIDE / 2;
        return "{\"type\":\"Feature\",\"properties\":{\"golf\":\"hole\",\"ref\":\"" + ref + "\",\"par\":\"4\"},"
                + "\"geometry\":{\"type\":\"LineString\",\"coordinates\":[" + pair(middle, SOUTH - 300) + ","
                + pair(middle, SOUTH + SIDE / 2) + "]}}";
    }

    private static String pair(double east, double north) {
        return String.format(Locale.ROOT, "[%.3f,%.3f]", east, north);
    }

    /**
     * Invented survey points of the first greens: a slope of 1.2 % to the south, noise of 5 mm, 5 points a square
     * metre.
     */
    public static Path survey(Path folder, int greens, double perUnit) throws IOException {
        return survey(folder, greens, 3000, perUnit);
    }

    /** The same with so many points on each green; a unit is so many metres. */
    public static Path survey(Path folder, int greens, int pointsEach, double perUnit) throws IOException {
        Random random = new Random(7);
        StringBuilder text = new StringBuilder("x,y,z\n");
        for (int i = 0; i < greens; i++) {
            for (int point = 0; point < pointsEach; point++) {
                double east = WEST + APART * i - 1 + (SIDE + 2) * random.nextDouble();
                double north = SOUTH - 1 + (SIDE + 2) * random.nextDouble();
                double height = 20 + 0.012 * (north - SOUTH) + 0.005 * random.nextGaussian();
                text.append(String.format(
                        Locale.ROOT, "%.3f,%.3f,%.4f%n", east / perUnit, north / perUnit, height / perUnit));
            }
        }
        return write(folder.resolve("points.csv"), text.toString());
    }

    /** Ground out of use over the west half of the first green. */
    public static Path closedWestHalf(Path folder) throws IOException {
        String area = "{\"type\":\"Feature\",\"properties\":{\"kind\":\"outOfUse\"},\"geometry\":{\"type\":\"Polygon\","
                + "\"coordinates\":[[" + pair(WEST, SOUTH) + "," + pair(WEST + 11, SOUTH) + ","
                + pair(WEST + 11, SOUTH + SIDE) + "," + pair(WEST, SOUTH + SIDE) + "," + pair(WEST, SOUTH) + "]]}}";
        return write(folder.resolve("ground.geojson"), collection(area));
    }

    public static Path write(Path file, String text) throws IOException {
        return Files.writeString(file, text);
    }
}
