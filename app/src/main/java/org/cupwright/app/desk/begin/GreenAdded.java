package org.cupwright.app.desk.begin;

import java.util.Map;
import java.util.Optional;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.Outline;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.green.findings.GreenSize;
import org.cupwright.message.Message.Area;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Polygon;

/** What every way of adding a green has in common. */
final class GreenAdded {
    /** More greens no club has: our choice. */
    static final int MOST = 120;

    /** Below it nothing can be a green, m²: a slip of the unit. Our choice. */
    private static final double LEAST_SQUARE_METRES = 15;

    private GreenAdded() {}

    static SettingUp refuseTooMany(SettingUp next, String field, String value) {
        if (next.greens().size() > MOST) {
            throw new WrongFields(Map.of(field, Problem.of("begin.tooMany", field, value, new Count(MOST))));
        }
        return next;
    }

    /** An outline as the edge of a green; empty where it can be none, which is then told of the field. */
    static Optional<Outline> outline(Polygon shape, TypedFields fields, String field) {
        if (!shape.isValid()) {
            fields.refuse(field, Problem.of("begin.crosses", field, ""));
            return Optional.empty();
        }
        Outline outline = new Outline(shape);
        double area = outline.areaSquareMetres();
        if (area < LEAST_SQUARE_METRES || isImpossible(shape)) {
            fields.refuse(field, Problem.of("begin.size", field, "", new Area(area)));
            return Optional.empty();
        }
        return Optional.of(outline);
    }

    private static boolean isImpossible(Polygon shape) {
        try {
            GreenSize.refuseImpossible(shape, Where.file());
            return false;
        } catch (UnreadableFile tooLarge) {
            return true;
        }
    }

    /** Tells where another green has a name already. */
    static void refuseTaken(Optional<String> name, int number, SettingUp stands, TypedFields fields, String field) {
        stands.ofHoles().stream()
                .filter(other -> other.number() != number && other.named())
                .map(other -> other.hole().id())
                .filter(other -> name.equals(Optional.of(other)))
                .findFirst()
                .ifPresent(other -> fields.refuse(field, Problem.of("begin.taken", field, other, new Name(other))));
    }

    /** A hole by its name, or by the number of its green as long as it has none. */
    static Hole hole(Optional<String> name, int number, Outline outline, Optional<Heading> play) {
        Hole hole = Hole.of(name.orElse("N" + number), outline);
        return play.map(way -> hole.withLineOfPlay(LineOfPlay.towards(outline, way)))
                .orElse(hole);
    }
}
