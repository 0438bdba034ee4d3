package org.cupwright.app.desk.ground;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.spot.NearestBorder;
import org.cupwright.holelocation.spot.PuttingArea;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.policy.Policy;
import org.cupwright.units.Paces;
import org.locationtech.jts.geom.Geometry;

/** What becomes of the holes of coming days on a green that is drawn otherwise: off it, or too near to its edges. */
record PlannedSpots(Stores stores, CourseDay today) {
    /** As far as plans reach: our choice. */
    private static final int DAYS = 120;

    /** How far a spot is from what it is to keep off, m; below 0: off the green. */
    private record Room(double edge, Optional<Double> hazard) {}

    /** A green as the rules see it. */
    private record Edges(PuttingArea area, Optional<NearestBorder> hazardous) {
        static Edges of(Hole hole, Policy policy) {
            PuttingArea area = new PuttingArea(hole);
            Geometry near = area.edgeNear(hole.hazards(), metres(policy.get(DistancePolicy.HAZARD_REACH_PACES)));
            return new Edges(area, near.isEmpty() ? Optional.empty() : Optional.of(NearestBorder.of(near)));
        }

        Room of(MapPoint spot) {
            return new Room(area.edgeMetres(spot), hazardous.map(border -> border.metresFrom(spot)));
        }
    }

    private static double metres(double paces) {
        return Paces.toMetres(paces, Paces.STANDARD_METRES);
    }

    /** One sentence for each planned hole that the drawing spoils, in the order of days. */
    List<Message> spoiled(Hole was, Hole is) {
        LocalDate from = today.date();
        List<StoredPlan> plans = stores.plans().between(today.course().id(), from, from.plusDays(DAYS)).stream()
                .filter(plan -> plan.state() != State.DONE && plan.find(is.id()).isPresent())
                .toList();
        if (plans.isEmpty()) {
            return List.of();
        }
        Edges before = Edges.of(was, today.policy());
        Edges after = Edges.of(is, today.policy());
        List<Message> spoiled = new ArrayList<>();
        for (StoredPlan plan : plans) {
            MapPoint spot =
                    plan.find(is.id()).orElseThrow().position().judgement().position();
            spoiled(plan.date(), is.id(), before.of(spot), after.of(spot)).ifPresent(spoiled::add);
        }
        return spoiled;
    }

    /** What the drawing makes wrong; what was so before is told where the spot is judged. */
    private Optional<Message> spoiled(LocalDate date, String hole, Room before, Room after) {
        Day day = new Day(date);
        Name name = new Name(hole);
        double edge = metres(today.policy().get(DistancePolicy.EDGE_PACES));
        double hazard = metres(today.policy().get(DistancePolicy.HAZARD_PACES));
        if (after.edge() < 0) {
            return before.edge() < 0 ? Optional.empty() : Optional.of(Message.of("ground.plan.off", day, name));
        }
        if (after.hazard().filter(metres -> metres < hazard).isPresent()
                && before.hazard().filter(metres -> metres < hazard).isEmpty()) {
            Length found = new Length(after.hazard().get());
            return Optional.of(Message.of("ground.plan.hazard", day, name, found, new Length(hazard)));
        }
        return after.edge() < edge && before.edge() >= edge
                ? Optional.of(Message.of("ground.plan.edge", day, name, new Length(after.edge()), new Length(edge)))
                : Optional.empty();
    }
}
