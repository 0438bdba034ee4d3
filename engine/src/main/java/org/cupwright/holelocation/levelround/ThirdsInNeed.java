package org.cupwright.holelocation.levelround;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.Third;
import org.cupwright.holelocation.GreenJudge;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;

/**
 * The thirds of a green in which no position is known to be good, with the positions that may be: nothing fails there, and the
 * rules of level ground or even grade cannot tell.
 */
final class ThirdsInNeed {
    private final Map<Third, List<Integer>> candidates = new EnumMap<>(Third.class);
    private final OpenGround ground;
    private final double aboutMetres;

    ThirdsInNeed(OpenGround ground, GreenFrame frame, GreenJudge judge, Policy policy) {
        this.ground = ground;
        this.aboutMetres = policy.get(SlopePolicy.ABOUT_METRES);
        Map<Third, Boolean> served = new EnumMap<>(Third.class);
        for (int number = 0; number < ground.spots().size(); number++) {
            MapPoint at = ground.spot(number).at();
            Judgement judgement = judge.judge(at);
            if (judgement.verdict() == Verdict.PASS || judgement.verdict() == Verdict.CAUTION) {
                Third third = frame.place(at).third();
                if (leans(judgement, RuleId.LEVEL) || leans(judgement, RuleId.EVEN_GRADE)) {
                    candidates.computeIfAbsent(third, none -> new ArrayList<>()).add(number);
                } else if (judgement.rule(RuleId.LEVEL).outcome() == Outcome.PASS) {
                    served.put(third, true);
                }
            }
        }
        candidates.keySet().removeAll(served.keySet());
    }

    private static boolean leans(Judgement judgement, RuleId rule) {
        return judgement.rule(rule).leans().isPresent();
    }

    /** The thirds in need that have a candidate at all. */
    List<Third> thirds() {
        return List.copyOf(candidates.keySet());
    }

    List<Integer> candidates(Third third) {
        return candidates.get(third);
    }

    /** Chance that a position passes, with the ground about it, if the level is laid on it: that of its worst spot. */
    double chance(PossibleReading place, RoundSearch search, Chances chances) {
        double worst = 1;
        for (int spot : ground.within(ground.spot(place.spot).at(), aboutMetres)) {
            worst = Math.min(worst, chances.passes(ground.spot(spot), search.takenWith(place, spot)));
        }
        return worst;
    }
}
