package org.cupwright.holelocation.judging;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.course.MapPoint;
import org.cupwright.green.Coverage;
import org.cupwright.green.Green;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.rule.JudgedPosition;
import org.cupwright.holelocation.rule.RulesOfDay;
import org.cupwright.holelocation.spot.GreenMeasurement;
import org.cupwright.holelocation.spot.SpotGrid;
import org.cupwright.holelocation.spot.SpotGround;
import org.cupwright.policy.Policy;

/**
 * Judges the positions of one green on one day.
 *
 * <p>When made it measures and judges the whole green: what is conceded and how hard a position plays depend on all of
 * it. Single positions are then a matter of milliseconds, and at the lattice's spots they agree with the green's
 * judgement. Immutable, safe for use by several threads.
 */
public final class GreenJudge {
    /** So many cells of the lattice apart, a metre: our choice, as such ground is seldom wanted. */
    private static final int EASED_EVERY = 4;

    private final GreenMeasurement measured;
    private final Policy policy;
    private final JudgedPositions positions;
    private final RulesOfDay rules;
    private final GreenJudgement judgement;
    private final Concessions conceded;
    private final Thirds thirds;

    /** Measures and judges the whole green: about half a second for a large one. */
    public GreenJudge(Green green, DayConditions day, Policy policy) {
        this(GreenMeasurement.measure(green, day.fastest(), policy), day, policy);
    }

    /** Judges a green that was measured for the day's speed. */
    public GreenJudge(GreenMeasurement measured, DayConditions day, Policy policy) {
        this(measured, new RulesOfDay(checked(measured, day), day, policy), policy);
    }

    private GreenJudge(GreenMeasurement measured, RulesOfDay rules, Policy policy) {
        this.measured = measured;
        this.policy = policy;
        Green green = measured.green();
        SpotGrid grid = measured.grid();
        this.positions = new JudgedPositions(green.hole().green(), grid, policy);
        this.rules = rules;
        CellVerdicts cells = CellVerdicts.judge(grid, positions, rules, policy);
        this.conceded = Concessions.of(cells.concessions(), policy);
        this.thirds = new Thirds(cells.meanLeavesOfGoodGround());
        this.judgement = new GreenJudgement(green, grid, cells, this::judge, policy);
    }

    /** The same green on another day; what was measured is kept where the green speed is the same. */
    public GreenJudge onDay(DayConditions other) {
        return other.fastest().equals(measured.speed())
                ? new GreenJudge(measured, rules.onDay(other), policy)
                : new GreenJudge(measured.at(other.fastest(), policy), other, policy);
    }

    private static GreenMeasurement checked(GreenMeasurement measured, DayConditions day) {
        if (!measured.speed().equals(day.fastest())) {
            throw new IllegalArgumentException(
                    "measured for " + measured.speed() + ", the day has " + day.fastest() + ". Measure for the day's.");
        }
        return measured;
    }

    /** All that is found at one position, on the green or off it. */
    public Judgement judge(MapPoint position) {
        return judge(positions.at(position));
    }

    /** The whole green, at every spot of its lattice. */
    public GreenJudgement judgeGreen() {
        return judgement;
    }

    private Judgement judge(JudgedPosition judged) {
        List<RuleResult> results = rules.judge(judged);
        return judgement(judged, results, conceded.setAside(results));
    }

    /**
     * Spots of about every metre that fail, each as it is with what it fails by set aside: as far as the course sets
     * those rules aside before the rest of old holes. None where something was conceded for the whole green already.
     */
    public List<Judgement> eased() {
        if (!judgement.concessions().isEmpty()) {
            return List.of();
        }
        EasedSpots eased = new EasedSpots(policy);
        return judgement
                .failing(EASED_EVERY, eased::mayEase)
                .mapToObj(positions::cell)
                .filter(judged -> !inGap(judged))
                .flatMap(judged -> eased(judged, eased).stream())
                .toList();
    }

    private Optional<Judgement> eased(JudgedPosition judged, EasedSpots eased) {
        List<RuleResult> results = rules.judge(judged);
        return eased.setAside(results).map(setAside -> judgement(judged, results, setAside));
    }

    private Judgement judgement(JudgedPosition judged, List<RuleResult> results, Set<RuleId> setAside) {
        return new Judgement(
                judged.position(),
                Concessions.verdict(results, setAside, inGap(judged)),
                restsOn(judged.own()),
                results,
                setAside,
                difficulty(judged.own(), setAside),
                rules.word(judged.position()));
    }

    /**
     * No class for a spot that a rule of the slope was set aside for, and none is called easier where the slope asks
     * for care.
     */
    private Difficulty difficulty(SpotGround own, Set<RuleId> setAside) {
        Difficulty difficulty = thirds.of(own.leave());
        boolean steep = own.slopePercent() >= policy.get(SlopePolicy.LEVEL_CAUTION_PERCENT);
        boolean easierThanItIs = steep && difficulty.rank().equals(Optional.of(DifficultyClass.EASIER));
        boolean conceded = setAside.contains(RuleId.LEVEL) || setAside.contains(RuleId.HOLDABLE);
        return easierThanItIs || conceded ? difficulty.unranked() : difficulty;
    }

    static boolean inGap(JudgedPosition judged) {
        return judged.own().coverage() == Coverage.NOT_SURVEYED;
    }

    private RestsOn restsOn(SpotGround own) {
        RestsOn whole = measured.green().ground().restsOn();
        return whole == RestsOn.LEVELS && !own.known() ? RestsOn.OUTLINE : whole;
    }
}
