package org.cupwright.app.desk.round;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;

/** Some holes of a course as people type them, and as they are told: {@code 1-9, 14}. */
final class TypedHoles {
    /** So many in a row are told by the first and the last of them. */
    private static final int A_ROW = 3;

    private final Course course;
    private final List<String> all;

    TypedHoles(Course course) {
        this.course = course;
        this.all = course.holes().stream().map(Hole::id).toList();
    }

    /**
     * Once each, and in the order of the course.
     *
     * @throws org.cupwright.message.Problem if it names a hole that there is not
     */
    List<String> read(String typed) {
        Set<Integer> found = new TreeSet<>();
        String closed = typed.replaceAll("\\s*[-–]\\s*", "-");
        for (String part : closed.split("[,;\\s]+", -1)) {
            if (!part.isEmpty()) {
                found.addAll(places(part));
            }
        }
        return found.stream().map(all::get).toList();
    }

    private List<Integer> places(String part) {
        if (part.equals("all")) {
            return IntStream.range(0, all.size()).boxed().toList();
        }
        int place = all.indexOf(part);
        if (place >= 0) {
            return List.of(place);
        }
        int dash = part.indexOf('-');
        if (dash > 0) {
            int from = all.indexOf(part.substring(0, dash));
            int to = all.indexOf(part.substring(dash + 1));
            if (from >= 0 && to >= from) {
                return IntStream.rangeClosed(from, to).boxed().toList();
            }
        }
        return List.of(all.indexOf(HoleChoice.hole(course, part).id()));
    }

    /** Holes in the order of the course as they are told. */
    String told(List<String> holes) {
        List<String> said = new ArrayList<>();
        List<Integer> places = holes.stream().map(all::indexOf).sorted().toList();
        for (int i = 0; i < places.size(); ) {
            int last = i;
            while (last + 1 < places.size() && places.get(last + 1) == places.get(last) + 1) {
                last++;
            }
            said.add(row(places.get(i), places.get(last)));
            i = last + 1;
        }
        return String.join(", ", said);
    }

    private String row(int first, int last) {
        return last - first + 1 >= A_ROW
                ? all.get(first) + "–" + all.get(last)
                : IntStream.rangeClosed(first, last).mapToObj(all::get).collect(Collectors.joining(", "));
    }
}
