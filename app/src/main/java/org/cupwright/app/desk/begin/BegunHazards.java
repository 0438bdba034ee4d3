package org.cupwright.app.desk.begin;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.ground.ShapeChecks;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;

/**
 * Bunkers and water that are drawn before there is a course. Each belongs to every green that it lies near to, as it
 * does when a map is read; of a green of which nobody knows where it lies, to that alone.
 */
final class BegunHazards {
    private BegunHazards() {}

    /** With a hazard by a green. */
    static SettingUp with(SettingUp stands, int number, Hazard hazard) {
        BegunGreen beside = stands.find(number).orElseThrow();
        SettingUp next = stands;
        for (BegunGreen green : stands.greens()) {
            boolean near = beside.placed()
                    && green.placed()
                    && hazard.area().isWithinDistance(green.hole().green().polygon(), ShapeChecks.REACH_METRES);
            if (green.number() == number || near) {
                List<Hazard> hazards = new ArrayList<>(green.hole().hazards());
                hazards.add(hazard);
                next = next.with(green.withHole(green.hole().withHazards(hazards)));
            }
        }
        return next;
    }

    /** Without one, wherever it counted. */
    static SettingUp without(SettingUp stands, Hazard hazard) {
        SettingUp next = stands;
        for (BegunGreen green : stands.greens()) {
            List<Hazard> hazards = new ArrayList<>(green.hole().hazards());
            if (hazards.remove(hazard)) {
                next = next.with(green.withHole(green.hole().withHazards(hazards)));
            }
        }
        return next;
    }

    /** A green that is new, with the hazards of others that it lies near to. */
    static BegunGreen near(SettingUp stands, BegunGreen fresh) {
        Geometry outline = fresh.hole().green().polygon();
        List<Hazard> hazards = new ArrayList<>(fresh.hole().hazards());
        stands.greens().stream()
                .filter(BegunGreen::placed)
                .flatMap(green -> green.hole().hazards().stream())
                .distinct()
                .filter(hazard -> hazard.area().isWithinDistance(outline, ShapeChecks.REACH_METRES))
                .filter(hazard -> !hazards.contains(hazard))
                .forEach(hazards::add);
        return fresh.withHole(fresh.hole().withHazards(hazards));
    }

    /** The green whose edge is nearest to some ground, of those of which it is known where they lie. */
    static Optional<BegunGreen> nearest(SettingUp stands, Polygon ground) {
        return stands.greens().stream()
                .filter(BegunGreen::placed)
                .min(Comparator.comparingDouble(
                        green -> green.hole().green().polygon().distance(ground)));
    }

    /** The hazards of a green that is turned about a place, from one way of play to another. */
    static List<Hazard> turned(List<Hazard> hazards, MapPoint about, Heading from, Heading to) {
        return hazards.stream()
                .map(hazard -> new Hazard(hazard.kind(), turned(hazard.area(), about, from, to)))
                .toList();
    }

    static Polygon turned(Polygon ground, MapPoint about, Heading from, Heading to) {
        double clockwise = Math.toRadians(to.degrees() - from.degrees());
        return (Polygon) AffineTransformation.rotationInstance(-clockwise, about.east(), about.north())
                .transform(ground);
    }

    /** The hazards of a green whose measures begin at another place. */
    static List<Hazard> moved(List<Hazard> hazards, MapPoint from, MapPoint to) {
        AffineTransformation step =
                AffineTransformation.translationInstance(to.east() - from.east(), to.north() - from.north());
        return hazards.stream()
                .map(hazard -> new Hazard(hazard.kind(), (Polygon) step.transform(hazard.area())))
                .toList();
    }
}
