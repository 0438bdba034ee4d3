package org.cupwright.course;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A golf course as the people who change its holes need it.
 *
 * @param id short name for commands and files: letters, digits and hyphens
 * @param name the name people use
 * @param frame coordinate frame and time zone
 * @param holes in round order, those of practice greens last
 * @param loops its parts that have names, and its practice greens
 */
public record Course(String id, String name, CourseFrame frame, List<Hole> holes, List<Loop> loops) {
    /** What a course's id looks like. */
    public static final String ID_PATTERN = "[A-Za-z0-9][A-Za-z0-9-]{0,39}";

    public Course {
        if (!id.matches(ID_PATTERN)) {
            throw new IllegalArgumentException("a course's id is letters, digits and hyphens: " + id);
        }
        holes = List.copyOf(holes);
        loops = List.copyOf(loops);
        Set<String> seen = new HashSet<>();
        for (Hole hole : holes) {
            if (!seen.add(hole.id())) {
                throw new IllegalArgumentException("two holes are called " + hole.id());
            }
        }
    }

    /** A course of one round, nothing more said of it. */
    public Course(String id, String name, CourseFrame frame, List<Hole> holes) {
        this(id, name, frame, holes, List.of());
    }

    public Optional<Hole> find(String holeId) {
        return holes.stream().filter(hole -> hole.id().equals(holeId)).findFirst();
    }

    /** Whether a hole is one of a practice green's. */
    public boolean isPractice(String hole) {
        return loops.stream().anyMatch(loop -> loop.practice() && loop.holes().contains(hole));
    }

    /** The holes that are played in rounds. */
    public List<Hole> round() {
        return holes.stream().filter(hole -> !isPractice(hole.id())).toList();
    }

    /**
     * The parts of the course as lists and paper show them, each hole in one: nines or eighteens in round order, then
     * the practice greens. A course of one round that nobody named has one part.
     */
    public List<Loop> blocks() {
        return Blocks.of(this);
    }

    /**
     * The other holes played to the same green (a double green), in round order: what lies on the green lies there for
     * all.
     */
    public List<Hole> sharingGreenWith(Hole hole) {
        return holes.stream()
                .filter(other -> !other.id().equals(hole.id()) && other.green().isSameGreenAs(hole.green()))
                .toList();
    }

    /** The names of a hole and of those that share its green. */
    public List<String> onGreenOf(Hole hole) {
        return Stream.concat(Stream.of(hole), sharingGreenWith(hole).stream())
                .map(Hole::id)
                .toList();
    }

    public Course withHoles(List<Hole> others) {
        return new Course(id, name, frame, others, loops);
    }
}
