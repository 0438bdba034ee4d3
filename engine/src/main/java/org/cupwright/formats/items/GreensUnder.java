package org.cupwright.formats.items;

import java.util.List;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;

/** The holes on whose greens something lies. */
final class GreensUnder {
    private GreensUnder() {}

    /**
     * Those that it touches.
     *
     * @param candidates the holes it may be meant for
     * @param otherwise what it is called when it touches none; told with how far it is from the nearest
     * @param where where in the file it stands
     * @throws org.cupwright.finding.UnreadableFile if it touches none
     */
    static List<Hole> of(Geometry place, List<Hole> candidates, FindingKind otherwise, Message where) {
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
