package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundOnDay;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.Choosable;
import org.cupwright.rotation.SchemePolicy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;

/** Which of a green's spots every day offers, and which days share one hole. Immutable once made. */
final class OfferedSpots {
    private final GreenWeeks green;
    private final List<Candidate> choice;
    private final PlanCalendar calendar;
    private final Policy policy;
    private final List<Aims> aims;
    private final List<Candidate> spots;
    private final Map<MapPoint, Integer> numbers;
    private final Set<MapPoint> eased;
    private final int[][] offered;
    private final boolean[][] care;
    private final int[] begins;
    private final Stays stays;

    /**
     * @param choice those it may have; days on which somebody fixed its hole apart
     * @param spots all that any day may offer
     * @param numbers their numbers, by place
     */
    OfferedSpots(
            GreenWeeks green,
            List<Candidate> choice,
            PlanCalendar calendar,
            Policy policy,
            List<Aims> aims,
            List<Candidate> spots,
            Map<MapPoint, Integer> numbers) {
        this.green = green;
        this.choice = choice;
        this.calendar = calendar;
        this.policy = policy;
        this.aims = aims;
        this.spots = spots;
        this.numbers = numbers;
        this.eased = green.eased().stream().map(Candidate::at).collect(Collectors.toSet());
        int days = calendar.size();
        this.offered = new int[days][];
        this.care = new boolean[days][];
        this.begins = new int[days];
        for (int day = 0; day < days; day++) {
            offer(day);
        }
        int day = 0;
        while (day < days) {
            day = stay(day);
        }
        this.stays = new Stays(calendar, begins, inUseSince());
    }

    int[][] offered() {
        return offered;
    }

    boolean[][] care() {
        return care;
    }

    Stays stays() {
        return stays;
    }

    private void offer(int day) {
        if (day > 0 && same(green.days().get(day), green.days().get(day - 1), day)) {
            offered[day] = offered[day - 1];
            care[day] = care[day - 1];
            return;
        }
        GreenDay known = green.days().get(day);
        OnGround ground = new OnGround(known.ground(), policy);
        boolean fixed = known.wishes().locked().isPresent();
        List<Candidate> there = fixed ? List.of() : ground.of(choice);
        Wishes wishes = ground.of(known.wishes());
        List<Candidate> choosable = choosable(there, wishes, aims.get(day));
        offered[day] =
                choosable.stream().mapToInt(spot -> numbers.get(spot.at())).toArray();
        care[day] = new boolean[spots.size()];
        for (Candidate spot : choosable) {
            care[day][numbers.get(spot.at())] = spot.verdict() != Verdict.PASS;
        }
    }

    /** What keeps to the rules as if there were nothing else, and with it what is eased and does what is wanted. */
    private List<Candidate> choosable(List<Candidate> there, Wishes wishes, Aims aims) {
        List<Candidate> strict =
                there.stream().filter(spot -> !eased.contains(spot.at())).toList();
        List<Candidate> choosable = new ArrayList<>(choosable(wishes, strict, aims));
        if (strict.size() < there.size()) {
            choosable(wishes, there, aims).stream()
                    .filter(spot -> eased.contains(spot.at()))
                    .forEach(choosable::add);
        }
        return choosable;
    }

    private List<Candidate> choosable(Wishes wishes, List<Candidate> spots, Aims aims) {
        return Choosable.of(new GreenCandidates(green.hole(), spots, Optional.empty(), wishes), aims)
                .candidates();
    }

    private boolean same(GreenDay day, GreenDay before, int number) {
        boolean sameAims = aims.get(number) == aims.get(number - 1);
        return sameAims && day.wishes().equals(before.wishes()) && counting(day).equals(counting(before));
    }

    private static List<?> counting(GreenDay day) {
        GroundOnDay ground = day.ground();
        return ground.items().stream()
                .filter(item -> item.countsOn(ground.day()))
                .toList();
    }

    /**
     * Follows the hole of a day as long as it stays: until a change-day, or where nothing it may have on its first day
     * can be kept, or where it would be older than the course wants. Its days all offer what it may have on all of
     * them.
     *
     * @return the first day after it
     */
    private int stay(int first) {
        begins[first] = first;
        BitSet kept = new BitSet();
        Arrays.stream(offered[first]).forEach(kept::set);
        int next = first + 1;
        while (next < calendar.size() && mayStay(first, next)) {
            BitSet still = still(kept, first, next);
            if (still.isEmpty()) {
                break;
            }
            kept = still;
            begins[next] = first;
            next++;
        }
        if (kept.cardinality() < offered[first].length) {
            offered[first] = Arrays.stream(offered[first]).filter(kept::get).toArray();
        }
        for (int day = first + 1; day < next; day++) {
            offered[day] = offered[first];
            care[day] = care[first];
        }
        return next;
    }

    private boolean mayStay(int first, int day) {
        GreenDay known = green.days().get(day);
        Wishes before = green.days().get(first).wishes();
        boolean elsewhere = known.wishes().locked().isPresent()
                && !known.wishes()
                        .locked()
                        .map(Candidate::at)
                        .equals(before.locked().map(Candidate::at));
        LocalDate cut = first == 0 ? inUseSince().orElse(calendar.date(0)) : calendar.date(first);
        LocalDate tooOld = cut.plusDays(policy.get(SchemePolicy.HOLE_MOST_DAYS));
        return !known.changes()
                && !known.wishes().closed()
                && !elsewhere
                && calendar.date(day).isBefore(tooOld);
    }

    private BitSet still(BitSet kept, int first, int day) {
        GreenDay known = green.days().get(day);
        if (counting(known).isEmpty() && known.wishes().forbidden().isEmpty()) {
            return kept;
        }
        OnGround before = new OnGround(green.days().get(first).ground(), policy);
        return Keeping.still(kept, spots, before, new OnGround(known.ground(), policy), known.wishes());
    }

    /** When the hole was cut that stays on the first day, where one does. */
    private Optional<LocalDate> inUseSince() {
        GreenDay today = green.days().get(0);
        return today.changes()
                ? Optional.empty()
                : green.inUse()
                        .filter(hole ->
                                today.wishes().locked().map(Candidate::at).equals(Optional.of(hole.at())))
                        .map(PastHole::cutOn);
    }
}
