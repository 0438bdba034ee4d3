package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.shortage.Shortage.Easing;
import org.cupwright.rotation.shortage.Shortage.Step;

/**
 * What setting something aside buys one green: its days are planned anew without the other greens, and the holes that
 * are on resting ground all the same are counted. What is said to do was done in a plan that was found.
 */
final class Easings {
    private static final int WEEK = 7;

    /** For each hole of the green: our choice; half of what a plan of the whole course spends on it. */
    private static final long WORK_PER_HOLE = WeeksPlanner.WORK_PER_HOLE / 2;

    private static final Set<Kind> CLOSING = Set.of(Kind.OUT_OF_USE, Kind.SAVED);

    private final WeeksRequest request;
    private final List<GreenWeeks> greens;
    private final Policy policy;

    /** @param greens those played to the green, by number in the request */
    Easings(WeeksRequest request, List<Integer> greens, Policy policy) {
        this.request = request;
        this.greens = greens.stream().map(request.greens()::get).toList();
        this.policy = policy;
    }

    /** Holes on resting ground if the other greens did not matter. */
    int alone() {
        return resting(greens, request.rests());
    }

    /**
     * Shorter rests, a week at a time, until one does; and what was decided beforehand, where anything was.
     *
     * @param rest the longest rest in days
     */
    List<Step> steps(long rest) {
        List<Step> steps = new ArrayList<>();
        if (has(day ->
                CLOSING.stream().anyMatch(kind -> !day.ground().counting(kind).isEmpty())
                        || !day.wishes().forbidden().isEmpty())) {
            steps.add(new Step(Easing.ALL_GROUND, rest, resting(changed(Easings::opened), request.rests())));
        }
        if (has(day -> day.changes() && day.wishes().locked().isPresent())) {
            steps.add(new Step(Easing.NOTHING_FIXED, rest, resting(changed(Easings::unfixed), request.rests())));
        }
        boolean enough = false;
        for (long days = (rest - 1) / WEEK * WEEK; days >= WEEK && !enough; days -= WEEK) {
            int left = resting(greens, atMost(days));
            steps.add(new Step(Easing.REST_DAYS, days, left));
            enough = left == 0;
        }
        return steps;
    }

    private RestDays atMost(long days) {
        return new RestDays(
                left -> {
                    var until = request.rests().restsUntil(left);
                    var soonest = left.plusDays(days - 1);
                    return until.isBefore(soonest) ? until : soonest;
                },
                request.rests().plug());
    }

    private interface OfDay {
        boolean is(GreenDay day);
    }

    private boolean has(OfDay what) {
        return greens.stream().flatMap(green -> green.days().stream()).anyMatch(what::is);
    }

    private List<GreenWeeks> changed(UnaryOperator<GreenDay> change) {
        return greens.stream()
                .map(green -> green.withDays(green.days().stream().map(change).toList()))
                .toList();
    }

    private static GreenDay opened(GreenDay day) {
        GroundOnDay ground = new GroundOnDay(
                day.ground().day(),
                day.ground().items().stream()
                        .filter(item -> !CLOSING.contains(item.kind()))
                        .toList());
        return new GreenDay(ground, day.wishes().withForbidden(List.of()), day.changes());
    }

    private static GreenDay unfixed(GreenDay day) {
        boolean stays = !day.changes() && day.wishes().locked().isPresent();
        return stays ? day : new GreenDay(day.ground(), day.wishes().withLocked(Optional.empty()), day.changes());
    }

    private int resting(List<GreenWeeks> changed, RestDays rests) {
        WeeksRequest alone = new WeeksRequest(
                request.days(),
                changed,
                request.sharedGreens().stream()
                        .filter(pair -> holes().containsAll(List.of(pair.first(), pair.second())))
                        .toList(),
                rests,
                request.busy(),
                request.seed());
        WeeksModel model = new WeeksModel(alone, policy);
        long work = WORK_PER_HOLE * model.dayCount() * model.greenCount();
        Choices found = new WeeksSearch(model, alone.seed(), work, SearchWatch.patient()).find();
        List<Integer> all = IntStream.range(0, model.greenCount()).boxed().toList();
        return new RestingHoles(model).count(found, all);
    }

    private List<String> holes() {
        return greens.stream().map(GreenWeeks::hole).toList();
    }
}
