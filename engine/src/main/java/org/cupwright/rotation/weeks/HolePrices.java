package org.cupwright.rotation.weeks;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cupwright.holelocation.Concession;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.HoleLocationPolicy;
import org.cupwright.holelocation.RuleId;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.Term;
import org.cupwright.rotation.candidate.Candidate;

/**
 * What one hole costs by itself, in thousandths of a point: the terms of {@link Aims} from distances, without a list of
 * holes at hand.
 */
final class HolePrices {
    /**
     * A hole on ground that rests about an old one: dearer than any easing with the little room and the care that it
     * brings, and nearly as dear as moving two holes that stand. Our choice.
     */
    private static final double REST = 1.5;

    /** Above a hole off even thirds and above a move of a hole that stands: our choice. */
    private static final double FIRST_EASING = 0.82;

    /** From one easing to the next, in the course's order: our choice. */
    private static final double NEXT_EASING = 0.02;

    /** For each rule set aside besides the one the course is loathest to set aside: our choice, to tell spots apart. */
    private static final double FURTHER_EASING = 0.005;

    final double restMetres;
    private final double closerMetres;
    private final Map<RuleId, Double> easings;
    private final double closerAndItsRest;
    private final boolean closerBeforeRest;
    final double lastMetres;
    final double plugMetres;
    final double onPlugMetres;
    private final double leastFromYesterday;
    private final double enoughFromYesterday;
    private final double wantedOnShared;
    private final double leastOnShared;
    private final double roomEnough;
    private final double nearYesterday;
    private final double closeToYesterday;
    private final double noRoom;
    private final double littleRoom;
    private final double resting;
    private final double soonAfterRest;
    private final double shared;
    private final double thirds;
    private final double change;
    private final long care;
    private final long doubtful;
    private final long notVouchedFor;
    private final long sameThird;

    HolePrices(Policy policy, Aims aims) {
        this.restMetres = policy.get(DistancePolicy.OLD_HOLE_METRES);
        this.closerMetres = policy.get(DistancePolicy.OLD_HOLE_CLOSER_METRES);
        List<Concession> ranking = policy.get(HoleLocationPolicy.CONCESSIONS);
        this.easings = easings(ranking);
        this.closerAndItsRest = easing(ranking.indexOf(Concession.OLD_HOLE_CLOSER));
        this.closerBeforeRest = isBeforeRest(Concession.OLD_HOLE_CLOSER, ranking);
        this.lastMetres = policy.get(DistancePolicy.LAST_HOLES_METRES);
        this.plugMetres = policy.get(DistancePolicy.PLUG_METRES);
        this.onPlugMetres = policy.get(DistancePolicy.ON_PLUG_METRES);
        this.leastFromYesterday = policy.get(RotationPolicy.YESTERDAY_LEAST_METRES);
        this.enoughFromYesterday = policy.get(RotationPolicy.YESTERDAY_ENOUGH_METRES);
        this.wantedOnShared = policy.get(RotationPolicy.SHARED_GREEN_LEAST_METRES);
        this.leastOnShared = Math.min(wantedOnShared, policy.get(RotationPolicy.SHARED_GREEN_NEVER_NEARER_METRES));
        this.roomEnough = policy.get(RotationPolicy.ROOM_ENOUGH_METRES);
        this.nearYesterday = aims.weight(Term.NEAR_YESTERDAY);
        this.closeToYesterday = aims.weight(Term.CLOSE_TO_YESTERDAY);
        this.noRoom = aims.weight(Term.NO_ROOM);
        this.littleRoom = aims.weight(Term.LITTLE_ROOM);
        this.resting = policy.get(WeeksPolicy.WEIGHT_RESTING);
        this.soonAfterRest = policy.get(WeeksPolicy.WEIGHT_SOON_AFTER_REST);
        this.shared = policy.get(WeeksPolicy.WEIGHT_SHARED_GREEN);
        this.thirds = policy.get(WeeksPolicy.WEIGHT_THIRDS);
        this.change = policy.get(WeeksPolicy.WEIGHT_CHANGE);
        this.care = thousandths(aims.weight(Term.CARE));
        this.doubtful = thousandths(aims.weight(Term.DOUBTFUL));
        this.notVouchedFor = thousandths(aims.weight(Term.NOT_VOUCHED_FOR));
        this.sameThird = thousandths(aims.weight(Term.SAME_THIRD));
    }

    static long thousandths(double points) {
        return Math.round(1000 * points);
    }

    /** What a spot costs wherever the other holes are. */
    long own(Candidate spot) {
        return (spot.doubtful() ? doubtful : 0) + (spot.judgement().vouchedFor() ? 0 : notVouchedFor);
    }

    double leastOnSharedMetres() {
        return leastOnShared;
    }

    long care() {
        return care;
    }

    long sameThird() {
        return sameThird;
    }

    long thirdsOff(int holes) {
        return thousandths(thirds * holes);
    }

    /** A hole of a coming day elsewhere than where it stands. */
    long change() {
        return thousandths(change);
    }

    long fromYesterday(double metres) {
        return thousandths(nearYesterday * Math.max(0, leastFromYesterday - metres)
                + closeToYesterday * Math.max(0, enoughFromYesterday - metres));
    }

    long room(double metres) {
        return thousandths((metres < Aims.ROOM_AT_LEAST_METRES ? noRoom : 0)
                + littleRoom * Math.max(0, roomEnough - Math.max(0, metres)));
    }

    /**
     * A hole on ground that rests about an old one. Where the course lets it be somewhat closer before it gives up the
     * rest of old holes, that has its place among the other easings.
     *
     * @param restLeft what share of its rest it has still before it
     * @param metres between the two
     */
    long resting(double restLeft, double metres) {
        boolean closer = closerBeforeRest && metres >= closerMetres;
        return thousandths(resting * (closer ? closerAndItsRest + NEXT_EASING / 2 * restLeft : REST + restLeft));
    }

    /**
     * A hole on ground that should have rested about an old one by then.
     *
     * @param share how soon after the rest it is, from 1 to 0
     */
    long soonAfterRest(double share) {
        return thousandths(soonAfterRest * share);
    }

    /** Beside a fixed hole, in its way, or on a plug: as dear as on ground with half of its rest before it. */
    long never() {
        return thousandths(resting * 2);
    }

    /** A hole where rules are set aside that go before the rest of old holes: by the one that goes last. */
    long eased(Candidate spot) {
        double dearest = 0;
        int rules = 0;
        for (RuleId rule : spot.judgement().setAside()) {
            dearest = Math.max(dearest, easings.getOrDefault(rule, 1.0));
            rules++;
        }
        return thousandths(resting * (dearest + FURTHER_EASING * Math.max(0, rules - 1)));
    }

    /** Of the easings of one rule the one that goes first. */
    private static Map<RuleId, Double> easings(List<Concession> ranking) {
        Map<RuleId, Double> easings = new EnumMap<>(RuleId.class);
        for (Concession concession : ranking) {
            easings.putIfAbsent(concession.rule(), easing(ranking.indexOf(concession)));
        }
        return easings;
    }

    private static double easing(int rank) {
        return FIRST_EASING + NEXT_EASING * rank;
    }

    private static boolean isBeforeRest(Concession concession, List<Concession> ranking) {
        int rest = ranking.indexOf(Concession.OLD_HOLE);
        return ranking.contains(concession) && (rest < 0 || ranking.indexOf(concession) < rest);
    }

    /** Two holes of one green on the same day. */
    long onSharedGreen(double metres) {
        return thousandths(shared * Math.max(0, wantedOnShared - metres) + (metres < leastOnShared ? resting : 0));
    }
}
