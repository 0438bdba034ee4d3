package org.cupwright.rotation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.candidate.Wishes.Circle;

/**
 * Keeps the holes of double greens apart: as far as the course wants where the green has room for it, and at least as
 * far as it insists on where it has not.
 *
 * <p>Where a plan has two of them too near to each other, the day is planned anew with one of them kept off the ground
 * about the other, and again while they still are; of the two ways round the better counts. Where neither leads to a
 * plan with both holes apart, each keeps to the ground about one of the two spots that lie farthest apart. Only where
 * even those are too near the first plan stands. Holes nearer than wanted are named. Of several double greens each is
 * settled in its turn, so the plan then is a good one, not surely the best there is.
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
        for (SharedGreen pair : request.sharedGreens()) {
            step = settled(step, pair);
        }
        return step.plan().withFindings(near(request, step.plan(), aims));
    }

    /** The pairs of a plan that are nearer to each other than wanted. */
    static List<Message> near(DayRequest request, DayPlan plan, Aims aims) {
        return request.sharedGreens().stream()
                .filter(pair -> pair.metresApart(plan) < aims.wantedOnSharedGreenMetres())
                .map(pair -> nearEachOther(pair, plan, aims))
                .toList();
    }

    private Step settled(Step from, SharedGreen pair) {
        for (double least : List.of(aims.wantedOnSharedGreenMetres(), aims.leastOnSharedGreenMetres())) {
            if (pair.metresApart(from.plan()) >= least) {
                return from;
            }
            Optional<Step> apart = apart(from, pair, least);
            if (apart.isPresent()) {
                return apart.get();
            }
        }
        return from;
    }

    private Optional<Step> apart(Step from, SharedGreen pair, double least) {
        return Stream.of(
                        moved(from, pair, pair.first(), pair.second(), least),
                        moved(from, pair, pair.second(), pair.first(), least))
                .flatMap(Optional::stream)
                .reduce((one, other) -> other.plan().score().isBetter(one.plan().score(), aims::weight) ? other : one)
                .or(() -> atTheEnds(from, pair, least));
    }

    /** One hole kept off the ground about the other, wherever that one goes; empty when it has no ground left. */
    private Optional<Step> moved(Step from, SharedGreen pair, String stays, String moves, double least) {
        Step step = from;
        for (int i = 0; i < TRIES && pair.metresApart(step.plan()) < least; i++) {
            MapPoint at = step.plan().find(stays).orElseThrow().candidate().at();
            step = planned(step.request(), moves, green -> keptOff(green, at, least));
        }
        return Optional.of(step).filter(last -> keeps(last, from, pair, least));
    }

    /** Each hole on the ground about one of the two spots farthest apart; empty when those are too near. */
    private Optional<Step> atTheEnds(Step from, SharedGreen pair, double least) {
        FarthestApart ends = FarthestApart.of(green(from, pair.first()), green(from, pair.second()));
        double radius = (ends.metres() - least) / 2;
        if (radius < 0) {
            return Optional.empty();
        }
        Step first = planned(from.request(), pair.first(), green -> green.keptTo(new Circle(ends.first(), radius)));
        Step both = planned(first.request(), pair.second(), green -> green.keptTo(new Circle(ends.second(), radius)));
        return Optional.of(both).filter(last -> keeps(last, from, pair, least));
    }

    private static GreenCandidates green(Step step, String hole) {
        return step.request().greens().stream()
                .filter(green -> green.hole().equals(hole))
                .findFirst()
                .orElseThrow();
    }

    private Step planned(DayRequest before, String hole, UnaryOperator<GreenCandidates> change) {
        DayRequest request = before.withGreens(before.greens().stream()
                .map(green -> green.hole().equals(hole) ? change.apply(green) : green)
                .toList());
        return new Step(request, planner.apply(request));
    }

    private static boolean keeps(Step last, Step from, SharedGreen pair, double least) {
        boolean complete = last.plan().holes().size() == from.plan().holes().size();
        return complete && pair.metresApart(last.plan()) >= least;
    }

    private static GreenCandidates keptOff(GreenCandidates green, MapPoint at, double least) {
        List<Circle> forbidden = new ArrayList<>(green.wishes().forbidden());
        forbidden.add(new Circle(at, Math.nextDown(least)));
        return green.withWishes(green.wishes().withForbidden(forbidden));
    }

    private static Message nearEachOther(SharedGreen pair, DayPlan plan, Aims aims) {
        double apart = pair.metresApart(plan);
        return Message.of(
                apart < aims.leastOnSharedGreenMetres()
                        ? "rotation.finding.tooNearOnSharedGreen"
                        : "rotation.finding.nearOnSharedGreen",
                new Name(pair.first()),
                new Name(pair.second()),
                new Length(apart),
                new Length(aims.wantedOnSharedGreenMetres()));
    }
}
