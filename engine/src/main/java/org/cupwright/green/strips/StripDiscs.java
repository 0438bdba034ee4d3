package org.cupwright.green.strips;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.SurveyPoints;
import org.cupwright.green.spline.PointIndex;

/** Discs on a green that two strips or more cover each by itself, and that have no point in common. */
final class StripDiscs {
    /** Points of a strip within a disc without which it does not cover it (our choice). */
    private static final int LEAST_IN_DISC = 12;

    /** A quarter of a disc has at least this share of its points, half of what is even (our choice). */
    private static final double LEAST_IN_QUARTER = 0.125;

    /** More strips at a spot, or more spots, tell little more (our choice: keeps an import within seconds). */
    private static final int MOST_STRIPS = 4;

    private static final int MOST_DISCS = 40;

    /** Middles that are tried are so many radii apart (our choice). */
    private static final double TRIED_RADII = 0.5;

    private static final double ROUNDING_METRES = 1e-6;

    private final SurveyPoints points;
    private final PointIndex index;
    private final double radiusMetres;

    /**
     * A disc.
     *
     * @param members of each strip that covers it its points, the strips with most points first
     */
    record Disc(double east, double north, List<int[]> members) {}

    StripDiscs(SurveyPoints points, double radiusMetres) {
        this.points = points;
        this.index = new PointIndex(points);
        this.radiusMetres = radiusMetres;
    }

    /** Discs about spots of a green, spread over all of it. */
    List<Disc> on(Outline green) {
        double[] box = PointIndex.box(points);
        double step = TRIED_RADII * radiusMetres;
        List<Disc> discs = new ArrayList<>();
        for (double east = box[0]; east <= box[2]; east += step) {
            for (double north = box[1]; north <= box[3]; north += step) {
                if (isClear(discs, east, north) && green.contains(new MapPoint(east, north))) {
                    Disc disc = new Disc(east, north, covering(east, north));
                    if (disc.members.size() > 1) {
                        discs.add(disc);
                    }
                }
            }
        }
        return thinned(discs);
    }

    private boolean isClear(List<Disc> discs, double east, double north) {
        return discs.stream()
                .allMatch(
                        disc -> Math.hypot(disc.east - east, disc.north - north) >= 2 * radiusMetres - ROUNDING_METRES);
    }

    private static List<Disc> thinned(List<Disc> discs) {
        int count = Math.min(MOST_DISCS, discs.size());
        return IntStream.range(0, count)
                .mapToObj(i -> discs.get((int) ((long) i * discs.size() / count)))
                .toList();
    }

    private List<int[]> covering(double east, double north) {
        Map<Integer, IntStream.Builder> members = new TreeMap<>();
        Map<Integer, int[]> quarters = new TreeMap<>();
        index.forEachWithin(east, north, radiusMetres, (point, x, y) -> {
            int strip = points.strip(point);
            if (strip != SurveyPoints.NO_STRIP) {
                members.computeIfAbsent(strip, first -> IntStream.builder()).add(point);
                quarters.computeIfAbsent(strip, first -> new int[4])[(x < 0 ? 0 : 1) + (y < 0 ? 0 : 2)]++;
            }
        });
        quarters.values().removeIf(StripDiscs::isThin);
        return quarters.keySet().stream()
                .map(strip -> members.get(strip).build().toArray())
                .sorted(Comparator.comparingInt((int[] of) -> -of.length))
                .limit(MOST_STRIPS)
                .toList();
    }

    private static boolean isThin(int[] quarters) {
        int all = Arrays.stream(quarters).sum();
        return all < LEAST_IN_DISC || Arrays.stream(quarters).anyMatch(count -> count < LEAST_IN_QUARTER * all);
    }
}
