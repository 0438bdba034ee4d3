package org.cupwright.holelocation.rule;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.Policy;

/** A rule of what lies on the green that day: it looks at where a position is, and at nothing else of it. */
public interface GroundRule extends Rule {
    RuleResult at(MapPoint position);

    @Override
    default RuleResult judge(JudgedPosition judged) {
        return at(judged.position());
    }

    /** All of them, in the order of {@link org.cupwright.holelocation.RuleId}. */
    static List<GroundRule> all(GroundOnDay ground, Policy policy) {
        return List.of(
                new OldHoleRule(ground, policy), new PlugRule(ground, policy), new ClosedGroundRule(ground, policy));
    }
}
