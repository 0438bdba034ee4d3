package org.cupwright.formats.items;

import java.util.List;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;

/** The holes that a file means, by their names or by what lies on their greens. */
final class Holes {
    private Holes() {}

    /** The hole of a name; fails with those there are. */
    static Hole named(Course course, String id, Message where) {
        Message.Argument known = new Message.Name(
                String.join(", ", course.holes().stream().map(Hole::id).toList()));
        return course.find(id)
                .orElseThrow(() -> Finding.of(FindingKind.HOLE_UNKNOWN, where, new Message.Name(Excerpt.of(id)))
                        .trying(known)
                        .failure());
    }

    /**
     * Those on whose greens something lies.
     *
     * @param candidates the holes it may be meant for
     * @param otherwise what it is called when it touches none; told with how far it is from the nearest
     * @param where where in the file it stands
     * @throws org.cupwright.finding.UnreadableFile if it touches none
     */
    static List<Hole> under(Geometry place, List<Hole> candidates, FindingKind otherwise, Message where) {
        List<Hole> under = candidates.stream()
                .filter(hole -> hole.green().polygon().intersects(place))
                .toList();
        if (under.isEmpty()) {
            double away = candidates.stream()
                    .mapToDouble(hole -> hole.green().polygon().distance(place))
                    .min()
                    .orElse(Double.POSITIVE_INFINITY);
            throw Finding.of(otherwise, where, new Message.Length(away)).failure();
        }
        return under;
    }
}
