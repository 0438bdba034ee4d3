package org.cupwright.app.field.cases;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;

/**
 * A line of a file of cases: a word, then names with their values. Points are {@code x,y}, several of them have a
 * semicolon between, and rings of them a bar. A line that begins with {@code #} is a remark.
 */
public record Case(String word, Map<String, String> values) {
    static final Path FILES = Path.of("src/test/resources/org/cupwright/app/field/cases");

    public static List<Case> read(String file) throws IOException {
        List<Case> cases = new ArrayList<>();
        for (String line : Files.readAllLines(FILES.resolve(file))) {
            if (!line.isBlank() && !line.startsWith("#")) {
                cases.add(of(line));
            }
        }
        return cases;
    }

    private static Case of(String line) {
        String[] words = line.split(" ");
        Map<String, String> values = new HashMap<>();
        for (int i = 1; i < words.length; i++) {
            int at = words[i].indexOf('=');
            values.put(words[i].substring(0, at), words[i].substring(at + 1));
        }
        return new Case(words[0], values);
    }

    boolean has(String name) {
        return values.containsKey(name);
    }

    String text(String name) {
        return values.get(name);
    }

    public double number(String name) {
        return Double.parseDouble(values.get(name));
    }

    public double[] point(String name) {
        return pointOf(values.get(name));
    }

    double[][] points(String name) {
        return pointsOf(values.get(name));
    }

    double[][][] rings(String name) {
        String[] all = values.get(name).split("\\|");
        double[][][] rings = new double[all.length][][];
        for (int i = 0; i < all.length; i++) {
            rings[i] = pointsOf(all[i]);
        }
        return rings;
    }

    private static double[][] pointsOf(String text) {
        String[] all = text.split(";");
        double[][] points = new double[all.length][];
        for (int i = 0; i < all.length; i++) {
            points[i] = pointOf(all[i]);
        }
        return points;
    }

    private static double[] pointOf(String text) {
        String[] parts = text.split(",");
        double[] point = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            point[i] = Double.parseDouble(parts[i]);
        }
        return point;
    }

    /** A number as files have it. */
    static String written(double value) {
        return String.format(Locale.ROOT, "%.5f", value);
    }

    static String written(double... point) {
        StringJoiner numbers = new StringJoiner(",");
        for (double number : point) {
            numbers.add(written(number));
        }
        return numbers.toString();
    }

    static String written(double[][] points) {
        StringJoiner all = new StringJoiner(";");
        for (double[] point : points) {
            all.add(written(point));
        }
        return all.toString();
    }

    static String written(double[][][] rings) {
        StringJoiner all = new StringJoiner("|");
        for (double[][] ring : rings) {
            all.add(written(ring));
        }
        return all.toString();
    }

    /** What a value is once it stands in a file: cases are worked out from that. */
    static double asWritten(double value) {
        return Double.parseDouble(written(value));
    }
}
