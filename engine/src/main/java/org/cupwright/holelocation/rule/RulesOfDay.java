package org.cupwright.holelocation.rule;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.Green;
import org.cupwright.green.PersonsWord;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.spot.GreenMeasurement;
import org.cupwright.holelocation.spot.PuttingArea;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.policy.Policy;

/** The eleven rules as they stand for one green on one day. */
public final class RulesOfDay {
    private final List<Rule> rules;
    private final DrawnWords words;

    public RulesOfDay(GreenMeasurement measured, DayConditions day, Policy policy) {
        Green green = measured.green();
        PuttingArea area = measured.area();
        SpotGrid grid = measured.grid();
        this.words = new DrawnWords(green.drawn(), policy);
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
                new HollowRule(green.ground(), grid, day, policy),
                new DrawnGroundRule(words, policy));
    }

    /** What people say of a position, if they say anything. */
    public Optional<PersonsWord> word(MapPoint position) {
        return words.at(position).map(DrawnItem::word);
    }

    /** One result of each rule, in the order of {@link org.cupwright.holelocation.RuleId}. */
    public List<RuleResult> judge(Site site) {
        return rules.stream().map(rule -> rule.judge(site)).toList();
    }
}
