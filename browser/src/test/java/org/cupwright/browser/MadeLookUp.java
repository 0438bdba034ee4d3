package org.cupwright.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.OnConvention;
import org.cupwright.rotation.counting.Shares;
import org.cupwright.testing.RandomGreens;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * An invented green with patches of ground of which different things are said, a spot that will not do, and the other
 * holes of the day: as the phone carries them, and as a test looks at them.
 *
 * @param said what is said of each spot of the lattice; empty off the green
 * @param from the spot that will not do
 * @param parts the other holes: third, lateral, how they play; −1 where that is not known
 * @param other another hole of the same green
 * @param shares how the day is to be spread: thirds if they are asked for, laterals, how they play
 */
record MadeLookUp(
        Hole hole,
        GreenLattice lattice,
        List<String> said,
        MapPoint from,
        List<int[]> parts,
        Optional<MapPoint> other,
        List<Optional<Shares>> shares) {
    static final double APART_METRES = 6;
    private static final List<String> SPLITS = List.of("third", "lateral", "plays");
    private static final List<String> PLAYS = List.of("", "easier", "medium", "harder");
    private static final List<String> PATCHES = List.of(
            "fail|||edge.fail||",
            "caution||%s|oldHole.caution||",
            "caution||%s|level.check||",
            "notSurveyed|||||",
            "pass||%s|||saved",
            "saidToBeGood|unchecked|%s|||");

    static MadeLookUp random(Random random) {
        Hole hole = RandomGreens.hole(random);
        GreenLattice lattice = GreenLattice.over(hole.green(), 0);
        List<MapPoint> middles = new ArrayList<>();
        List<Double> radii = new ArrayList<>();
        for (int i = 0; i < 5 + random.nextInt(20); i++) {
            middles.add(RandomGreens.pointOn(hole.green(), random));
            radii.add(0.5 + 4 * random.nextDouble());
        }
        int bands = 3 + random.nextInt(6);
        List<String> said = new ArrayList<>();
        for (int cell = 0; cell < lattice.size(); cell++) {
            MapPoint at = lattice.spot(cell);
            said.add(hole.green().contains(at) ? patch(at, middles, radii).formatted(plays(at, bands)) : "");
        }
        List<int[]> parts = new ArrayList<>();
        for (int i = 0; i < 17; i++) {
            parts.add(new int[] {random.nextInt(4) - 1, random.nextInt(4) - 1, random.nextInt(4) - 1});
        }
        MapPoint from = lattice.spot(lattice.nearest(RandomGreens.pointOn(hole.green(), random)));
        Optional<MapPoint> other =
                random.nextInt(4) == 0 ? Optional.of(RandomGreens.pointOn(hole.green(), random)) : Optional.empty();
        return new MadeLookUp(hole, lattice, said, from, parts, other, shares(random));
    }

    private static String patch(MapPoint at, List<MapPoint> middles, List<Double> radii) {
        for (int i = 0; i < middles.size(); i++) {
            if (at.distanceMetres(middles.get(i)) <= radii.get(i)) {
                return PATCHES.get(i % PATCHES.size());
            }
        }
        return "pass||%s|||";
    }

    private static String plays(MapPoint at, int bands) {
        return PLAYS.get((int) Math.floorMod((long) (at.east() + at.north()) / bands, (long) PLAYS.size()));
    }

    private static List<Optional<Shares>> shares(Random random) {
        Optional<Shares> thirds = List.of(
                        Optional.of(Shares.THIRDS), Optional.of(new Shares(1, 1, 0)), Optional.<Shares>empty())
                .get(random.nextInt(3));
        return List.of(
                thirds,
                Optional.of(Shares.THIRDS),
                Optional.of(random.nextBoolean() ? Shares.THIRDS : new Shares(3, 2, 1)));
    }

    GreenFrame frame() {
        return GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
    }

    /** As it comes to the phone. */
    String carried() {
        ObjectNode out = object();
        out.put("step", GreenLattice.CELL_METRES);
        out.put("west", lattice.westCount());
        out.put("south", lattice.southCount());
        out.put("columns", lattice.columns());
        out.put("rows", lattice.rows());
        Map<String, Integer> kinds = new LinkedHashMap<>(Map.of("", 0));
        said.forEach(one -> kinds.putIfAbsent(one, kinds.size()));
        ArrayNode names = out.putArray("kinds");
        kinds.keySet().forEach(names::add);
        out.put(
                "cells",
                String.join(
                        " ", said.stream().map(one -> kinds.get(one).toString()).toList()));
        ArrayNode others = out.putArray("others");
        other.ifPresent(at -> point(at, others.addArray()));
        out.put("apartMetres", APART_METRES);
        frame(out.putObject("frame"));
        return out.toString();
    }

    private void frame(ObjectNode out) {
        GreenFrame frame = frame();
        point(hole.green().centroid(), out.putArray("origin"));
        out.putArray("play").add(frame.play().east()).add(frame.play().north());
        out.put("squared", false);
        out.putArray("fronts");
        ArrayNode edge = out.putArray("edge");
        Polygon polygon = hole.green().polygon();
        ring(polygon.getExteriorRing(), edge.addArray());
        for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
            ring(polygon.getInteriorRingN(i), edge.addArray());
        }
    }

    private static void ring(LinearRing ring, ArrayNode out) {
        for (Coordinate corner : ring.getCoordinates()) {
            point(MapPoint.of(corner), out.addArray());
        }
    }

    private static void point(MapPoint at, ArrayNode out) {
        out.add(at.east()).add(at.north());
    }

    /** The other holes as the phone counts them. */
    String others() {
        ArrayNode out = JsonMapper.shared().createArrayNode();
        for (int[] part : parts) {
            ObjectNode one = out.addObject();
            for (int split = 0; split < SPLITS.size(); split++) {
                if (part[split] >= 0) {
                    one.put(SPLITS.get(split), part[split]);
                }
            }
        }
        return out.toString();
    }

    /** How long a pace is, and how the day is to be spread. */
    String rules() {
        ObjectNode out = object();
        out.put("pace", NextBestByTrying.PACE);
        ObjectNode all = out.putObject("shares");
        for (int split = 0; split < SPLITS.size(); split++) {
            String name = SPLITS.get(split);
            shares.get(split)
                    .ifPresent(one -> all.putArray(name)
                            .add(one.first())
                            .add(one.second())
                            .add(one.third()));
        }
        return out.toString();
    }

    private static ObjectNode object() {
        return JsonMapper.shared().createObjectNode();
    }
}
