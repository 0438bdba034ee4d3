package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.DayPlan;
import org.cupwright.rotation.DayPlanner;
import org.cupwright.rotation.DayRequest;
import org.cupwright.rotation.PlannedHole;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;

/** The days of a plan with their reasons, each on the ground that the days before it leave. */
final class ExplainedDays {
    private final WeeksRequest request;
    private final WeeksModel model;
    private final Choices found;
    private final Policy policy;
    private final PlannedGround ground;
    private final KeptForLater kept;

    ExplainedDays(WeeksRequest request, WeeksModel model, Choices found, Policy policy) {
        this.request = request;
        this.model = model;
        this.found = found;
        this.policy = policy;
        this.ground = new PlannedGround(model, request.rests(), found);
        this.kept = new KeptForLater(model, found);
    }

    /** A day whose greens could all have been chosen otherwise. */
    DayPlan of(int day) {
        return of(day, green -> true);
    }

    /** @param anew the greens, by number, that could have been chosen otherwise; all others stay as they are */
    DayPlan of(int day, IntPredicate anew) {
        List<GreenCandidates> greens = new ArrayList<>();
        Map<String, MapPoint> chosen = new HashMap<>();
        Map<String, Message> keptFor = new HashMap<>();
        for (int green = 0; green < model.greenCount(); green++) {
            greens.add(candidates(green, day, anew.test(green)));
            int spot = found.chosen(green, day);
            if (spot != GreenTable.NONE) {
                GreenTable table = model.table(green);
                String hole = table.green().hole();
                chosen.put(hole, table.at(spot));
                if (anew.test(green) && table.cut(day)) {
                    kept.reason(green, day).ifPresent(reason -> keptFor.put(hole, reason));
                }
            }
        }
        boolean busy = request.busy().contains(model.calendar().date(day));
        DayRequest asked =
                new DayRequest(model.calendar().date(day), greens, request.sharedGreens(), busy, request.seed());
        DayPlan plan = new DayPlanner(policy).explain(asked, chosen);
        return plan.withHoles(
                plan.holes().stream().map(hole -> with(hole, keptFor)).toList());
    }

    private static PlannedHole with(PlannedHole hole, Map<String, Message> keptFor) {
        return Optional.ofNullable(keptFor.get(hole.hole()))
                .map(hole::withReason)
                .orElse(hole);
    }

    /** What the day finds on a green if the days before it went as planned; the chosen spot is among it. */
    private GreenCandidates candidates(int green, int day, boolean anew) {
        GreenTable table = model.table(green);
        OnGround today = new OnGround(ground.on(green, day), policy);
        int spot = found.chosen(green, day);
        List<Candidate> there = new ArrayList<>();
        if (anew) {
            // What breaks a rule is no alternative to a hole that has to.
            there.addAll(today.of(IntStream.range(0, table.choice().size())
                    .filter(one -> one != spot && !table.eased(one))
                    .mapToObj(table::spot)
                    .toList()));
        }
        if (spot != GreenTable.NONE) {
            Candidate chosen = today.setAside(table.spot(spot));
            if (chosen.usable()) {
                there.add(chosen);
            } else {
                there.clear(); // a plug is never cut into, whatever else is conceded
            }
        }
        return new GreenCandidates(
                table.green().hole(),
                there,
                yesterday(green, day),
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

    private Optional<MapPoint> yesterday(int green, int day) {
        GreenTable table = model.table(green);
        if (day > 0) {
            int before = found.chosen(green, day - 1);
            return before == GreenTable.NONE ? Optional.empty() : Optional.of(table.at(before));
        }
        return table.green().yesterday();
    }
}
