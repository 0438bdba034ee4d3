package org.cupwright.cupchange;

import java.util.Optional;
import org.cupwright.course.MapPoint;

/** What was done to plugs and ball marks, or seen of them. Places are in the course's frame. */
public sealed interface PlugWork extends Payload {
    @Override
    default boolean needsHole() {
        return true;
    }

    /** Where a plug came from. */
    enum PlugFrom {
        NEW_HOLE,
        EDGE,
        NURSERY
    }

    /** How a plug looks. */
    enum PlugLook {
        LEVEL,
        HIGH,
        LOW,
        DAMAGED,
        /** Its outline is no longer to be seen. */
        KNIT
    }

    /** What is done to a plug after it was set. */
    enum PlugCare {
        WATERED,
        /** Taken up and set again, level. */
        LIFTED,
        /** Exchanged with sound turf from the green's edge. */
        MOVED_TO_EDGE,
        REPLACED_FROM_NURSERY
    }

    /** A plug was set; a change of the cup says so by itself, this adds plugs that had another cause. */
    record PlugSet(MapPoint at, PlugFrom from, boolean watered) implements PlugWork {}

    /** A plug was looked at. */
    record PlugSeen(MapPoint at, PlugLook look) implements PlugWork {}

    /**
     * A plug was cared for.
     *
     * @param edgePlace where at the edge the poor plug went, when it was moved there
     */
    record PlugTended(MapPoint at, PlugCare care, Optional<MapPoint> edgePlace) implements PlugWork {
        public PlugTended {
            if (edgePlace.isPresent() && care != PlugCare.MOVED_TO_EDGE) {
                throw new ImpossibleFact("placeAtEdge");
            }
        }
    }

    /** A ball mark worth knowing: not all are entered. */
    record BallMark(MapPoint at) implements PlugWork {}

    /** Ball marks were mended on this green. */
    record BallMarksMended(int count) implements PlugWork {
        public BallMarksMended {
            Checks.count("ballMarks", count, 10_000);
        }
    }
}
