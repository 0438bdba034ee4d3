package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes;
import org.cupwright.rotation.candidate.Wishes.Circle;

/**
 * Keeps the holes of double greens apart: where a plan has two of them too near to each other, the day is planned anew
 * with one of them kept off the ground about the other, and again while they still are; of the two ways round the
 * better counts. Where neither leads to a plan with both holes apart, the first plan stands and they are named. Of
 * several double greens each is settled in its turn, so the plan then is a good one, not surely the best there is.
 */
final class KeepApart {
    /** So often is a pair planned anew before it is given up (our choice: each time a piece of one green drops out). */
    private static final int TRIES = 6;

    private final Function<DayRequest, DayPlan> planner;
    private final Aims aims;

    KeepApart(Function<DayRequest, DayPlan> planner, Aims aims) {
        this.planner = planner;
        this.aims = aims;
    }

    /** A plan with the request it answers: what was forbidden on the way stays forbidden for the pairs after. */
    private record Step(DayRequest request, DayPlan plan) {}

    DayPlan plan(DayRequest request) {
        Step step = new Step(request, planner.apply(request));
        List<Message> near = new ArrayList<>();
        for (SharedGreen pair : request.sharedGreens()) {
            if (pair.metresApart(step.plan()) < least()) {
                Optional<Step> better = apart(step, pair);
                if (better.isEmpty()) {
                    near.add(nearEachOther(pair, step.plan()));
                }
                step = better.orElse(step);
            }
        }
        return step.plan().withFindings(near);
    }

    private double least() {
        return aims.leastOnSharedGreenMetres();
    }

    private Optional<Step> apart(Step from, SharedGreen pair) {
        return Stream.of(moved(from, pair, pair.first(), pair.second()), moved(from, pair, pair.second(), pair.first()))
                .flatMap(Optional::stream)
                .reduce((one, other) -> other.plan().score().isBetter(one.plan().score(), aims::weight) ? other : one);
    }

    /** One hole kept off the ground about the other, wherever that one goes; empty when it has no ground left. */
    private Optional<Step> moved(Step from, SharedGreen pair, String stays, String moves) {
        Step step = from;
        for (int i = 0; i < TRIES && pair.metresApart(step.plan()) < least(); i++) {
            MapPoint at = step.plan().find(stays).orElseThrow().candidate().at();
            List<GreenCandidates> greens = step.request().greens().stream()
                    .map(green -> green.hole().equals(moves) ? keptOff(green, at) : green)
                    .toList();
            DayRequest request = step.request().withGreens(greens);
            step = new Step(request, planner.apply(request));
        }
        boolean complete = step.plan().holes().size() == from.plan().holes().size();
        return complete && pair.metresApart(step.plan()) >= least() ? Optional.of(step) : Optional.empty();
    }

    private GreenCandidates keptOff(GreenCandidates green, MapPoint at) {
        List<Circle> forbidden = new ArrayList<>(green.wishes().forbidden());
        forbidden.add(new Circle(at, Math.nextDown(least())));
        return green.withWishes(
                new Wishes(green.wishes().locked(), forbidden, green.wishes().closed()));
    }

    private Message nearEachOther(SharedGreen pair, DayPlan plan) {
        return Message.of(
                "rotation.finding.nearOnSharedGreen",
                new Name(pair.first()),
                new Name(pair.second()),
                new Length(pair.metresApart(plan)),
                new Length(least()));
    }
}
