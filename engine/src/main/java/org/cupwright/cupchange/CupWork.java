package org.cupwright.cupchange;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.course.MapPoint;

/** What was done at the hole itself. Places are in the course's frame. */
public sealed interface CupWork extends Payload {
    @Override
    default boolean needsHole() {
        return true;
    }

    /** How the spot was found. */
    enum FoundBy {
        PACES,
        MARK,
        TAPES,
        DOT,
        PHONE,
        EYE
    }

    /** How the plug was cut. */
    enum CutWay {
        ONE_PIECE,
        TWO_PIECE,
        HAMMER_IN
    }

    /** What had to be done with the soil under the plug to bring it level. */
    enum Soil {
        NONE,
        /** The plug sat low. */
        PUT_IN,
        /** The plug sat high. */
        TOOK_OUT
    }

    /**
     * The hole was cut at a new place and the old one filled with the plug.
     *
     * @param planned where the plan had it, if there was one
     * @param cutAt where it was really cut
     * @param cutter which cutter, by the name the course gives it
     * @param edgeRagged the cut edge was torn, not clean
     * @param flag which flag went in, if flags differ
     */
    record CupChanged(
            Optional<MapPoint> planned,
            MapPoint cutAt,
            FoundBy foundBy,
            Optional<String> cutter,
            CutWay way,
            Soil soil,
            boolean rimWhited,
            boolean edgeRagged,
            Optional<String> flag)
            implements CupWork {
        /** One tap: cut where it was planned, nothing to remark. */
        public static CupChanged asPlanned(MapPoint planned) {
            return new CupChanged(
                    Optional.of(planned),
                    planned,
                    FoundBy.PACES,
                    Optional.empty(),
                    CutWay.ONE_PIECE,
                    Soil.NONE,
                    false,
                    false,
                    Optional.empty());
        }

        /** One tap more: moved, here. */
        public CupChanged movedTo(MapPoint place, FoundBy how) {
            return new CupChanged(planned, place, how, cutter, way, soil, rimWhited, edgeRagged, flag);
        }

        public CupChanged with(String cutterName, Soil soilDone, boolean ragged) {
            return new CupChanged(
                    planned, cutAt, foundBy, Optional.of(cutterName), way, soilDone, rimWhited, ragged, flag);
        }
    }

    /** How far back on the green, by thirds. */
    enum Depth {
        FRONT,
        MIDDLE,
        BACK
    }

    /** How far across the green, by thirds, seen from the fairway. */
    enum Across {
        LEFT,
        CENTRE,
        RIGHT
    }

    /**
     * The hole was cut at a new place of which nobody knows more than the part of the green, as old notebooks have it.
     * The hole before it was filled; no ground rests about the new one, since nobody can say where.
     */
    record CutSomewhere(Depth depth, Optional<Across> across) implements CupWork {}

    /** The hole stayed where it was. */
    record LeftInOldHole(Optional<String> why) implements CupWork {}

    /** A ball rolled by hand at a spot: whether it stopped near enough. It beats the model. */
    record RolledByHand(MapPoint at, boolean stopped) implements CupWork {}

    /**
     * The monthly check with a ruler.
     *
     * @param holeDepthMillimetres from the surface to the bottom of the hole
     * @param cupDepthMillimetres from the surface down to the cup's rim
     * @param plugHeightMillimetres how far a plug stands above the ground about it; negative when low
     */
    record SpotCheck(
            OptionalDouble holeDepthMillimetres,
            OptionalDouble cupDepthMillimetres,
            OptionalDouble plugHeightMillimetres)
            implements CupWork {
        public SpotCheck {
            Checks.between("holeDepth", holeDepthMillimetres, 0, 1000, "mm");
            Checks.between("cupDepth", cupDepthMillimetres, 0, 1000, "mm");
            Checks.between("plugHeight", plugHeightMillimetres, -100, 100, "mm");
            if (holeDepthMillimetres.isEmpty() && cupDepthMillimetres.isEmpty() && plugHeightMillimetres.isEmpty()) {
                throw new ImpossibleFact("nothingMeasured");
            }
        }
    }

    /** The hole was moved while people were playing to it: the Committee's decision. */
    record HoleMovedInPlay(MapPoint movedTo, String official, int groupsThrough, String why) implements CupWork {
        public HoleMovedInPlay {
            Checks.word("official", official);
            Checks.count("groupsThrough", groupsThrough, 200);
        }
    }

    /** An official's dot was painted where a coming hole goes. */
    record DotPainted(MapPoint at, LocalDate forDay) implements CupWork {}
}
