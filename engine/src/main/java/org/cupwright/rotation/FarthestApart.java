package org.cupwright.rotation;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;

/**
 * The two spots of a double green, one for each of its holes, that lie farthest apart.
 *
 * @param metres how far; below 0 where one of the holes has no spot
 */
record FarthestApart(MapPoint first, MapPoint second, double metres) {
    static FarthestApart of(GreenCandidates one, GreenCandidates other) {
        FarthestApart farthest = new FarthestApart(new MapPoint(0, 0), new MapPoint(0, 0), -1);
        List<Candidate> others = other.open();
        for (Candidate first : one.open()) {
            for (Candidate second : others) {
                double metres = first.at().distanceMetres(second.at());
                if (metres > farthest.metres) {
                    farthest = new FarthestApart(first.at(), second.at(), metres);
                }
            }
        }
        return farthest;
    }
}
