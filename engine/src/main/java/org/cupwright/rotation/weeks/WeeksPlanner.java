package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.DayRequest;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;
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
        PlannedGround ground = new PlannedGround(model, request.rests(), found);
        List<DayPlan> days = IntStream.range(0, model.dayCount())
                .parallel()
                .mapToObj(day -> explained(request, model, found, ground, day))
                .toList();
        double hardest = IntStream.range(0, model.dayCount())
                .filter(day -> !request.busy().contains(model.calendar().date(day)))
                .mapToDouble(day -> model.day(day).percentOff(found.leaveOff(day)))
                .max()
                .orElse(0);
        List<Shortage> shortages = new WhyShort(request, model, policy, solver).of(found);
        int onRestingGround = shortages.stream().mapToInt(Shortage::atLeast).sum();
        WeeksBounds bounds = new CountedBounds(model).of(onRestingGround);
        return new WeeksPlan(days, found.total() / 1000.0, hardest, bounds, shortages, found.work(), search.stopped());
    }

    private DayPlan explained(WeeksRequest request, WeeksModel model, Choices found, PlannedGround ground, int day) {
        List<GreenCandidates> greens = new ArrayList<>();
        Map<String, MapPoint> chosen = new HashMap<>();
        for (int green = 0; green < model.greenCount(); green++) {
            greens.add(candidates(model, found, ground, green, day));
            int spot = found.chosen(green, day);
            if (spot != GreenTable.NONE) {
                GreenTable table = model.table(green);
                chosen.put(table.green().hole(), table.at(spot));
            }
        }
        boolean busy = request.busy().contains(model.calendar().date(day));
        DayRequest asked =
                new DayRequest(model.calendar().date(day), greens, request.sharedGreens(), busy, request.seed());
        return new DayPlanner(policy).explain(asked, chosen);
    }

    /** What the day finds on a green if the days before it went as planned; the chosen spot is among it. */
    private GreenCandidates candidates(WeeksModel model, Choices found, PlannedGround ground, int green, int day) {
        GreenTable table = model.table(green);
        OnGround today = new OnGround(ground.on(green, day), policy);
        List<Candidate> there = new ArrayList<>(today.of(table.green().candidates()));
        int spot = found.chosen(green, day);
        if (spot != GreenTable.NONE && spot < there.size() && !there.get(spot).usable()) {
            there.set(spot, today.setAside(table.spot(spot)));
            if (!there.get(spot).usable()) {
                there.clear(); // a plug is never cut into, whatever else is conceded
            }
        }
        return new GreenCandidates(
                table.green().hole(),
                there,
                yesterday(model, found, green, day),
                day == 0 ? table.green().yesterdaysThird() : Optional.empty(),
                wishes(table, spot, today, day));
    }

    private static Wishes wishes(GreenTable table, int spot, OnGround today, int day) {
        boolean stays = spot != GreenTable.NONE && !table.cut(day);
        return stays
                ? Wishes.stays(today.setAside(table.spot(spot)), table.stays().cutOn(day))
                        .in(table.green()
                                .days()
                                .get(table.stays().begin(day))
                                .wishes()
                                .areas())
                : today.of(table.green().days().get(day).wishes());
    }

    private static Optional<MapPoint> yesterday(WeeksModel model, Choices found, int green, int day) {
        GreenTable table = model.table(green);
        if (day > 0) {
            int before = found.chosen(green, day - 1);
            return before == GreenTable.NONE ? Optional.empty() : Optional.of(table.at(before));
        }
        return table.green().yesterday();
    }
}
