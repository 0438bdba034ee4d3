package org.cupwright.holelocation.levelround;

import java.util.Optional;
import java.util.function.IntConsumer;
import org.cupwright.green.Green;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.surveyed.SurveyedGround;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.rule.LevelLimits;
import org.cupwright.policy.Policy;

/**
 * Which few spots of a surveyed green to read with a level.
 *
 * <p>A spot is undecided when the rule of level ground has no answer there that holds over two standard errors, the
 * spot taken by itself. A round for the open ground takes, one after the other, the readings that are expected to
 * decide most of it. A round for a plan first looks after the thirds with hardly a position that is known to be good:
 * the poorest of them gets the reading that helps it most, until its chance of one is good; what is left of the round
 * goes to the open ground. Without a line of play a green has no thirds, and both rounds are the same.
 */
public final class LevelRounds {
    /** More than a person reads on one green. */
    private static final int MOST_SPOTS = 8;

    private final Green green;
    private final SurveyedGround ground;
    private final DayConditions day;
    private final Policy policy;
    private final Chances chances;
    private final IntConsumer chosen;

    /**
     * @param green the green
     * @param ground its ground
     * @param day the day by whose fastest speed ground is judged
     */
    public LevelRounds(Green green, SurveyedGround ground, DayConditions day, Policy policy) {
        this(green, ground, day, policy, readings -> {});
    }

    /** @param chosen is told how many readings are chosen so far, whenever it is one more */
    public LevelRounds(Green green, SurveyedGround ground, DayConditions day, Policy policy, IntConsumer chosen) {
        this.green = green;
        this.ground = ground;
        this.day = day;
        this.policy = policy;
        this.chances = new Chances(LevelLimits.of(day, policy));
        this.chosen = chosen;
    }

    /**
     * A round for the open ground.
     *
     * @param spots how many readings, 1 to 8; fewer come out where less is undecided
     */
    public LevelRound forOpenGround(int spots) {
        return choose(spots, new OpenGround(green, ground, chances), Optional.empty());
    }

    /** A round for the coming plan, and for the open ground with what is left. Judges the whole green. */
    public LevelRound forPlan(int spots) {
        OpenGround open = new OpenGround(green, ground, chances);
        Optional<PlanReadings> plan = frame().map(known -> {
            GreenJudge judge = new GreenJudge(new Green(green.hole(), ground, green.drawn()), day, policy);
            return new PlanReadings(
                    new UndecidedPositions(open, known, judge).byThird(),
                    open,
                    chances,
                    policy.get(SlopePolicy.ABOUT_METRES));
        });
        return choose(spots, open, plan);
    }

    private Optional<GreenFrame> frame() {
        return GreenFrame.of(green.hole(), policy.get(PlacePolicy.ON_CONVENTION));
    }

    private LevelRound choose(int spots, OpenGround open, Optional<PlanReadings> plan) {
        if (spots < 1 || spots > MOST_SPOTS) {
            throw new IllegalArgumentException(
                    "a round of " + spots + " readings. Maybe take 5 to " + MOST_SPOTS + ".");
        }
        double error = policy.get(GroundPolicy.READING_STANDARD_ERROR_PERCENT) / 100;
        int[] wanted = plan.map(PlanReadings::spots).orElse(new int[0]);
        RoundSearch search = new RoundSearch(open, chances, ground.readingEffects(), error, wanted);
        Choice choice = new Choice(search, frame(), spots, chosen);
        plan.ifPresent(readings -> readings.choose(search, choice));
        Optional<PossibleReading> next = search.findNext(choice.chosen());
        while (next.isPresent() && !choice.isFull()) {
            choice.add(next.get(), Optional.empty());
            next = search.findNext(choice.chosen());
        }
        return choice.round();
    }
}
