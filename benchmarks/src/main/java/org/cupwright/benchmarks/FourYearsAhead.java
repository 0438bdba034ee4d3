package org.cupwright.benchmarks;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Fact;
import org.cupwright.democourse.DemoPlans;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.weeks.ChangeRequest;
import org.cupwright.rotation.weeks.ChangedWeeks;
import org.cupwright.rotation.weeks.GreenWeeks;
import org.cupwright.rotation.weeks.SearchWatch;
import org.cupwright.rotation.weeks.Stand;
import org.cupwright.rotation.weeks.WeeksChanger;
import org.cupwright.rotation.weeks.WeeksPlanner;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.rotation.weeks.WeeksWays;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;

/**
 * The four years of {@link FourYears} with four weeks planned together, in three ways: every Monday, and cut unlooked
 * at until the next; every Monday, and changed every morning by what is known then; anew every morning. A day counts as
 * one with something set aside when by what is known on its own morning a hole is cut against a rule. Stops when a day
 * has no full plan.
 *
 * <p>Takes hours. {@code JAVA_TOOL_OPTIONS="-Dcupwright.ways=CHANGED -Dcupwright.from=2013-03-01 -Dcupwright.days=90"}
 * for a sample, {@code -Dcupwright.seasons=true} for the months in which ground is ever scarce, each season by itself;
 * {@code -Dcupwright.each=true} names every hole.
 */
public final class FourYearsAhead {
    private static final int AHEAD_DAYS = 28;
    private static final int EVERY = 2;
    private static final int HOLES = 18;

    /** How plans are kept up. */
    private enum Way {
        UNLOOKED_AT,
        CHANGED,
        ANEW
    }

    private final ClubYears club = new ClubYears();
    private final DemoPlans plans = new DemoPlans(EVERY);
    private final List<LocalDate> all;

    private FourYearsAhead() {
        LocalDate from = LocalDate.parse(System.getProperty("cupwright.from", ClubYears.FIRST.toString()));
        this.all = club.days().stream()
                .filter(day -> !day.isBefore(from))
                .filter(day -> !Boolean.getBoolean("cupwright.seasons") || isScarce(day))
                .toList();
    }

    /**
     * In the months in which ground was ever scarce, and so long before that nothing rests from earlier: from 8 March
     * to 15 May and from 5 September to the end of October.
     */
    private static boolean isScarce(LocalDate day) {
        int date = 100 * day.getMonthValue() + day.getDayOfMonth();
        return date >= 308 && date <= 515 || date >= 905 && date <= 1031;
    }

    public static void main(String[] arguments) {
        FourYearsAhead years = new FourYearsAhead();
        for (String way :
                System.getProperty("cupwright.ways", "UNLOOKED_AT,CHANGED,ANEW").split(",")) {
            years.new Club(Way.valueOf(way)).run();
        }
    }

    /** A club that plans in one way. */
    private final class Club {
        private final Way way;
        private final ConcededHoles holes = new ConcededHoles();

        /** By day, where each hole is planned. */
        private final Map<LocalDate, Map<String, Stand>> planned = new HashMap<>();

        private TurfState state = TurfState.empty(DemoPlans.ZONE);

        Club(Way way) {
            this.way = way;
        }

        void run() {
            int count = Math.min(Integer.getInteger("cupwright.days", all.size()), all.size());
            LocalDate nextMonday = all.get(0);
            LocalDate before = all.get(0);
            for (LocalDate day : all.subList(0, count)) {
                if (day.isAfter(before.plusDays(AHEAD_DAYS))) {
                    state = TurfState.empty(DemoPlans.ZONE); // a season by itself: all has rested since
                    nextMonday = day;
                }
                before = day;
                if (way == Way.ANEW || !day.isBefore(nextMonday)) {
                    planAnew(day);
                    nextMonday = day.plusDays(1);
                    while (nextMonday.getDayOfWeek() != DayOfWeek.MONDAY) {
                        nextMonday = nextMonday.plusDays(1);
                    }
                } else if (way == Way.CHANGED) {
                    change(day);
                }
                cut(day);
            }
            holes.print(way.name());
        }

        private List<LocalDate> ahead(LocalDate first) {
            LocalDate end = first.plusDays(AHEAD_DAYS);
            return all.stream()
                    .filter(day -> !day.isBefore(first) && day.isBefore(end))
                    .toList();
        }

        private void planAnew(LocalDate first) {
            WeeksRequest request = plans.weeks(ahead(first), state, club.known(first), Suite.seed());
            long work = Long.getLong("cupwright.work", WeeksPlanner.WORK_PER_HOLE)
                    * request.days().size()
                    * request.greens().size();
            List<Map<String, Stand>> days = new WeeksWays(request, DemoPlans.POLICY).spots(work, SearchWatch.patient());
            planned.clear();
            for (int day = 0; day < days.size(); day++) {
                keep(request.days().get(day), days.get(day));
            }
        }

        private void change(LocalDate first) {
            List<LocalDate> days =
                    ahead(first).stream().filter(planned::containsKey).toList();
            WeeksRequest weeks = plans.weeks(days, state, club.known(first), Suite.seed());
            Map<String, List<Optional<Stand>>> stands = new HashMap<>();
            for (GreenWeeks green : weeks.greens()) {
                stands.put(green.hole(), new ArrayList<>());
                days.forEach(day -> stands.get(green.hole())
                        .add(Optional.ofNullable(planned.get(day).get(green.hole()))));
            }
            ChangedWeeks changed =
                    new WeeksChanger(DemoPlans.POLICY).change(new ChangeRequest(weeks, stands), SearchWatch.patient());
            changed.days().forEach(day -> keep(day.date(), stands(weeks, day)));
        }

        private void keep(LocalDate day, Map<String, Stand> holes) {
            if (holes.size() != HOLES) {
                throw new IllegalStateException("no full plan on " + day);
            }
            planned.put(day, holes);
        }

        private Map<String, Stand> stands(WeeksRequest request, DayPlan day) {
            Map<String, Stand> stands = new TreeMap<>();
            for (GreenWeeks green : request.greens()) {
                Map<MapPoint, Candidate> clear = Stream.concat(green.candidates().stream(), green.eased().stream())
                        .collect(Collectors.toMap(Candidate::at, Function.identity()));
                day.find(green.hole())
                        .ifPresent(hole -> stands.put(
                                green.hole(),
                                new Stand(
                                        clear.get(hole.candidate().at()),
                                        !hole.setAside().isEmpty())));
            }
            return stands;
        }

        private void cut(LocalDate day) {
            Map<String, Candidate> spots = planned.get(day).entrySet().stream()
                    .collect(Collectors.toMap(
                            Map.Entry::getKey, hole -> hole.getValue().spot()));
            Set<String> known = planned.get(day).entrySet().stream()
                    .filter(hole -> hole.getValue().setAside())
                    .map(Map.Entry::getKey)
                    .collect(Collectors.toSet());
            holes.count(day, plans.onTheMorning(day, spots, state, club.known(day)), known);
            List<Fact> facts = spots.entrySet().stream()
                    .map(hole -> DemoPlans.cut(day, hole.getKey(), hole.getValue()))
                    .sorted(Fact.ORDER)
                    .toList();
            state = TurfFold.fold(state, facts);
        }
    }
}
