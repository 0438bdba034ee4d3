package org.cupwright.course;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Into which parts a course falls on lists and paper. What the course does not name itself is our choice. */
final class Blocks {
    private static final int NINE = 9;
    private static final int EIGHTEEN = 18;

    private Blocks() {}

    static List<Loop> of(Course course) {
        List<Loop> blocks = new ArrayList<>();
        List<String> rest =
                new ArrayList<>(course.round().stream().map(Hole::id).toList());
        course.loops().stream().filter(loop -> !loop.practice()).forEach(loop -> {
            blocks.add(loop);
            rest.removeAll(loop.holes());
        });
        blocks.addAll(unnamed(rest, course));
        course.loops().stream().filter(Loop::practice).forEach(blocks::add);
        return List.copyOf(blocks);
    }

    private static List<Loop> unnamed(List<String> holes, Course course) {
        Collection<List<String>> lettered = byLetters(holes).values();
        boolean letters = lettered.size() > 1 && lettered.stream().allMatch(part -> part.size() % NINE == 0);
        List<List<String>> parts = letters ? List.copyOf(lettered) : inParts(holes, eachOf(holes, course));
        return parts.stream().map(part -> new Loop("", part, false)).toList();
    }

    /** A1 to A9, B1 to B9. */
    private static Map<String, List<String>> byLetters(List<String> holes) {
        return holes.stream()
                .collect(Collectors.groupingBy(
                        hole -> hole.replaceAll("[0-9].*", ""), LinkedHashMap::new, Collectors.toList()));
    }

    private static List<List<String>> inParts(List<String> holes, int each) {
        List<List<String>> parts = new ArrayList<>();
        for (int from = 0; from < holes.size(); from += each) {
            parts.add(holes.subList(from, from + each));
        }
        return parts;
    }

    /** Eighteen are one round, unless they are nine greens with two holes each; more are eighteens, else nines. */
    private static int eachOf(List<String> holes, Course course) {
        int all = holes.size();
        if (all == EIGHTEEN) {
            return nineGreens(holes, course) ? NINE : EIGHTEEN;
        }
        if (all < EIGHTEEN || all % NINE != 0) {
            return Math.max(1, all);
        }
        return all % EIGHTEEN == 0 ? EIGHTEEN : NINE;
    }

    private static boolean nineGreens(List<String> holes, Course course) {
        for (int i = 0; i < NINE; i++) {
            Hole first = course.find(holes.get(i)).orElseThrow();
            Hole second = course.find(holes.get(i + NINE)).orElseThrow();
            if (!first.green().isSameGreenAs(second.green())) {
                return false;
            }
        }
        return true;
    }
}
