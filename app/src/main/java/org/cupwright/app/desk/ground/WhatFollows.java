package org.cupwright.app.desk.ground;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.drawn.DrawnLeftBehind;
import org.cupwright.app.desk.turf.DayTurf;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.Where;
import org.cupwright.green.findings.GreenSize;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.state.CupInGround;
import org.cupwright.turf.state.HolesOnGreen;
import org.cupwright.turf.state.OldHole;
import org.cupwright.turf.state.TurfState;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Says what follows from a drawing, before it is kept and after. */
record WhatFollows(Stores stores, CourseDay today) {
    /** Less ground than this is told of nowhere, m²: the width of a line. Our choice. */
    private static final double WORTH_TELLING = 1;

    GroundChange of(Drawn drawn) {
        List<String> shared = drawn.after().onGreenOf(drawn.is());
        List<Message> holes = new ArrayList<>();
        List<Message> plans = new ArrayList<>();
        for (Hole hole : drawn.after().holes()) {
            Hole was = drawn.before().find(hole.id()).orElseThrow();
            if (!was.equals(hole)) {
                plans.addAll(new PlannedSpots(stores, today).spoiled(was, hole));
            }
        }
        shared.forEach(hole -> oldHoles(hole, drawn).ifPresent(holes::add));
        List<Message> says = drawn.hazard().isNone() ? edge(drawn, shared) : hazard(drawn);
        return new GroundChange(drawn.was(), drawn.is(), says, doubtful(drawn, shared), holes, plans);
    }

    private static List<Message> edge(Drawn drawn, List<String> shared) {
        Area before = new Area(drawn.was().green().areaSquareMetres());
        Area after = new Area(drawn.is().green().areaSquareMetres());
        List<Message> says = new ArrayList<>();
        says.add(Message.of("ground.edge", new Name(String.join(", ", shared)), before, after));
        long others = drawn.is().hazards().size() - drawn.was().hazards().size();
        if (others > 0) {
            says.add(Message.of("ground.edge.hazards", new Count(others)));
        }
        return says;
    }

    private static List<Message> hazard(Drawn drawn) {
        Optional<Hazard> before = drawn.hazard().before();
        Optional<Hazard> after = drawn.hazard().after();
        Translated kind =
                new Translated("hazard." + EnumNames.lowerCamel(drawn.hazard().kind()));
        if (after.isEmpty()) {
            return List.of(Message.of("ground.hazard.away", kind, area(before.orElseThrow())));
        }
        Length gap = new Length(after.get().area().distance(drawn.is().green().polygon()));
        List<Message> says = new ArrayList<>();
        says.add(before.map(old -> Message.of("ground.hazard.moved", kind, area(old), area(after.get()), gap))
                .orElseGet(() -> Message.of("ground.hazard.another", kind, area(after.get()), gap)));
        List<String> near = drawn.after().holes().stream()
                .filter(hole ->
                        hole.hazards().contains(after.get()) && !hole.id().equals(drawn.hole()))
                .map(Hole::id)
                .toList();
        if (!near.isEmpty()) {
            says.add(Message.of("ground.hazard.near", new Name(String.join(", ", near))));
        }
        return says;
    }

    private static Area area(Hazard hazard) {
        return new Area(hazard.area().getArea());
    }

    /** The holes that were on the green as it was, and are not on the green as it is. */
    private Optional<Message> oldHoles(String hole, Drawn drawn) {
        if (!drawn.hazard().isNone()) {
            return Optional.empty();
        }
        TurfState turf = DayTurf.of(stores, today).state();
        HolesOnGreen holes = turf.green(hole).holes();
        long off = Stream.concat(
                        holes.old().stream().map(OldHole::at),
                        holes.now().stream().map(CupInGround::at))
                .filter(at ->
                        drawn.was().green().contains(at) && !drawn.is().green().contains(at))
                .count();
        return off == 0
                ? Optional.empty()
                : Optional.of(Message.of("ground.holes.off", new Count(off), new Name(hole)));
    }

    private List<Message> doubtful(Drawn drawn, List<String> shared) {
        List<Message> doubtful = new ArrayList<>();
        Hole is = drawn.is();
        if (drawn.hazard().isNone()) {
            GreenSize.check(is.green(), Where.hole(is.id())).map(Finding::says).ifPresent(doubtful::add);
            overlaps(drawn.after(), is, shared, doubtful);
            beyondSurvey(drawn, shared).ifPresent(doubtful::add);
            leftBehind(drawn).forEach(doubtful::add);
            drawn.was().lineOfPlay().ifPresent(line -> {
                MapPoint end = line.points().get(line.points().size() - 1);
                if (drawn.was().green().contains(end) && !is.green().contains(end)) {
                    doubtful.add(Message.of("ground.lineEnds"));
                }
            });
        }
        drawn.hazard().after().map(hazard -> common(hazard.area(), is)).ifPresent(area -> {
            if (area > WORTH_TELLING) {
                doubtful.add(Message.of("ground.hazard.over", new Area(area)));
            }
        });
        return doubtful;
    }

    private static double common(Geometry ground, Hole hole) {
        return OverlayNGRobust.overlay(ground, hole.green().polygon(), OverlayNG.INTERSECTION)
                .getArea();
    }

    private static void overlaps(Course course, Hole is, List<String> shared, List<Message> doubtful) {
        for (Hole other : course.holes()) {
            double area = shared.contains(other.id()) ? 0 : common(other.green().polygon(), is);
            if (area > 0) {
                doubtful.add(Message.of("ground.overlap", new Name(other.id()), new Area(area)));
            }
        }
    }

    /** Ground that was not within the edge when the green was surveyed may have no points. */
    private Optional<Message> beyondSurvey(Drawn drawn, List<String> shared) {
        double fresh = OverlayNGRobust.overlay(
                        drawn.is().green().polygon(), drawn.was().green().polygon(), OverlayNG.DIFFERENCE)
                .getArea();
        boolean surveyed =
                stores.surveys().surveyed(drawn.after().id()).stream().anyMatch(shared::contains);
        return surveyed && fresh > WORTH_TELLING
                ? Optional.of(Message.of("ground.beyondSurvey", new Area(fresh)))
                : Optional.empty();
    }

    private List<Message> leftBehind(Drawn drawn) {
        List<Finding> before = DrawnLeftBehind.of(
                drawn.before(), stores.drawn().of(drawn.before().id()));
        List<Finding> after = DrawnLeftBehind.of(
                drawn.after(), stores.drawn().of(drawn.after().id()));
        return after.stream()
                .filter(finding -> !before.contains(finding))
                .map(Finding::says)
                .toList();
    }
}
