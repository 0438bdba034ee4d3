package org.cupwright.holelocation.levelround;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GreenJudge;

/**
 * The thirds of a green in which hardly any position is known to be good, with the positions that may be: nothing fails
 * there, and the rules of level ground or even grade cannot tell.
 */
final class UndecidedPositions {
    /**
     * So many spots known to be good, half a metre apart, serve a third (our choice: 2 m², so that one lucky spot does
     * not).
     */
    private static final int ENOUGH = 8;

    private final Map<Third, List<Integer>> candidates = new EnumMap<>(Third.class);

    UndecidedPositions(OpenGround ground, GreenFrame frame, GreenJudge judge) {
        Map<Third, Integer> known = new EnumMap<>(Third.class);
        for (int number = 0; number < ground.spots().size(); number++) {
            MapPoint at = ground.spot(number).at();
            Judgement judgement = judge.judge(at);
            if (judgement.verdict() == Verdict.PASS || judgement.verdict() == Verdict.CAUTION) {
                Third third = frame.place(at).third();
                if (leans(judgement, RuleId.LEVEL) || leans(judgement, RuleId.EVEN_GRADE)) {
                    candidates.computeIfAbsent(third, none -> new ArrayList<>()).add(number);
                } else if (judgement.rule(RuleId.LEVEL).outcome() == Outcome.PASS) {
                    known.merge(third, 1, Integer::sum);
                }
            }
        }
        known.forEach(
                (third, count) -> candidates.computeIfPresent(third, (t, spots) -> count < ENOUGH ? spots : null));
    }

    private static boolean leans(Judgement judgement, RuleId rule) {
        return judgement.rule(rule).leans().isPresent();
    }

    /** Numbers of the positions by third; only thirds that have one. */
    Map<Third, List<Integer>> byThird() {
        return candidates;
    }
}
