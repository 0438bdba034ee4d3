package org.cupwright.app.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.formats.items.ReadDrawn;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.rotation.candidate.Area;

/**
 * All ground that people drew on a course's greens. It is kept beside the course and not in it, so that a new map of
 * the greens leaves it where it is.
 *
 * @param all the oldest first, each with an id of its own
 */
public record DrawnOnCourse(List<Kept> all) {
    /**
     * One piece of ground or one spot.
     *
     * @param holes the holes on whose greens it lies; those of a double green share it
     * @param item what and where it is
     */
    public record Kept(List<String> holes, DrawnItem item) {
        public Kept {
            holes = List.copyOf(holes);
        }
    }

    public DrawnOnCourse {
        all = List.copyOf(all);
        if (all.stream().map(kept -> kept.item().id()).distinct().count() < all.size()) {
            throw new IllegalArgumentException("two pieces of drawn ground have one id: " + all);
        }
    }

    public static DrawnOnCourse none() {
        return new DrawnOnCourse(List.of());
    }

    /** What people say of a hole's green. */
    public List<DrawnItem> of(String hole) {
        return on(hole).filter(item -> item.word().kind() != PersonsOpinion.Kind.AREA)
                .toList();
    }

    /** The course's own areas of a hole's green, in the order in which they were drawn. */
    public List<Area> areas(String hole) {
        return on(hole).filter(item -> item.word().kind() == PersonsOpinion.Kind.AREA)
                .map(item -> new Area(item.word().area().orElseThrow(), item.place()))
                .toList();
    }

    private Stream<DrawnItem> on(String hole) {
        return all.stream().filter(kept -> kept.holes().contains(hole)).map(Kept::item);
    }

    public Optional<Kept> find(String id) {
        return all.stream().filter(kept -> kept.item().id().equals(id)).findFirst();
    }

    /**
     * These with one more. One of the same id, or without an id one of the same kind at the same place, is what was
     * said before: the later word takes its place, under its id. What has no id yet gets one: hole, kind and a number,
     * as {@code 7-bad-2}, an area its own.
     */
    public DrawnOnCourse with(ReadDrawn.Item later) {
        Optional<String> id = idOf(later);
        String name = id.orElseGet(() -> freeId(later));
        Kept kept = new Kept(later.holes(), new DrawnItem(name, later.word(), later.place()));
        List<Kept> others = new ArrayList<>(all);
        int at = IntStream.range(0, all.size())
                .filter(i -> all.get(i).item().id().equals(name))
                .findFirst()
                .orElse(all.size());
        if (at < all.size()) {
            others.set(at, kept);
        } else {
            others.add(kept);
        }
        return new DrawnOnCourse(others);
    }

    /** The id under which something is kept, or is to be kept, when it has one. */
    public Optional<String> idOf(ReadDrawn.Item later) {
        return later.id()
                .or(() -> all.stream()
                        .filter(kept -> kept.holes().stream().anyMatch(later.holes()::contains))
                        .map(Kept::item)
                        .filter(item -> item.isAbout(later.word(), later.place()))
                        .map(DrawnItem::id)
                        .findFirst());
    }

    private String freeId(ReadDrawn.Item item) {
        PersonsOpinion.Kind kind = item.word().kind();
        String beginning = item.holes().get(0) + "-" + kind.name().toLowerCase(Locale.ROOT) + "-";
        Optional<String> asNumbered = item.word().area().map(area -> beginning + area);
        if (asNumbered.filter(id -> find(id).isEmpty()).isPresent()) {
            return asNumbered.get();
        }
        return IntStream.iterate(1, number -> number + 1)
                .mapToObj(number -> beginning + number)
                .filter(id -> find(id).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    /** These without one. */
    public DrawnOnCourse without(String id) {
        return new DrawnOnCourse(
                all.stream().filter(kept -> !kept.item().id().equals(id)).toList());
    }
}
