package org.cupwright.app.field;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.storage.Asked;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.policy.Policy;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A green as the phone looks it up with no connection: what the office says of every spot of the lattice, and what it
 * takes to say where a spot is. The phone judges nothing: {@code ground.js} reads what stands here.
 *
 * <p>All ground of which the same is said is of one kind ({@link SaidOfGround}); {@code cells} has the kinds of the
 * lattice's spots row by row from the south-west, as {@code kind*howMany}, kind 0 being off the green.
 */
record CarriedGround(GreenOnDay green, Optional<Asked> asked, Policy policy) {
    private static final String OFF_THE_GREEN = "";

    ObjectNode document() {
        GreenLattice lattice = green.judgement().lattice();
        ObjectNode out = Json.object();
        out.put("step", GreenLattice.CELL_METRES);
        out.put("west", lattice.westCount());
        out.put("south", lattice.southCount());
        out.put("columns", lattice.columns());
        out.put("rows", lattice.rows());
        List<String> said = said(lattice);
        Map<String, Integer> kinds = kinds(said);
        ArrayNode names = out.putArray("kinds");
        kinds.entrySet().stream().sorted(Map.Entry.comparingByValue()).forEach(kind -> names.add(kind.getKey()));
        out.put("cells", runs(said.stream().mapToInt(kinds::get).toArray()));
        GreenFrame.of(green.hole(), policy.get(PlacePolicy.ON_CONVENTION))
                .ifPresent(frame -> frame(frame, out.putObject("frame")));
        return out;
    }

    private List<String> said(GreenLattice lattice) {
        GreenJudgement judgement = green.judgement();
        OffToday off = OffToday.of(green, asked, policy);
        return IntStream.range(0, lattice.size())
                .parallel()
                .mapToObj(cell -> judgement
                        .findJudgement(cell)
                        .map(judged -> SaidOfGround.of(judged, off.why(judged.position())))
                        .orElse(OFF_THE_GREEN))
                .toList();
    }

    /** Numbered in the order in which they come; what lies off the green first. */
    private static Map<String, Integer> kinds(List<String> said) {
        Map<String, Integer> kinds = new HashMap<>();
        kinds.put(OFF_THE_GREEN, 0);
        said.forEach(one -> kinds.putIfAbsent(one, kinds.size()));
        return kinds;
    }

    private static String runs(int[] kinds) {
        List<String> runs = new ArrayList<>();
        for (int from = 0, to; from < kinds.length; from = to) {
            to = from;
            while (to < kinds.length && kinds[to] == kinds[from]) {
                to++;
            }
            runs.add(to - from == 1 ? Integer.toString(kinds[from]) : kinds[from] + "*" + (to - from));
        }
        return String.join(" ", runs);
    }

    /** As {@link GreenFrame} has it: its axes, the edge, and from where "on" is measured. */
    private void frame(GreenFrame frame, ObjectNode out) {
        Hole hole = green.hole();
        point(hole.green().centroid(), out.putArray("origin"));
        out.putArray("play").add(frame.play().east()).add(frame.play().north());
        out.put("squared", frame.convention() == OnConvention.SQUARED_OFF_FRONT);
        ArrayNode fronts = out.putArray("fronts");
        hole.marks().stream()
                .filter(mark -> mark.kind() == Mark.Kind.FRONT_MARK)
                .forEach(mark -> point(mark.at(), fronts.addArray()));
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

    /** To the last digit: thirds must not change at a rounding. */
    static void point(MapPoint point, ArrayNode out) {
        out.add(point.east()).add(point.north());
    }
}
