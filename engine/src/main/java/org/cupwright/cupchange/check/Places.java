package org.cupwright.cupchange.check;

import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CupWork;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PlugWork;

/** The places a payload says lie on the green. */
final class Places {
    private Places() {}

    static List<MapPoint> onGreen(Payload payload) {
        if (payload instanceof CupWork.CupChanged changed) {
            return List.of(changed.cutAt());
        } else if (payload instanceof CupWork.HoleMovedInPlay moved) {
            return List.of(moved.movedTo());
        } else if (payload instanceof CupWork.RolledByHand rolled) {
            return List.of(rolled.at());
        } else if (payload instanceof CupWork.DotPainted dot) {
            return List.of(dot.at());
        } else if (payload instanceof PlugWork.PlugSet set) {
            return List.of(set.at());
        } else if (payload instanceof PlugWork.PlugSeen seen) {
            return List.of(seen.at());
        } else if (payload instanceof PlugWork.PlugTended tended) {
            return List.of(tended.at());
        } else if (payload instanceof PlugWork.BallMark mark) {
            return List.of(mark.at());
        }
        return List.of();
    }
}
