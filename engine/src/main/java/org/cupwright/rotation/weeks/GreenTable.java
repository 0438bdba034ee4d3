package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.Appraised;
import org.cupwright.rotation.candidate.Candidate;

/** The spots of one green by number, what each is, and which of them every day offers. Immutable once made. */
final class GreenTable {
    /** Not in play that day, or nothing to choose from. */
    static final int NONE = -1;

    private final GreenWeeks green;
    private final List<Candidate> choice;
    private final List<Candidate> spots = new ArrayList<>();
    private final Map<MapPoint, Integer> numbers = new HashMap<>();
    private final int[][] offered;
    private final boolean[][] care;
    private final Stays stays;
    private final boolean[] eased;
    private final long[] own;
    private final long[] tally;
    private final double[] east;
    private final double[] north;
    private final double[] room;
    private final double[] leaveOff;
    private final double usualLeave;

    /** @param choice the spots it may have; days on which somebody fixed its hole apart */
    GreenTable(
            GreenWeeks green,
            List<Candidate> choice,
            PlanCalendar calendar,
            Policy policy,
            List<Aims> aims,
            HolePrices prices) {
        this.green = green;
        this.choice = choice;
        choice.forEach(this::number);
        green.days().forEach(day -> day.wishes().locked().ifPresent(this::number));
        OfferedSpots all = new OfferedSpots(green, choice, calendar, policy, aims, spots, numbers);
        this.offered = all.offered();
        this.care = all.care();
        this.stays = all.stays();
        Set<MapPoint> easedAt = green.eased().stream().map(Candidate::at).collect(Collectors.toSet());
        this.eased = new boolean[spots.size()];
        this.own = new long[spots.size()];
        for (int spot = 0; spot < own.length; spot++) {
            eased[spot] = easedAt.contains(at(spot));
            own[spot] = prices.own(spots.get(spot)) + (eased[spot] ? prices.eased(spots.get(spot)) : 0);
        }
        this.east = spots.stream().mapToDouble(spot -> spot.at().east()).toArray();
        this.north = spots.stream().mapToDouble(spot -> spot.at().north()).toArray();
        this.tally = spots.stream().mapToLong(Appraised::tally).toArray();
        this.room = spots.stream().mapToDouble(Candidate::goodWithinMetres).toArray();
        this.usualLeave = green.candidates().stream()
                .flatMapToDouble(spot -> spot.judgement().difficulty().meanLeaveMetres().stream())
                .average()
                .orElse(0);
        this.leaveOff = spots.stream()
                .mapToDouble(
                        spot -> spot.judgement().difficulty().meanLeaveMetres().orElse(usualLeave) - usualLeave)
                .toArray();
    }

    private int number(Candidate spot) {
        return numbers.computeIfAbsent(spot.at(), at -> {
            spots.add(spot);
            return spots.size() - 1;
        });
    }

    GreenWeeks green() {
        return green;
    }

    /** The spots it may have, numbered from 0 in their order. */
    List<Candidate> choice() {
        return choice;
    }

    /** The number of a spot; {@link #NONE} where it is none of them. */
    int numberOf(MapPoint at) {
        return numbers.getOrDefault(at, NONE);
    }

    int size() {
        return spots.size();
    }

    Candidate spot(int number) {
        return spots.get(number);
    }

    /** The same; empty for no hole. */
    Optional<Candidate> find(int number) {
        return number == NONE ? Optional.empty() : Optional.of(spots.get(number));
    }

    MapPoint at(int number) {
        return spots.get(number).at();
    }

    /** The numbers of the spots that a day offers, whatever was cut before; empty where the green is left out. */
    int[] offered(int day) {
        return offered[day];
    }

    boolean offers(int day, int spot) {
        return IntStream.of(offered[day]).anyMatch(one -> one == spot);
    }

    boolean open(int day) {
        return offered[day].length > 0;
    }

    /** Which days share one hole. */
    Stays stays() {
        return stays;
    }

    /** Whether a hole is cut on a day: not where it stays, and not where there is none. */
    boolean cut(int day) {
        return open(day) && stays.cut(day);
    }

    /** The holes before the plan that are left by its first day: all but the one that stays. */
    List<PastHole> past() {
        List<PastHole> past = green.past();
        return stays.inherited() ? past.subList(0, past.size() - 1) : past;
    }

    /** Whether a spot is to be used with care for what it is or what lies there, old holes apart. */
    boolean care(int day, int spot) {
        return care[day][spot];
    }

    boolean[] care(int day) {
        return care[day];
    }

    /** Whether somebody fixed its hole for a day. */
    boolean fixed(int day) {
        return open(day) && green.days().get(day).wishes().locked().isPresent();
    }

    /** Whether a rule other than that about old holes is set aside for a hole there. */
    boolean eased(int spot) {
        return eased[spot];
    }

    /** What a spot costs wherever the other holes are, in thousandths of a point. */
    long own(int spot) {
        return own[spot];
    }

    /** What it adds to a day's counts. */
    long tally(int spot) {
        return tally[spot];
    }

    double room(int spot) {
        return room[spot];
    }

    /** By how much its leave is more than the green's usual, m; 0 where it is unknown. */
    double leaveOff(int spot) {
        return leaveOff[spot];
    }

    /** The mean leave of the green's spots, m; 0 where none is known. */
    double usualLeave() {
        return usualLeave;
    }

    /** From one of its spots to one of another's, m. Not kept: all pairs take more room than all else. */
    double metres(int spot, GreenTable other, int others) {
        double byEast = east[spot] - other.east[others];
        double byNorth = north[spot] - other.north[others];
        return Math.sqrt(byEast * byEast + byNorth * byNorth);
    }
}
