package org.cupwright.app.answers;

import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.Policy;

/** Where points on a course's greens are, in words. */
public final class PlaceText {
    private final PositionText positions;
    private final GreenPlaces greens;

    public PlaceText(Texts texts, Course course, Policy policy) {
        this.positions = new PositionText(texts, policy.get(PlacePolicy.PACE_METRES));
        this.greens = new GreenPlaces(course, policy);
    }

    public String at(String hole, MapPoint at) {
        return positions.of(greens.find(hole, at), at);
    }

    /** As coordinates, where it is on no green. */
    String coordinates(MapPoint at) {
        return positions.coordinates(at);
    }
}
