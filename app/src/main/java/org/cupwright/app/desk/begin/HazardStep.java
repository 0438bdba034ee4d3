package org.cupwright.app.desk.begin;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import org.cupwright.app.desk.ground.PaceGrid;
import org.cupwright.app.desk.ground.ShapeChecks;
import org.cupwright.app.desk.ground.TypedRing;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;
import org.locationtech.jts.geom.Polygon;

/** Second step, beside the greens: bunkers and water, drawn on the aerial picture or on the grid of a green. */
public record HazardStep(Session session) {
    /**
     * A hazard that was kept.
     *
     * @param green the number of the green it is beside
     * @param squareMetres how much ground it is
     */
    public record Kept(int green, double squareMetres) {}

    /**
     * Keeps a bunker or water by its corners on the picture, or on the ground, by the green it is nearest to.
     *
     * @throws WrongFields if it can be none, or there is no green near it
     */
    public Kept onPicture(Hazard.Kind kind, Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed);
        SettingUp before = new BeginCourse(session).stands();
        Optional<List<MapPoint>> ring = PictureStep.corners(fields, before);
        Optional<Polygon> ground = ring.flatMap(corners -> read(fields, () -> ShapeChecks.ground(corners)));
        fields.check();
        return keep(
                kind,
                ground.get(),
                fields,
                stands -> BegunHazards.nearest(stands, ground.get())
                        .orElseThrow(() -> Problem.of("begin.hazardAlone", PictureStep.CORNERS, "")));
    }

    /**
     * Keeps a bunker or water by its corners in paces about a green.
     *
     * @throws WrongFields if it can be none
     */
    public Kept onGrid(int number, Hazard.Kind kind, Map<String, String> typed, double paceMetres) {
        TypedFields fields = new TypedFields(typed);
        BegunGreen green = green(new BeginCourse(session).stands(), number);
        TypedRing ring = new TypedRing(PaceGrid.of(green.hole(), paceMetres), List.of());
        Optional<Polygon> ground = read(fields, () -> ShapeChecks.ground(ring.read(fields.text(PictureStep.CORNERS))));
        fields.check();
        return keep(kind, ground.get(), fields, stands -> green(stands, number));
    }

    /** Takes a hazard of a green away, wherever it counted; the first is 1. */
    public void remove(int number, int hazard) {
        new BeginCourse(session).keep(stands -> {
            List<Hazard> all = green(stands, number).hole().hazards();
            if (hazard < 1 || hazard > all.size()) {
                throw Problem.of("ground.noHazard", "draw", hazard, new Count(all.size()));
            }
            return BegunHazards.without(stands, all.get(hazard - 1));
        });
    }

    static BegunGreen green(SettingUp stands, int number) {
        return stands.find(number).orElseThrow(() -> Problem.of("begin.noGreen", "draw", number));
    }

    private Kept keep(Hazard.Kind kind, Polygon ground, TypedFields fields, Function<SettingUp, BegunGreen> beside) {
        int[] kept = {0};
        new BeginCourse(session).keep(stands -> {
            Optional<BegunGreen> green = read(fields, () -> beside.apply(stands));
            Optional<Hazard> hazard = green.flatMap(one -> read(
                    fields, () -> ShapeChecks.hazard(kind, ground, one.hole().green())));
            fields.check();
            kept[0] = green.get().number();
            return BegunHazards.with(stands, kept[0], hazard.get());
        });
        return new Kept(kept[0], ground.getArea());
    }

    /** Something that is read of the corners; what is wrong with them is told of their field. */
    static <T> Optional<T> read(TypedFields fields, Supplier<T> reading) {
        try {
            return Optional.of(reading.get());
        } catch (Problem refused) {
            fields.refuse(PictureStep.CORNERS, refused);
            return Optional.empty();
        }
    }
}
