package org.cupwright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.cupwright.app.cli.InProcess.Result;

/**
 * An invented course of box-shaped greens in the open Atlantic, drawn by chance, with settings, holes cut on the days
 * before and closed ground; it is told to the program by its commands, and kept here in plain numbers for who checks.
 */
final class MadeWeeksCourse {
    static final LocalDate FIRST = LocalDate.of(2026, 6, 20);
    private static final double APART = 100;

    /** A box, all played northwards. */
    record Box(String hole, double west, double south, double width, double depth) {
        double edgeMetres(double east, double north) {
            double across = Math.min(east - west, west + width - east);
            return Math.min(across, Math.min(north - south, south + depth - north));
        }
    }

    /** A hole cut before the plan, and the day it was left: the first of the plan for the one in use. */
    record Old(String hole, double east, double north, LocalDate leftOn) {}

    /** Closed ground. */
    record Circle(String hole, double east, double north, double radius) {}

    final List<Box> greens = new ArrayList<>();
    final List<Old> old = new ArrayList<>();
    final List<Circle> closed = new ArrayList<>();
    final Map<String, String> settings = new LinkedHashMap<>();
    final int days;
    final int restDays;
    final double restMetres;
    final boolean balancesThirds;

    MadeWeeksCourse(Random random) {
        int count = 2 + random.nextInt(5);
        for (int i = 0; i < count; i++) {
            greens.add(new Box(
                    Integer.toString(i + 1),
                    MadeCourse.WEST + APART * i,
                    MadeCourse.SOUTH,
                    12 + 14 * random.nextDouble(),
                    13 + 15 * random.nextDouble()));
        }
        days = 3 + random.nextInt(8);
        restDays = 3 + random.nextInt(12);
        restMetres = 2 + random.nextInt(3) * 0.75;
        balancesThirds = random.nextInt(4) > 0;
        for (String key : List.of("turf.wearRestDays", "turf.wearRestSlowDays", "turf.wearRestCapDays")) {
            settings.put(key, Integer.toString(restDays));
        }
        settings.put("holelocation.oldHoleMetres", Double.toString(restMetres));
        settings.put("rotation.scheme", balancesThirds ? "sixSixSix" : "free");
        for (Box green : greens) {
            before(random, green);
        }
    }

    private void before(Random random, Box green) {
        int holes = random.nextInt(4);
        for (int i = holes; i > 0; i--) {
            double east = green.west + 3 + (green.width - 6) * random.nextDouble();
            double north = green.south + 3 + (green.depth - 6) * random.nextDouble();
            old.add(new Old(green.hole, round(east), round(north), FIRST.minusDays(i - 1)));
        }
        if (random.nextInt(4) == 0) {
            double east = green.west + green.width * random.nextDouble();
            closed.add(new Circle(green.hole, round(east), round(green.south + green.depth / 2), 3));
        }
    }

    private static double round(double metres) {
        return Math.round(metres * 100) / 100.0;
    }

    /** Tells the program of all that. */
    void tell(InProcess cupwright, Path folder) throws IOException {
        accepted(cupwright.run("import", "--course", "made", "--outlines", outlines(folder)));
        List<Object> policy = new ArrayList<>(List.of("policy", "--date", FIRST.minusDays(30)));
        settings.forEach((key, value) -> policy.add(key + "=" + value));
        accepted(cupwright.run(policy.toArray()));
        for (Old hole : old) {
            LocalDate cut = hole.leftOn.minusDays(1);
            accepted(cupwright.run(
                    "log",
                    "add",
                    "cup-changed",
                    "--hole",
                    hole.hole,
                    "--at",
                    at(hole.east, hole.north),
                    "--date",
                    cut,
                    "--person",
                    "Invented Person",
                    "--yes"));
        }
        for (Circle circle : closed) {
            accepted(cupwright.run(
                    "log",
                    "add",
                    "ground-marked",
                    "--hole",
                    circle.hole,
                    "--at",
                    at(circle.east, circle.north),
                    "--radius",
                    circle.radius,
                    "--set",
                    "use=closed",
                    "--set",
                    "reason=wear",
                    "--date",
                    FIRST.minusDays(2),
                    "--person",
                    "Invented Person",
                    "--yes"));
        }
    }

    private static void accepted(Result result) {
        if (result.status() != 0) {
            throw new AssertionError(result.err());
        }
    }

    private static String at(double east, double north) {
        return String.format(Locale.ROOT, "%.2f,%.2f", east, north);
    }

    private Path outlines(Path folder) throws IOException {
        List<String> features = new ArrayList<>();
        for (Box green : greens) {
            double east = green.west + green.width;
            double north = green.south + green.depth;
            features.add(MadeCourse.polygon(
                    green.hole,
                    green.west,
                    green.south,
                    east,
                    green.south,
                    east,
                    north,
                    green.west,
                    north,
                    green.west,
                    green.south));
            double middle = green.west + green.width / 2;
            features.add(String.format(
                    Locale.ROOT,
                    "{\"type\":\"Feature\",\"properties\":{\"golf\":\"hole\",\"ref\":\"%s\",\"par\":\"4\"},"
                            + "\"geometry\":{\"type\":\"LineString\",\"coordinates\":[[%.3f,%.3f],[%.3f,%.3f]]}}",
                    green.hole,
                    middle,
                    green.south - 300,
                    middle,
                    green.south + green.depth / 2));
        }
        Path file = Files.createTempFile(folder, "outlines", ".geojson");
        return MadeCourse.write(file, MadeCourse.collection(String.join(",", features)));
    }
}
