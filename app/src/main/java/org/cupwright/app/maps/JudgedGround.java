package org.cupwright.app.maps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.green.GreenLattice;
import org.cupwright.green.field.LatticeSquares;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.locationtech.jts.geom.Geometry;

/** A judged green in areas: all ground of which the same is said, in one. */
record JudgedGround(GreenJudgement judgement) {
    private static final Comparator<Said> ORDER = Comparator.comparing(Said::verdict)
            .thenComparing(said -> said.rule().map(RuleId::ordinal).orElse(-1));

    /**
     * What is said of ground.
     *
     * @param verdict the verdict
     * @param rule the rule that decides it; empty where nothing stands against a hole
     */
    record Said(Verdict verdict, Optional<RuleId> rule) {}

    /** The areas, good ground first, then in the order of the rules. */
    Map<Said, Geometry> areas() {
        Map<Said, List<MapPoint>> spots = new TreeMap<>(ORDER);
        for (int cell = 0; cell < judgement.lattice().size(); cell++) {
            Optional<Verdict> verdict = judgement.findVerdict(cell);
            if (verdict.isPresent()) {
                Said said = new Said(verdict.get(), judgement.findDeciding(cell));
                spots.computeIfAbsent(said, any -> new ArrayList<>())
                        .add(judgement.lattice().spot(cell));
            }
        }
        Map<Said, Geometry> areas = new TreeMap<>(ORDER);
        Outline green = judgement.green().hole().green();
        spots.forEach((said, at) -> areas.put(said, LatticeSquares.joined(at, GreenLattice.CELL_METRES, green)));
        return areas;
    }
}
