package org.cupwright.holelocation.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.Green;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.spot.GreenMeasurement;
import org.cupwright.holelocation.spot.PuttingArea;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.policy.Policy;

/** The eleven rules as they stand for one green on one day. */
public final class RulesOfDay {
    /** Where the rules of the day's ground stand among the others. */
    private static final int FIRST_OF_THE_GROUND = RuleId.OLD_HOLE.ordinal();

    private final GreenMeasurement measured;
    private final DayConditions day;
    private final Policy policy;
    private final DrawnOpinions words;
    private final List<Rule> standing;
    private final List<Rule> rules;

    public RulesOfDay(GreenMeasurement measured, DayConditions day, Policy policy) {
        this(measured, day, policy, new DrawnOpinions(measured.green().drawn(), policy), Optional.empty());
    }

    private RulesOfDay(
            GreenMeasurement measured,
            DayConditions day,
            Policy policy,
            DrawnOpinions words,
            Optional<List<Rule>> standingBefore) {
        this.measured = measured;
        this.day = day;
        this.policy = policy;
        this.words = words;
        this.standing = standingBefore.orElseGet(() -> standing(measured, day, policy, words));
        List<Rule> all = new ArrayList<>(standing);
        all.addAll(FIRST_OF_THE_GROUND, GroundRule.all(day.ground(), policy));
        this.rules = List.copyOf(all);
    }

    /** The rules that do not depend on what lies on the green that day. */
    private static List<Rule> standing(
            GreenMeasurement measured, DayConditions day, Policy policy, DrawnOpinions words) {
        Green green = measured.green();
        PuttingArea area = measured.area();
        SpotGrid grid = measured.grid();
        return List.of(
                new LevelRule(grid, day, policy),
                new EvenGradeRule(grid, policy),
                new HoldableRule(grid, day, policy),
                new EdgeRule(area, policy),
                new HazardRule(green.hole(), area, policy),
                new RidgeRule(grid, green.ground().restsOn(), day, policy),
                new HollowRule(green.ground(), grid, day, policy),
                new DrawnGroundRule(words, policy));
    }

    /**
     * The rules of the same green on another day; where only the ground differs, with the distances already worked
     * out.
     */
    public RulesOfDay onDay(DayConditions other) {
        boolean onlyGround =
                new DayConditions(other.fastest(), other.rainExpected(), other.event(), day.ground()).equals(day);
        return onlyGround
                ? new RulesOfDay(measured, other, policy, words, Optional.of(standing))
                : new RulesOfDay(measured, other, policy);
    }

    /** What people say of a position, if they say anything. */
    public Optional<PersonsOpinion> word(MapPoint position) {
        return words.at(position).map(DrawnItem::word);
    }

    /** One result of each rule, in the order of {@link org.cupwright.holelocation.RuleId}. */
    public List<RuleResult> judge(JudgedPosition judged) {
        RuleResult[] results = new RuleResult[rules.size()];
        for (int i = 0; i < results.length; i++) {
            results[i] = rules.get(i).judge(judged);
        }
        return List.of(results);
    }
}
