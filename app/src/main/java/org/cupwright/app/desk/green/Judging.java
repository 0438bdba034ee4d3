package org.cupwright.app.desk.green;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GoodWithin;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.holelocation.judging.GreenJudgement;
import org.cupwright.holelocation.spot.GreenMeasurement;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.EasedCandidates;
import org.cupwright.rotation.candidate.GreenSpots;
import org.cupwright.rotation.candidate.JudgedSpot;

/** One green judged for one day, with places told as seen from the fairway. */
public final class Judging {
    /** Fewer candidates than this are few for weeks: our choice, see docs/decisions/0023. */
    private static final int FEW = 400;

    /** Ground that is seldom wanted is offered in squares so many times as wide: our choice. */
    private static final double EASED_SQUARES = 2;

    private final GreenJudge judge;
    private final Optional<GreenFrame> frame;
    private final DayConditions conditions;
    private final Policy policy;

    private Judging(GreenJudge judge, Optional<GreenFrame> frame, DayConditions conditions, Policy policy) {
        this.judge = judge;
        this.frame = frame;
        this.conditions = conditions;
        this.policy = policy;
    }

    /** Judges the green, as it was measured for the day's speed. */
    static Judging of(GreenMeasurement measured, CourseDay day, GroundOnDay ground) {
        DayConditions conditions = new DayConditions(day.fastest(), day.rain().expected(), false, ground);
        Optional<GreenFrame> frame = frame(measured.green().hole(), day.policy());
        return new Judging(new GreenJudge(measured, conditions, day.policy()), frame, conditions, day.policy());
    }

    /** The same green with something else lying on it: what was measured, and worked out of it, serves both. */
    Judging on(GroundOnDay ground) {
        if (ground.equals(conditions.ground())) {
            return this;
        }
        DayConditions other =
                new DayConditions(conditions.fastest(), conditions.rainExpected(), conditions.event(), ground);
        return new Judging(judge.onDay(other), frame, other, policy);
    }

    static Optional<GreenFrame> frame(Hole hole, Policy policy) {
        return GreenFrame.of(hole, policy.get(PlacePolicy.ON_CONVENTION));
    }

    public GreenJudgement green() {
        return judge.judgeGreen();
    }

    public JudgedPosition at(MapPoint point) {
        return told(judge.judge(point));
    }

    public boolean isOnGreen(MapPoint point) {
        return green().green().hole().green().contains(point);
    }

    List<JudgedPosition> best() {
        return green().best().stream().map(this::told).toList();
    }

    /** A judgement with its place and how far off it is as good. */
    public JudgedPosition told(Judgement judgement) {
        boolean good = judgement.verdict() == Verdict.PASS || judgement.verdict() == Verdict.CAUTION;
        OptionalDouble within =
                good ? OptionalDouble.of(GoodWithin.metres(judgement, green())) : OptionalDouble.empty();
        return new JudgedPosition(judgement, place(judgement.position()), within);
    }

    private Optional<PlaceOnGreen> place(MapPoint point) {
        return frame.filter(known -> isOnGreen(point)).map(known -> known.place(point));
    }

    /** What the plan may choose from. */
    public List<Candidate> candidates() {
        return candidates(policy.get(RotationPolicy.CANDIDATE_SQUARE_METRES));
    }

    /** What a plan of weeks may choose from: on a small green more, so that some fit between ground that rests. */
    public List<Candidate> candidatesForWeeks() {
        double square = policy.get(RotationPolicy.CANDIDATE_SQUARE_METRES);
        List<Candidate> usual = candidates(square);
        return usual.size() >= FEW ? usual : candidates(square / 2);
    }

    /** What a plan of weeks may have besides, on days on which all that is used up: where a rule is set aside. */
    public List<Candidate> easedForWeeks() {
        double square = EASED_SQUARES * policy.get(RotationPolicy.CANDIDATE_SQUARE_METRES);
        return EasedCandidates.of(spots(judge.eased()), conditions.ground(), square);
    }

    private List<JudgedSpot> spots(List<Judgement> judgements) {
        return judgements.stream()
                .map(judgement -> new JudgedSpot(judgement, place(judgement.position())))
                .toList();
    }

    private List<Candidate> candidates(double squareMetres) {
        GreenSpots all = new GreenSpots(spots(green().candidates()), conditions.ground());
        return all.thinned(squareMetres).stream().map(this::withRoom).toList();
    }

    /** Any position of the green as a candidate, whatever the rules say of it. */
    public Candidate candidate(MapPoint point) {
        JudgedPosition position = at(point);
        JudgedSpot spot = new JudgedSpot(position.judgement(), position.place());
        Candidate candidate = new GreenSpots(List.of(spot), conditions.ground()).candidate(spot);
        double room = position.goodWithinMetres().orElse(0);
        return new Candidate(candidate.judgement(), candidate.place(), room, candidate.onSavedGround());
    }

    /** The room about a spot as the judge of the green knows it, which has seen the bad ground too. */
    private Candidate withRoom(Candidate candidate) {
        double metres = GoodWithin.metres(candidate.judgement(), green());
        return new Candidate(candidate.judgement(), candidate.place(), metres, candidate.onSavedGround());
    }
}
