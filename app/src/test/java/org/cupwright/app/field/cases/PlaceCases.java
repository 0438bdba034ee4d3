package org.cupwright.app.field.cases;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Greens of odd shapes, played in all directions, some with a bunker inside, and points on them. Each green has its
 * edge on the map, and in its own frame: {@code local}.
 */
final class PlaceCases {
    private static final int GREENS = 45;
    private static final int POINTS = 10;

    private PlaceCases() {}

    static List<String> lines() {
        List<String> lines = new ArrayList<>();
        Random random = new Random(470);
        for (int i = 0; i < GREENS; i++) {
            green(i, random, lines);
        }
        return lines;
    }

    private static void green(int number, Random random, List<String> lines) {
        double heading = number % 9 == 0 ? 90 * (number / 9) % 360 : Case.asWritten(360 * random.nextDouble());
        double[] origin = {160_000 + 680_000 * random.nextDouble(), 9_300_000 * random.nextDouble()};
        double[][][] map = number % 4 == 3
                ? new double[][][] {edge(random, origin), bunker(random, origin)}
                : new double[][][] {edge(random, origin)};
        double[] middle = SlowPlane.middle(map);
        double[][][] local = new double[map.length][][];
        for (int r = 0; r < map.length; r++) {
            local[r] = Arrays.stream(map[r])
                    .map(corner -> SlowPlane.inFrame(corner, middle, heading))
                    .toArray(double[][]::new);
        }
        double least =
                Arrays.stream(local[0]).mapToDouble(corner -> corner[1]).min().orElseThrow();
        double most =
                Arrays.stream(local[0]).mapToDouble(corner -> corner[1]).max().orElseThrow();
        String on = number % 3 == 0 ? "chord" : number % 3 == 1 ? "squared" : "mark";
        double front = on.equals("mark") ? least + 3 * random.nextDouble() : least;
        double turn = StrictMath.toRadians(heading);
        double[] mark = {middle[0] + front * StrictMath.sin(turn), middle[1] + front * StrictMath.cos(turn)};
        lines.add("green heading=" + Case.written(heading) + " on=" + on + " front=" + Case.written(front) + " mark="
                + Case.written(mark) + " map=" + Case.written(map) + " local=" + Case.written(local));
        for (int found = 0; found < POINTS; ) {
            double[] at = {
                Case.asWritten(middle[0] + 36 * (random.nextDouble() - 0.5)),
                Case.asWritten(middle[1] + 36 * (random.nextDouble() - 0.5))
            };
            found += point(at, middle, heading, local, on.equals("chord") ? null : new double[] {front, most}, lines);
        }
    }

    private static int point(
            double[] at, double[] middle, double heading, double[][][] local, double[] depth, List<String> lines) {
        double[] own = SlowPlane.inFrame(at, middle, heading);
        if (!SlowPlane.inside(local, own[0], own[1])) {
            return 0;
        }
        double front = depth == null ? SlowPlane.toEdge(local, own[0], own[1], 0, -1) : own[1] - depth[0];
        double back = depth == null ? SlowPlane.toEdge(local, own[0], own[1], 0, 1) : depth[1] - own[1];
        double left = SlowPlane.toEdge(local, own[0], own[1], -1, 0);
        double right = SlowPlane.toEdge(local, own[0], own[1], 1, 0);
        boolean walked = Double.isFinite(front + back + left + right);
        if (!walked || Math.abs(left - right) < 0.01) {
            return 0;
        }
        lines.add("at map=" + Case.written(at) + " local=" + Case.written(own) + " on=" + Case.written(front) + " back="
                + Case.written(back) + " side=" + (left < right ? "L" : "R") + " from="
                + Case.written(Math.min(left, right)));
        return 1;
    }

    /** A round of corners, dented here and there as a kidney is. */
    private static double[][] edge(Random random, double[] origin) {
        int corners = 12 + random.nextInt(28);
        double dent = 0.45 * random.nextDouble();
        double at = 2 * Math.PI * random.nextDouble();
        double size = 8 + 8 * random.nextDouble();
        double[][] ring = new double[corners][];
        for (int i = 0; i < corners; i++) {
            double turn = 2 * Math.PI * i / corners;
            double from = StrictMath.atan2(StrictMath.sin(turn - at), StrictMath.cos(turn - at));
            double radius = size * (1 - dent * StrictMath.exp(-2 * from * from) + 0.12 * StrictMath.sin(3 * turn + at));
            ring[i] = corner(origin, radius, turn);
        }
        return ring;
    }

    private static double[][] bunker(Random random, double[] origin) {
        double[][] ring = new double[7][];
        double[] at = corner(origin, 1.5, 2 * Math.PI * random.nextDouble());
        for (int i = 0; i < ring.length; i++) {
            ring[i] = corner(at, 1.1 + 0.4 * random.nextDouble(), 2 * Math.PI * i / ring.length);
        }
        return ring;
    }

    private static double[] corner(double[] origin, double radius, double turn) {
        return new double[] {
            Case.asWritten(origin[0] + radius * StrictMath.sin(turn)),
            Case.asWritten(origin[1] + radius * StrictMath.cos(turn))
        };
    }
}
