package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenLattice;
import org.cupwright.holelocation.GreenJudgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.PolygonExtracter;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** A judged green in areas: all ground of which the same is said, in one. */
final class JudgedGround {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private static final Comparator<Said> ORDER = Comparator.comparing(Said::verdict)
            .thenComparing(said -> said.rule().map(RuleId::ordinal).orElse(-1));

    private final GreenJudgement judgement;

    JudgedGround(GreenJudgement judgement) {
        this.judgement = judgement;
    }

    /**
     * What is said of ground.
     *
     * @param verdict the verdict
     * @param rule the rule that decides it; empty where nothing stands against a hole
     */
    record Said(Verdict verdict, Optional<RuleId> rule) {}

    /** The areas, good ground first, then in the order of the rules. */
    Map<Said, Geometry> areas() {
        Map<Said, Geometry> areas = new TreeMap<>(ORDER);
        squares().forEach((said, squares) -> areas.put(said, joined(squares)));
        return areas;
    }

    private Map<Said, List<Polygon>> squares() {
        Map<Said, List<Polygon>> squares = new TreeMap<>(ORDER);
        for (int cell = 0; cell < judgement.lattice().size(); cell++) {
            Optional<Verdict> verdict = judgement.findVerdict(cell);
            if (verdict.isPresent()) {
                Said said = new Said(verdict.get(), judgement.findDeciding(cell));
                squares.computeIfAbsent(said, any -> new ArrayList<>())
                        .add(square(judgement.lattice().spot(cell)));
            }
        }
        return squares;
    }

    private static Polygon square(MapPoint spot) {
        double half = GreenLattice.CELL_METRES / 2;
        return (Polygon) FACTORY.toGeometry(
                new Envelope(spot.east() - half, spot.east() + half, spot.north() - half, spot.north() + half));
    }

    /** The squares as one area, cut at the green's edge; what a cut leaves of lines and points is dropped. */
    private MultiPolygon joined(List<Polygon> squares) {
        Geometry whole = OverlayNGRobust.union(List.copyOf(squares), FACTORY);
        Geometry inside =
                OverlayNGRobust.overlay(whole, judgement.green().hole().green().polygon(), OverlayNG.INTERSECTION);
        List<?> areas = PolygonExtracter.getPolygons(inside);
        return FACTORY.createMultiPolygon(areas.toArray(Polygon[]::new));
    }
}
