package org.cupwright.holelocation.rule;

import java.util.List;
import org.cupwright.green.Green;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.spot.GreenMeasurement;
import org.cupwright.holelocation.spot.PuttingArea;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.policy.Policy;

/** The ten rules as they stand for one green on one day. */
public final class RulesOfDay {
    private final List<Rule> rules;

    public RulesOfDay(GreenMeasurement measured, DayConditions day, Policy policy) {
        Green green = measured.green();
        PuttingArea area = measured.area();
        SpotGrid grid = measured.grid();
        this.rules = List.of(
                new LevelRule(day, policy),
                new EvenGradeRule(policy),
                new HoldableRule(day, policy),
                new EdgeRule(area, policy),
                new HazardRule(green.hole(), area, policy),
                new RidgeRule(grid, green.ground().restsOn(), day, policy),
                new OldHoleRule(day.ground(), policy),
                new PlugRule(day.ground(), policy),
                new ClosedGroundRule(day.ground(), policy),
                new HollowRule(green.ground(), grid, day, policy));
    }

    /** One result of each rule, in the order of {@link org.cupwright.holelocation.RuleId}. */
    public List<RuleResult> judge(Site site) {
        return rules.stream().map(rule -> rule.judge(site)).toList();
    }
}
