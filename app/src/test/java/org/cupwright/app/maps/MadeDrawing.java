package org.cupwright.app.maps;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.GroundItem;
import org.cupwright.green.Surface;

/** Drawings with made ground on them. */
public final class MadeDrawing {
    private MadeDrawing() {}

    /** A green with nothing on it but its outline and surroundings. */
    public static GreenDrawing of(Hole hole) {
        DrawnGround clear = new DrawnGround(true, any -> false, any -> false, any -> false, List.of());
        return new GreenDrawing(
                hole, "", Optional.empty(), clear, List.of(), List.of(), List.of(), List.of(), List.of(), List.of());
    }

    public static GreenDrawing surveyed(Hole hole, Surface surface) {
        GreenDrawing of = of(hole);
        return new GreenDrawing(
                hole,
                of.title(),
                Optional.of(surface),
                of.ground(),
                of.oldHoles(),
                of.slopes(),
                of.drawn(),
                of.spots(),
                of.areas(),
                of.findings());
    }

    /** The same with ground that is hatched and dotted, and with old holes. */
    public static GreenDrawing used(
            GreenDrawing of, Predicate<MapPoint> hatched, Predicate<MapPoint> dotted, OldHoleOnMap... holes) {
        return new GreenDrawing(
                of.hole(),
                of.title(),
                of.surface(),
                new DrawnGround(
                        true,
                        hatched,
                        dotted,
                        of.ground().notSurveyed(),
                        of.ground().marked()),
                List.of(holes),
                of.slopes(),
                of.drawn(),
                of.spots(),
                of.areas(),
                of.findings());
    }

    static GreenDrawing withMarked(GreenDrawing of, List<GroundItem> marked) {
        DrawnGround ground = of.ground();
        return new GreenDrawing(
                of.hole(),
                of.title(),
                of.surface(),
                new DrawnGround(true, ground.notToCut(), ground.resting(), ground.notSurveyed(), marked),
                of.oldHoles(),
                of.slopes(),
                of.drawn(),
                of.spots(),
                of.areas(),
                of.findings());
    }

    static GreenDrawing withSlopes(GreenDrawing of, List<SlopeOnMap> slopes) {
        return new GreenDrawing(
                of.hole(),
                of.title(),
                of.surface(),
                of.ground(),
                of.oldHoles(),
                slopes,
                of.drawn(),
                of.spots(),
                of.areas(),
                of.findings());
    }

    static GreenDrawing withDrawn(GreenDrawing of, List<DrawnItem> drawn) {
        return new GreenDrawing(
                of.hole(),
                of.title(),
                of.surface(),
                of.ground(),
                of.oldHoles(),
                of.slopes(),
                drawn,
                of.spots(),
                of.areas(),
                of.findings());
    }
}
