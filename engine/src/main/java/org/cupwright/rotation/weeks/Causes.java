package org.cupwright.rotation.weeks;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.weeks.HoleChange.Cause;
import org.cupwright.rotation.weeks.Repair.Cell;

/** Why holes could not stay where they stood: the first thing that is in the way. */
final class Causes {
    private final WeeksModel model;
    private final Choices choices;
    private final List<Cell> moved;
    private final Policy policy;

    /** @param moved the holes that are elsewhere than they stood */
    Causes(WeeksModel model, Choices choices, List<Cell> moved, Policy policy) {
        this.model = model;
        this.choices = choices;
        this.moved = moved;
        this.policy = policy;
    }

    Cause of(Cell cell) {
        int begin = model.table(cell.green()).stays().begin(cell.day());
        boolean follows = begin < cell.day() && moved.contains(new Cell(cell.green(), begin));
        return follows ? new HoleChange.Stays(model.calendar().date(begin)) : ofDay(cell);
    }

    private Cause ofDay(Cell cell) {
        GreenTable table = model.table(cell.green());
        GreenDay day = table.green().days().get(cell.day());
        int stand = model.stay().stand(cell.green(), cell.day());
        if (stand == GreenTable.NONE) {
            return new HoleChange.GreenOpen();
        }
        if (day.wishes().closed()) {
            return new HoleChange.GreenClosed();
        }
        if (day.wishes().locked().isPresent()) {
            return new HoleChange.Fixed();
        }
        return ofGround(day, table.spot(stand)).orElseGet(() -> ofHoles(cell, stand));
    }

    /** What lies there, or what the rules say of it, whatever other holes are planned. */
    private Optional<Cause> ofGround(GreenDay day, Candidate stand) {
        if (day.wishes().forbidden().stream().anyMatch(circle -> circle.holds(stand.at()))) {
            return Optional.of(new HoleChange.RuledOut());
        }
        Candidate there = new OnGround(day.ground(), policy).of(List.of(stand)).get(0);
        Optional<RuleId> broken = there.usable() ? Optional.empty() : broken(there);
        if (broken.isPresent()) {
            return broken.map(HoleChange.RuleBroken::new);
        }
        boolean outside = !day.wishes().areas().isEmpty()
                && day.wishes().areaOf(stand.at()).isEmpty();
        if (outside) {
            return Optional.of(new HoleChange.OutsideArea());
        }
        boolean saved = !day.ground().counting(Kind.SAVED).isEmpty() && there.onSavedGround();
        return saved ? Optional.of(new HoleChange.GroundSaved()) : Optional.empty();
    }

    private static Optional<RuleId> broken(Candidate spot) {
        return spot.judgement().rules().stream()
                .filter(result -> !spot.judgement().setAside().contains(result.rule()))
                .filter(result -> result.outcome() == Outcome.FAIL)
                .map(RuleResult::rule)
                .findFirst();
    }

    private Cause ofHoles(Cell cell, int stand) {
        MapPoint place = model.table(cell.green()).at(stand);
        Nearness near = new Nearness(model, choices);
        Optional<Cell> other = moved.stream()
                .filter(one -> !one.equals(cell)
                        && model.sharing(cell.green()).contains(one.green())
                        && near.tooNear(cell, place, one))
                .findFirst();
        if (other.isPresent()) {
            return new HoleChange.FollowsFrom(
                    model.table(other.get().green()).green().hole(),
                    model.calendar().date(other.get().day()));
        }
        return model.green(cell.green()).onRestingPast(cell.day(), stand) || tooNearToAny(cell, place, near)
                ? new HoleChange.GroundRests()
                : new HoleChange.EvensOut();
    }

    /** Whether it would be to a hole that is where it was: one that somebody fixed, or that is cut already. */
    private boolean tooNearToAny(Cell cell, MapPoint place, Nearness near) {
        return model.sharing(cell.green()).stream()
                .flatMap(green -> IntStream.range(0, model.dayCount()).mapToObj(day -> new Cell(green, day)))
                .filter(other -> !other.equals(cell))
                .filter(other -> model.table(other.green()).stays().begins(other.day()))
                .anyMatch(other -> near.tooNear(cell, place, other));
    }
}
