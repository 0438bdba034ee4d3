package org.cupwright.app.desk.begin;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.ground.PaceGrid;
import org.cupwright.app.desk.ground.ShapeChecks;
import org.cupwright.app.desk.ground.TypedRing;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Way;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.units.Heading;

/**
 * Second step, on blank ground: a green by its corners in paces. Nobody knows where it lies; on the grid is the way of
 * play, so that it turns with that.
 */
public record GridStep(Session session) {
    /**
     * Keeps a green by its corners, a line each as {@link PaceGrid} writes them.
     *
     * @param number the green that is drawn anew; 0 for another one
     * @throws WrongFields if they make none
     * @return its number
     */
    public int keep(int number, Map<String, String> typed, double paceMetres) {
        TypedFields fields = new TypedFields(typed);
        SettingUp before = new BeginCourse(session).stands();
        Optional<String> name = fields.hole(PictureStep.HOLE);
        Optional<Heading> play = fields.heading(PictureStep.PLAY);
        GreenAdded.refuseTaken(name, number, before, fields, PictureStep.HOLE);
        outline(fields, grid(before, number, paceMetres)); // what is wrong with it is told
        fields.check();
        int[] kept = {number};
        new BeginCourse(session).keep(stands -> {
            Optional<BegunGreen> known = drawn(stands, number);
            kept[0] = known.map(BegunGreen::number).orElseGet(stands::nextNumber);
            PaceGrid grid = grid(stands, known.isPresent() ? number : 0, paceMetres);
            Outline outline = outline(fields, grid).orElseThrow();
            Heading from = grid.on();
            Hole flat = GreenAdded.hole(
                            name, kept[0], outline, Optional.of(from).filter(any -> known.isPresent()))
                    .withHazards(known.map(green -> green.hole().hazards()).orElse(List.of()));
            Hole turned = NumberStep.turned(flat, play);
            Hole hole = play.map(way -> turned.withLineOfPlay(LineOfPlay.towards(turned.green(), way)))
                    .orElseGet(turned::withoutLineOfPlay);
            BegunGreen green = new BegunGreen(
                    kept[0],
                    Way.DRAWN,
                    hole,
                    name.isPresent(),
                    known.filter(BegunGreen::leftOut).isPresent(),
                    false,
                    Optional.empty());
            return GreenAdded.refuseTooMany(stands.with(green), PictureStep.CORNERS, "");
        });
        return kept[0];
    }

    /** The grid on which a green was drawn; of another one, at its place among those that lie nowhere. */
    private static PaceGrid grid(SettingUp stands, int number, double paceMetres) {
        return drawn(stands, number)
                .map(green -> PaceGrid.of(green.hole(), paceMetres))
                .orElseGet(() -> {
                    MapPoint front = PacedStep.inARow(stands.nextNumber(), stands.place());
                    return new PaceGrid(front, new Heading(0), paceMetres);
                });
    }

    private static Optional<BegunGreen> drawn(SettingUp stands, int number) {
        return stands.find(number).filter(green -> green.way() == Way.DRAWN);
    }

    private static Optional<Outline> outline(TypedFields fields, PaceGrid grid) {
        TypedRing ring = new TypedRing(grid, List.of());
        return HazardStep.read(fields, () -> ShapeChecks.ground(ring.read(fields.text(PictureStep.CORNERS))))
                .flatMap(shape -> GreenAdded.outline(shape, fields, PictureStep.CORNERS));
    }
}
