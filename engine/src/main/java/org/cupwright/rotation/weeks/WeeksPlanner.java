package org.cupwright.rotation.weeks;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.exact.ZeroOneSolver;
import org.cupwright.rotation.shortage.Shortage;

/**
 * Decides the hole locations of many days together, so that no day takes what a later one needs.
 *
 * <p>A plan always comes out. Where a green has no rested ground left on a day, its hole goes where the old hole was
 * left longest ago, as far as the other days allow, and the rule about old holes is set aside for it. Beyond the wishes
 * of single days ({@link DayPlanner}) a plan wants its days to play equally hard. It is a good plan, not surely the
 * best there is; each day's bounds say how good it could be for that day alone.
 *
 * <p>The search counts its work in holes priced, not in seconds: equal requests have equal plans on every machine,
 * unless somebody stops it. Stateless; safe for use by several threads.
 */
public final class WeeksPlanner {
    /** Our choice, by the table of docs/decisions/0023: more work gains little. */
    public static final long WORK_PER_HOLE = 40_000;

    private final Policy policy;
    private final Optional<ZeroOneSolver> solver;

    /** Without a solver: what cannot be had is proved by counting alone. */
    public WeeksPlanner(Policy policy) {
        this(policy, Optional.empty());
    }

    /** @param solver proves what counting does not; asked only where rules could not be kept to */
    public WeeksPlanner(Policy policy, Optional<ZeroOneSolver> solver) {
        this.policy = policy;
        this.solver = solver;
    }

    /** A plan by as much work as pays. */
    public WeeksPlan plan(WeeksRequest request, SearchWatch watch) {
        return plan(
                request,
                WORK_PER_HOLE * request.days().size() * request.greens().size(),
                watch);
    }

    /** @param mostWork how many holes are priced at most, the first plan apart */
    public WeeksPlan plan(WeeksRequest request, long mostWork, SearchWatch watch) {
        WeeksModel model = new WeeksModel(request, policy);
        WeeksSearch search = new WeeksSearch(model, request.seed(), mostWork, watch);
        Choices found = search.find();
        ExplainedDays explained = new ExplainedDays(request, model, found, policy);
        List<DayPlan> days = IntStream.range(0, model.dayCount())
                .parallel()
                .mapToObj(explained::of)
                .toList();
        double hardest = IntStream.range(0, model.dayCount())
                .filter(day -> !request.busy().contains(model.calendar().date(day)))
                .mapToDouble(day -> model.day(day).percentOff(found.leaveOff(day)))
                .max()
                .orElse(0);
        List<Shortage> shortages = new WhyShort(request, model, policy, solver).of(found);
        int holesSetAside = shortages.stream().mapToInt(Shortage::atLeast).sum();
        WeeksBounds bounds = new CountedBounds(model).of(holesSetAside);
        return new WeeksPlan(days, found.total() / 1000.0, hardest, bounds, shortages, found.work(), search.stopped());
    }
}
