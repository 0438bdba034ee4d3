package org.cupwright.rotation;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cupwright.green.Third;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.counting.Parts;
import org.cupwright.rotation.counting.Shares;
import org.cupwright.rotation.counting.Split;
import org.cupwright.units.Paces;

/** What the course wants of one day, read from its policy, and how far a position or a day falls short of it. */
public final class Aims {
    /** Half easier, a third medium, a sixth harder on a busy day: see {@link DayRequest#busy()}. */
    private static final Shares BUSY_DAY = new Shares(3, 2, 1);

    /** Half a pace: our choice, as finer than that nobody paces. */
    public static final double ROOM_AT_LEAST_METRES = Paces.STANDARD_METRES / 2;

    private final Policy policy;
    private final Set<Third> allowed;
    private final Map<String, List<Third>> allowedOfGreens;
    private final Shares thirds;
    private final Shares difficulties;
    private final Map<Term, Double> weights = new EnumMap<>(Term.class);

    public Aims(Policy policy, boolean busy) {
        this.policy = policy;
        List<Third> named = policy.get(RotationPolicy.THIRDS_ALLOWED);
        this.allowed = named.isEmpty() ? EnumSet.allOf(Third.class) : EnumSet.copyOf(named);
        this.allowedOfGreens = policy.get(SchemePolicy.THIRDS_OF_GREENS);
        this.thirds = new Shares(share(Third.FRONT), share(Third.MIDDLE), share(Third.BACK));
        this.difficulties = busy ? BUSY_DAY : Shares.THIRDS;
        for (Term term : Term.values()) {
            weights.put(term, policy.get(term.weight()));
        }
    }

    private int share(Third third) {
        return allowed.contains(third) ? 1 : 0;
    }

    /** Whether a hole may be in the third of a candidate. */
    boolean allows(String hole, Candidate candidate) {
        return candidate.third().map(allowed(hole)::contains).orElse(true);
    }

    /** The thirds a hole may be in: what is said of its green goes before the course's. */
    public Set<Third> allowed(String hole) {
        List<Third> own = allowedOfGreens.getOrDefault(hole, List.of());
        return Collections.unmodifiableSet(own.isEmpty() ? allowed : EnumSet.copyOf(own));
    }

    /** Whether the scheme wants front, middle and back in shares. */
    public boolean balancesThirds() {
        return policy.get(RotationPolicy.SCHEME) == Scheme.SIX_SIX_SIX;
    }

    /** The shares easier, medium and harder should have. */
    public Shares difficulties() {
        return difficulties;
    }

    /** Whether the plan names the area, and the spot in it is whoever's who changes the hole. */
    boolean leavesTheSpot() {
        return policy.get(RotationPolicy.SCHEME) == Scheme.AREA_ONLY;
    }

    /** The shares front, middle and back should have. */
    public Shares thirds() {
        return thirds;
    }

    /** How many holes of a tally would have to be in another third; 0 under a scheme that does not ask. */
    public int thirdsOff(long tally) {
        return balancesThirds() ? thirds.holesOff(Split.THIRD.parts(tally)) : 0;
    }

    double leastFromYesterdayMetres() {
        return policy.get(RotationPolicy.YESTERDAY_LEAST_METRES);
    }

    double wantedOnSharedGreenMetres() {
        return policy.get(RotationPolicy.SHARED_GREEN_LEAST_METRES);
    }

    /** Never more than is wanted. */
    double leastOnSharedGreenMetres() {
        return Math.min(wantedOnSharedGreenMetres(), policy.get(RotationPolicy.SHARED_GREEN_NEVER_NEARER_METRES));
    }

    int leftRightApart() {
        return policy.get(RotationPolicy.LEFT_RIGHT_APART);
    }

    /**
     * A term of one position, in its own unit; 0 for the terms of the whole day, and for a hole that stays: what it
     * cost was paid on the day it was cut.
     */
    public double ofPosition(Term term, Candidate candidate, GreenCandidates green) {
        if (green.wishes().stays()) {
            return 0;
        }
        double away = green.yesterday().map(candidate.at()::distanceMetres).orElse(Double.POSITIVE_INFINITY);
        return switch (term) {
            case NEAR_YESTERDAY -> Math.max(0, leastFromYesterdayMetres() - away);
            case CLOSE_TO_YESTERDAY -> Math.max(0, policy.get(RotationPolicy.YESTERDAY_ENOUGH_METRES) - away);
            case SAME_THIRD ->
                green.yesterdaysThird().isPresent() && candidate.third().equals(green.yesterdaysThird()) ? 1 : 0;
            case CARE ->
                switch (candidate.verdict()) {
                    case PASS -> 0;
                    case CAUTION, FAIL, NOT_SURVEYED -> 1;
                };
            case DOUBTFUL -> candidate.doubtful() ? 1 : 0;
            case NOT_VOUCHED_FOR -> candidate.judgement().vouchedFor() ? 0 : 1;
            case NO_ROOM -> candidate.goodWithinMetres() < ROOM_AT_LEAST_METRES ? 1 : 0;
            case LITTLE_ROOM ->
                Math.max(0, policy.get(RotationPolicy.ROOM_ENOUGH_METRES) - candidate.goodWithinMetres());
            case LEFT_RIGHT, LATERAL, DIFFICULTY -> 0;
        };
    }

    /** A term of the whole day by its tally, in its own unit; 0 for the terms that are sums over positions. */
    public double ofDay(Term term, long tally) {
        Parts laterals = Split.LATERAL.parts(tally);
        return switch (term) {
            case LEFT_RIGHT -> Math.max(0, Math.abs(laterals.first() - laterals.third()) - leftRightApart());
            case LATERAL -> Shares.THIRDS.holesOff(laterals);
            case DIFFICULTY -> difficulties.holesOff(Split.DIFFICULTY.parts(tally));
            case NEAR_YESTERDAY,
                    CLOSE_TO_YESTERDAY,
                    SAME_THIRD,
                    CARE,
                    DOUBTFUL,
                    NOT_VOUCHED_FOR,
                    NO_ROOM,
                    LITTLE_ROOM -> 0;
        };
    }

    /** Points for each unit of a term. */
    public double weight(Term term) {
        return weights.get(term);
    }
}
