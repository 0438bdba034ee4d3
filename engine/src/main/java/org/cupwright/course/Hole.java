package org.cupwright.course;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * One hole of the course, as far as its green needs to know it.
 *
 * @param id how the course calls it: "7", "B4"
 * @param green the green's outline; two holes that share a double green have equal outlines
 * @param lineOfPlay from tee to green, when known; without it a place on the green has no front, back, left or right
 * @param par par, when known
 * @param measuredMetres the measured length, when known
 * @param hazards bunkers, water and fall-offs near this green
 * @param tees the hole's tees
 * @param marks sprinkler heads and other marks about the green
 * @param walkOffs how players leave the green, as far as somebody has drawn it
 */
public record Hole(
        String id,
        Outline green,
        Optional<LineOfPlay> lineOfPlay,
        OptionalInt par,
        OptionalDouble measuredMetres,
        List<Hazard> hazards,
        List<Tee> tees,
        List<Mark> marks,
        List<WalkOff> walkOffs) {
    /** What a hole's name looks like. */
    public static final String ID_PATTERN = "[A-Za-z0-9]{1,8}";

    public Hole {
        if (!id.matches(ID_PATTERN)) {
            throw new IllegalArgumentException("a hole's name is one to eight letters and digits: " + id);
        }
        hazards = List.copyOf(hazards);
        tees = List.copyOf(tees);
        marks = List.copyOf(marks);
        walkOffs = List.copyOf(walkOffs);
    }

    /** A hole of which nothing is known but its green. */
    public static Hole of(String id, Outline green) {
        return new Hole(
                id,
                green,
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    /** The same under another name. */
    public Hole called(String other) {
        return new Hole(other, green, lineOfPlay, par, measuredMetres, hazards, tees, marks, walkOffs);
    }

    /** The same hole on another outline of its green. */
    public Hole withGreen(Outline other) {
        return new Hole(id, other, lineOfPlay, par, measuredMetres, hazards, tees, marks, walkOffs);
    }

    public Hole withLineOfPlay(LineOfPlay line) {
        return new Hole(id, green, Optional.of(line), par, measuredMetres, hazards, tees, marks, walkOffs);
    }

    /** The same with nothing said of the direction of play. */
    public Hole withoutLineOfPlay() {
        return new Hole(id, green, Optional.empty(), par, measuredMetres, hazards, tees, marks, walkOffs);
    }

    public Hole withHazards(List<Hazard> others) {
        return new Hole(id, green, lineOfPlay, par, measuredMetres, others, tees, marks, walkOffs);
    }
}
