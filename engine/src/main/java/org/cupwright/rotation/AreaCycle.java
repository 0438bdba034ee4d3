package org.cupwright.rotation;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.candidate.Area;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The areas in which the hole of a green is to be on a day: today's of the course's own order, or those it may be in.
 *
 * <p>On the day a cycle begins its first area counts; every change-day of the green after it goes one on, and days
 * without change do not. Before that day it is counted backwards.
 *
 * @param hole the hole's name
 * @param drawn the areas of its green
 */
public record AreaCycle(Policy policy, String hole, List<Area> drawn) {
    private static final Geometry NOWHERE = new GeometryFactory().createPolygon();

    public AreaCycle {
        drawn = List.copyOf(drawn);
    }

    /** The order of areas of a green: its own, or the course's. */
    public static List<String> order(Policy policy, String hole) {
        return policy.get(SchemePolicy.CYCLE_OF_GREENS).getOrDefault(hole, policy.get(SchemePolicy.CYCLE));
    }

    /** The number of a day's area; empty where the course has no order, or does not go by it. */
    public Optional<String> number(LocalDate day) {
        List<String> order = order(policy, hole);
        if (!policy.get(RotationPolicy.SCHEME).goesByAreas() || order.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(order.get(
                (int) Math.floorMod(changes(policy.get(SchemePolicy.CYCLE_FROM), day), order.size())));
    }

    /** How often the hole is changed after one day and until another, less than nothing where that is earlier. */
    private long changes(LocalDate from, LocalDate until) {
        LocalDate first = from.isBefore(until) ? from : until;
        LocalDate last = from.isBefore(until) ? until : from;
        long changes = first.plusDays(1)
                .datesUntil(last.plusDays(1))
                .filter(day -> SchemePolicy.changes(policy, hole, day))
                .count();
        return from.isBefore(until) ? changes : -changes;
    }

    /** The areas in one of which a day's hole is to be; none where it may be anywhere. */
    public List<Area> areas(LocalDate day) {
        List<String> wanted = number(day)
                .map(List::of)
                .orElse(policy.get(SchemePolicy.AREAS_OF_GREENS).getOrDefault(hole, List.of()));
        return wanted.stream().map(this::drawn).toList();
    }

    /** One that is not drawn is nowhere. */
    private Area drawn(String number) {
        return drawn.stream()
                .filter(area -> area.number().equals(number))
                .findFirst()
                .orElseGet(() -> new Area(number, NOWHERE));
    }
}
