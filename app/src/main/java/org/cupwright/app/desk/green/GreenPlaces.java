package org.cupwright.app.desk.green;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.policy.Policy;

/** Points on a course's greens as seen from their fairways. */
public final class GreenPlaces {
    private final Map<String, GreenFrame> frames = new HashMap<>();
    private final Course course;

    public GreenPlaces(Course course, Policy policy) {
        this.course = course;
        for (Hole hole : course.holes()) {
            Judging.frame(hole, policy).ifPresent(frame -> frames.put(hole.id(), frame));
        }
    }

    /** The place; empty off the green, and on greens without a line of play. */
    public Optional<PlaceOnGreen> find(String holeId, MapPoint point) {
        boolean onGreen =
                course.find(holeId).map(hole -> hole.green().contains(point)).orElse(false);
        return onGreen ? Optional.ofNullable(frames.get(holeId)).map(frame -> frame.place(point)) : Optional.empty();
    }
}
