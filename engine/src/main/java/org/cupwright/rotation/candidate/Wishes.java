package org.cupwright.rotation.candidate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;

/**
 * What somebody has decided about one green's day beforehand.
 *
 * @param locked the position the hole is to have, whatever the plan would choose; kept even where it is to be used with
 *     care, and reported where the rules say not to cut there
 * @param forbidden ground on which the hole is not to be that day
 * @param closed whether the green is not in play
 * @param since the day on which the hole was cut that stays at the locked position: nobody cuts there that day; empty
 *     where the hole is changed
 * @param areas the areas in one of which the hole is to be; none where it may be anywhere
 */
public record Wishes(
        Optional<Candidate> locked,
        List<Circle> forbidden,
        boolean closed,
        Optional<LocalDate> since,
        List<Area> areas) {
    /** A hole that is changed. */
    public Wishes(Optional<Candidate> locked, List<Circle> forbidden, boolean closed) {
        this(locked, forbidden, closed, Optional.empty(), List.of());
    }

    public Wishes {
        forbidden = List.copyOf(forbidden);
        areas = List.copyOf(areas);
        if (closed && locked.isPresent()) {
            throw new IllegalArgumentException(
                    "a closed green has no hole to lock at " + locked.get().at() + "; open the green or drop the lock");
        }
        if (since.isPresent() && locked.isEmpty()) {
            throw new IllegalArgumentException("a hole that stays since " + since.get() + " is locked where it is");
        }
    }

    public static Wishes none() {
        return new Wishes(Optional.empty(), List.of(), false);
    }

    public static Wishes greenClosed() {
        return new Wishes(Optional.empty(), List.of(), true);
    }

    /** The hole stays where it was cut. */
    public static Wishes stays(Candidate at, LocalDate since) {
        return new Wishes(Optional.of(at), List.of(), false, Optional.of(since), List.of());
    }

    /** The same with another position, or none, that the hole is to have. */
    public Wishes withLocked(Optional<Candidate> at) {
        return new Wishes(at, forbidden, closed, since, areas);
    }

    /** The same with other ground that is ruled out. */
    public Wishes withForbidden(List<Circle> ground) {
        return new Wishes(locked, ground, closed, since, areas);
    }

    /** The same with areas in one of which the hole is to be. */
    public Wishes in(List<Area> ones) {
        return new Wishes(locked, forbidden, closed, since, ones);
    }

    /** The area that a position lies in, of those it is to lie in. */
    public Optional<Area> areaOf(MapPoint position) {
        return areas.stream().filter(area -> area.holds(position)).findFirst();
    }

    /** Whether the hole is where it was the day before. */
    public boolean stays() {
        return since.isPresent();
    }

    /** The ground about a point, its rim included. */
    public record Circle(MapPoint centre, double radiusMetres) {
        public Circle {
            if (!(radiusMetres >= 0)) {
                throw new IllegalArgumentException("a circle of " + radiusMetres + " m about " + centre);
            }
        }

        public boolean holds(MapPoint point) {
            return point.distanceMetres(centre) <= radiusMetres;
        }
    }
}
