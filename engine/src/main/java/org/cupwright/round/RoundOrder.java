package org.cupwright.round;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.Loop;
import org.cupwright.course.WholeLoops;
import org.cupwright.policy.Policy;

/**
 * In which order the holes of a day are to be cut, and by when: before the first group that comes to each of them.
 *
 * @param parts the course's parts with their holes in that order; practice greens last
 * @param cutBy for each hole of a round when it is to be ready, by the course's clock; empty where no first group's
 *     time is known
 */
public record RoundOrder(List<Loop> parts, Map<String, LocalTime> cutBy) {
    private static final int NINE = 9;

    /** Longer than eighteen holes no round is: what is left begins a round of its own. */
    private static final int EIGHTEEN = 18;

    private static final int DAY_MINUTES = 24 * 60;

    public RoundOrder {
        parts = List.copyOf(parts);
        cutBy = Map.copyOf(cutBy);
    }

    /** The order on a day that begins so. */
    public static RoundOrder of(Course course, DayStart start, Policy policy) {
        List<Loop> parts = new ArrayList<>();
        Map<String, Integer> minutes = new LinkedHashMap<>();
        int nines = 0;
        for (List<Loop> round : WholeLoops.packed(course.blocks(), EIGHTEEN)) {
            List<List<String>> inOneGo = inOneGo(asPlayed(course, round), start.type());
            Map<String, Integer> first = firstGroups(inOneGo, start, nines, policy.get(RoundPolicy.MINUTES_A_HOLE));
            nines += inOneGo.size();
            minutes.putAll(first);
            parts.addAll(asCut(round, first));
        }
        course.blocks().stream().filter(Loop::practice).forEach(parts::add);
        Map<String, LocalTime> cutBy = new LinkedHashMap<>();
        if (!start.firstGroups().isEmpty()) {
            int ready = policy.get(RoundPolicy.READY_MINUTES);
            minutes.forEach((hole, minute) -> cutBy.put(hole, clock(minute - ready)));
        }
        return new RoundOrder(parts, cutBy);
    }

    public Optional<LocalTime> findCutBy(String hole) {
        return Optional.ofNullable(cutBy.get(hole));
    }

    /**
     * When the first group comes to each tee of a round, in minutes after midnight.
     *
     * @param before how many nines there are before the round
     */
    private static Map<String, Integer> firstGroups(
            List<List<String>> inOneGo, DayStart start, int before, int minutesAHole) {
        Map<String, Integer> minutes = new LinkedHashMap<>();
        for (int nine = 0; nine < inOneGo.size(); nine++) {
            List<String> holes = inOneGo.get(nine);
            for (int i = 0; i < holes.size(); i++) {
                minutes.put(holes.get(i), start.minute(before + nine) + i * minutesAHole);
            }
        }
        return minutes;
    }

    /** Parts that people named stand first on lists; a round goes by the order of the course. */
    private static List<Loop> asPlayed(Course course, List<Loop> round) {
        List<String> all = course.holes().stream().map(Hole::id).toList();
        return round.stream()
                .sorted(Comparator.comparing(loop -> all.indexOf(loop.holes().get(0))))
                .toList();
    }

    /** Holes that one group plays one after another, from a tee from which groups start. */
    private static List<List<String>> inOneGo(List<Loop> round, StartType type) {
        List<String> all = round.stream().flatMap(loop -> loop.holes().stream()).toList();
        return switch (type) {
            case FIRST_TEE -> List.of(all);
            case TWO_TEES -> halves(all);
            case SPLIT_NINES ->
                round.stream()
                        .flatMap(loop -> loop.holes().size() > NINE
                                ? halves(loop.holes()).stream()
                                : List.of(loop.holes()).stream())
                        .toList();
            case SHOTGUN -> all.stream().map(List::of).toList();
        };
    }

    /** Of an odd number of holes the first half has the one more. */
    private static List<List<String>> halves(List<String> holes) {
        int half = (holes.size() + 1) / 2;
        return holes.size() < 2 ? List.of(holes) : List.of(holes.subList(0, half), holes.subList(half, holes.size()));
    }

    /** As the round is played, unless that is not the order in which it is reached: then as one part without a name. */
    private static List<Loop> asCut(List<Loop> round, Map<String, Integer> minutes) {
        List<String> holes = minutes.keySet().stream().toList();
        List<String> ordered =
                holes.stream().sorted(Comparator.comparing(minutes::get)).toList();
        boolean asPlayed =
                IntStream.range(0, holes.size()).allMatch(i -> holes.get(i).equals(ordered.get(i)));
        return asPlayed ? round : List.of(new Loop("", ordered, false));
    }

    private static LocalTime clock(int minute) {
        int ofDay = Math.floorMod(minute, DAY_MINUTES);
        return LocalTime.of(ofDay / 60, ofDay % 60);
    }
}
