package org.cupwright.benchmarks;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.cupwright.democourse.DemoPlans;
import org.cupwright.rotation.shortage.Shortage;
import org.cupwright.rotation.shortage.Shortage.Cause;
import org.cupwright.rotation.solver.CpSat;
import org.cupwright.rotation.weeks.GreenWeeks;
import org.cupwright.rotation.weeks.RestDays;
import org.cupwright.rotation.weeks.SearchWatch;
import org.cupwright.rotation.weeks.WeeksPlan;
import org.cupwright.rotation.weeks.WeeksPlanner;
import org.cupwright.rotation.weeks.WeeksRequest;
import org.cupwright.testing.Suite;
import org.cupwright.turf.state.TurfState;

/**
 * How long it takes until a plan of weeks that cannot keep to all rules says why: a green of the invented course by
 * itself, and all eighteen, over four weeks in which the ground about every hole rests for so long that no green has
 * room for all. Five seconds are wanted, the search for the best plan apart, which is stopped at once here. Stops when
 * a green is not named, or called open though it is plainly too small.
 */
public final class CauseNamed {
    private static final LocalDate FIRST = LocalDate.of(2013, 4, 1);
    private static final int DAYS = 28;
    private static final int TIMES = 3;

    /** A green with more spots than this fit 28 holes here; it need not be named. */
    private static final int LARGE = 700;

    private CauseNamed() {}

    public static void main(String[] arguments) {
        WeeksRequest spring = spring(DAYS);
        System.out.println("| green | greens | longest of " + TIMES + ", ms | causes |");
        System.out.println("|---|---|---|---|");
        for (GreenWeeks green : spring.greens()) {
            if (green.candidates().size() < LARGE) {
                timed("hole " + green.hole(), restingLong(spring, List.of(green)));
            }
        }
        timed("all", restingLong(spring, spring.greens()));
        WeeksRequest longer = spring(2 * DAYS);
        timed("all, 8 weeks", restingLong(longer, longer.greens()));
    }

    private static WeeksRequest spring(int days) {
        return new DemoPlans(2)
                .weeks(
                        FIRST.datesUntil(FIRST.plusDays(days)).toList(),
                        TurfState.empty(DemoPlans.ZONE),
                        new ClubYears().known(FIRST),
                        Suite.seed());
    }

    /** No ground comes back within the weeks: every green has to have room for a hole of each day. */
    private static WeeksRequest restingLong(WeeksRequest of, List<GreenWeeks> greens) {
        RestDays rests = new RestDays(left -> left.plusDays(3 * DAYS), left -> left);
        return new WeeksRequest(of.days(), greens, List.of(), rests, Set.of(), of.seed());
    }

    private static void timed(String name, WeeksRequest request) {
        WeeksPlanner planner = new WeeksPlanner(DemoPlans.POLICY, Optional.of(new CpSat()));
        double longest = 0;
        List<Shortage> shortages = List.of();
        for (int time = 0; time < TIMES; time++) {
            long began = System.nanoTime();
            WeeksPlan plan = planner.plan(request, 0, SearchWatch.patient());
            longest = Math.max(longest, (System.nanoTime() - began) / 1e6);
            shortages = plan.shortages();
            if (plan.holesSetAside() > 0 == shortages.isEmpty()) {
                throw new IllegalStateException(name + ": " + plan.holesSetAside() + " set aside, " + shortages);
            }
        }
        System.out.printf(
                Locale.ROOT,
                "| %s | %d | %.0f | %s |%n",
                name,
                request.greens().size(),
                longest,
                shortages.stream()
                        .map(one -> one.holes() + " " + one.cause() + " " + one.proof() + ", at least " + one.atLeast())
                        .toList());
        boolean unnamed = shortages.stream().anyMatch(one -> one.cause() == Cause.GROUND && one.atLeast() == 0);
        if (unnamed) {
            throw new IllegalStateException(name + ": ground is said to be short, and nothing is proved");
        }
    }
}
