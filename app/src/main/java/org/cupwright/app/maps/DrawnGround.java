package org.cupwright.app.maps;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GreenJudgement;

/**
 * Which ground of a green is drawn how; what is none of these is left clear.
 *
 * @param judged whether the ground was judged at all, so that what is left clear is free
 * @param notToCut ground on which no hole may be cut: hatched
 * @param resting ground about old holes that rests: dotted
 * @param notSurveyed a gap in a survey, of which nothing is said: question marks
 * @param marked areas that people closed, save or spare on the day: outlined, with a word each
 */
public record DrawnGround(
        boolean judged,
        Predicate<MapPoint> notToCut,
        Predicate<MapPoint> resting,
        Predicate<MapPoint> notSurveyed,
        List<GroundItem> marked) {
    public DrawnGround {
        marked = List.copyOf(marked);
    }

    /**
     * Ground as it was judged. What only the rest of old holes speaks against is dotted and not hatched as well: it
     * comes back by itself.
     */
    static DrawnGround of(GreenJudgement judgement, GroundOnDay day) {
        return new DrawnGround(
                true,
                at(judgement, cell -> failsForMoreThanRest(judgement, cell)),
                at(judgement, cell -> fails(judgement, cell, RuleId.OLD_HOLE)),
                at(judgement, cell -> is(judgement, cell, Verdict.NOT_SURVEYED)),
                MarkedLayer.on(day));
    }

    /** Ground of which nothing is said. */
    static DrawnGround notJudged() {
        return new DrawnGround(false, at -> false, at -> false, at -> false, List.of());
    }

    /** The same with nothing said but where a survey has a gap. */
    DrawnGround onlyGaps() {
        return new DrawnGround(false, at -> false, at -> false, notSurveyed, List.of());
    }

    private static Predicate<MapPoint> at(GreenJudgement judgement, IntPredicate cells) {
        return point -> {
            int cell = judgement.lattice().nearest(point);
            return cell >= 0 && cells.test(cell);
        };
    }

    private static boolean failsForMoreThanRest(GreenJudgement judgement, int cell) {
        return is(judgement, cell, Verdict.FAIL)
                && Arrays.stream(RuleId.values())
                        .anyMatch(rule -> rule != RuleId.OLD_HOLE && fails(judgement, cell, rule));
    }

    private static boolean fails(GreenJudgement judgement, int cell, RuleId rule) {
        return judgement.findOutcome(cell, rule).filter(Outcome.FAIL::equals).isPresent();
    }

    private static boolean is(GreenJudgement judgement, int cell, Verdict verdict) {
        return judgement.findVerdict(cell).filter(verdict::equals).isPresent();
    }
}
