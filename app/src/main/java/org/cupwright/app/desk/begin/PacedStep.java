package org.cupwright.app.desk.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Measure;
import org.cupwright.app.storage.SettingUp.Paced;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.app.storage.SettingUp.Row;
import org.cupwright.app.storage.SettingUp.Way;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.message.Problem;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Polygon;

/** Second step, by pacing: a line from front to back, and from it how far it is to the edge on both sides. */
public record PacedStep(Session session) {
    public static final String LENGTH = "length";
    public static final String UNIT = "unit";
    public static final String ON = "on";
    public static final String LEFT = "left";
    public static final String RIGHT = "right";
    public static final String EAST = "frontEast";
    public static final String NORTH = "frontNorth";

    /** Rows that a form has: a green of 45 paces, paced every three (our choice). */
    public static final int ROWS = 16;

    private static final double LONGEST = 700;
    private static final int FEWEST_ROWS = 2;
    private static final double FOOT_METRES = 0.3048;
    private static final double YARD_METRES = 3 * FOOT_METRES;

    /** Greens of which nobody knows where they lie are drawn in rows of six, so far apart, m: our choices. */
    private static final double APART_METRES = 80;

    private static final int IN_A_ROW = 6;

    /**
     * Keeps a green by its measures.
     *
     * @param number the green to be measured anew; 0 for another one
     * @param paceMetres how long a pace is
     * @throws WrongFields if they make none
     * @return its number
     */
    public int keep(int number, Map<String, String> typed, double paceMetres) {
        TypedFields fields = new TypedFields(typed);
        SettingUp before = new BeginCourse(session).stands();
        Optional<String> name = fields.hole(PictureStep.HOLE);
        Optional<Heading> play = fields.heading(PictureStep.PLAY);
        GreenAdded.refuseTaken(name, number, before, fields, PictureStep.HOLE);
        Optional<MapPoint> front = TypedPlace.read(fields, EAST, NORTH, before.place());
        Optional<Paced> paced = paced(fields, play.orElse(new Heading(0)), front, paceMetres);
        paced.ifPresent(measures -> outline(measures, new MapPoint(0, 0), fields)); // what is wrong with it is told
        fields.check();
        int[] kept = {number};
        new BeginCourse(session).keep(stands -> {
            Optional<BegunGreen> known = stands.find(number).filter(green -> green.way() == Way.PACED);
            kept[0] = known.map(BegunGreen::number).orElseGet(stands::nextNumber);
            BegunGreen fresh = green(kept[0], name, play, paced.get(), stands.place(), fields);
            BegunGreen green = known.map(older -> withHazards(fresh, older, stands.place()))
                    .orElse(fresh);
            return GreenAdded.refuseTooMany(stands.with(green), LENGTH, fields.text(LENGTH));
        });
        return kept[0];
    }

    /** Its bunkers and water lie about its line as they did, wherever that runs now. */
    private static BegunGreen withHazards(BegunGreen green, BegunGreen before, Place place) {
        Paced from = before.paced().orElseThrow();
        Paced to = green.paced().orElseThrow();
        MapPoint start = front(to, green.number(), place);
        List<Hazard> moved = BegunHazards.moved(before.hole().hazards(), front(from, before.number(), place), start);
        List<Hazard> hazards = BegunHazards.turned(moved, start, from.along(), to.along());
        return green.withHole(green.hole().withHazards(hazards));
    }

    private static BegunGreen green(
            int number, Optional<String> name, Optional<Heading> play, Paced paced, Place place, TypedFields fields) {
        MapPoint at = front(paced, number, place);
        Outline outline = outline(paced, at, fields).orElseThrow();
        return new BegunGreen(
                number,
                Way.PACED,
                GreenAdded.hole(name, number, outline, play),
                name.isPresent(),
                false,
                paced.front().isPresent(),
                Optional.of(paced));
    }

    /** Where the line begins: as it was typed, else in rows about where the course lies. */
    static MapPoint front(Paced paced, int number, Place place) {
        return paced.front().orElseGet(() -> inARow(number, place));
    }

    /** Where a green is drawn of which nobody knows where it lies. */
    static MapPoint inARow(int number, Place place) {
        MapPoint course = TypedPlace.of(place);
        int at = number - 1;
        return new MapPoint(
                course.east() + at % IN_A_ROW * APART_METRES, course.north() - at / IN_A_ROW * APART_METRES);
    }

    /** The outline of measures that were found to make one. */
    static Outline outline(Paced paced, int number, Place place) {
        return new Outline(PacedOutline.of(paced, front(paced, number, place)));
    }

    private static Optional<Outline> outline(Paced paced, MapPoint front, TypedFields fields) {
        Polygon shape = PacedOutline.of(paced, front);
        return GreenAdded.outline(shape, fields, LENGTH);
    }

    private static Optional<Paced> paced(
            TypedFields fields, Heading along, Optional<MapPoint> front, double paceMetres) {
        Optional<Double> length = fields.number(LENGTH, 1, LONGEST);
        Optional<Measure> unit = EnumNames.find(Measure.class, fields.text(UNIT));
        if (unit.isEmpty()) {
            fields.refuse(UNIT, Problem.of("begin.unit", UNIT, fields.text(UNIT)));
        }
        List<Row> rows = rows(fields, length.orElse(LONGEST));
        return length.isPresent() && unit.isPresent() && rows.size() >= FEWEST_ROWS
                ? Optional.of(new Paced(unit.get(), metres(unit.get(), paceMetres), length.get(), rows, along, front))
                : Optional.empty();
    }

    private static double metres(Measure unit, double paceMetres) {
        return switch (unit) {
            case PACES -> paceMetres;
            case METRES -> 1;
            case YARDS -> YARD_METRES;
            case FEET -> FOOT_METRES;
        };
    }

    private static List<Row> rows(TypedFields fields, double length) {
        List<Row> rows = new ArrayList<>();
        double before = -1;
        int filled = 0;
        for (int i = 1; i <= ROWS; i++) {
            if (!fields.isBlank(ON + i) || !fields.isBlank(LEFT + i) || !fields.isBlank(RIGHT + i)) {
                filled++;
                Optional<Double> on = fields.number(ON + i, 0, length);
                Optional<Double> left = fields.number(LEFT + i, 0, LONGEST);
                Optional<Double> right = fields.number(RIGHT + i, 0, LONGEST);
                if (on.isPresent() && on.get() <= before) {
                    fields.refuse(ON + i, Problem.of("begin.notFurther", ON + i, fields.text(ON + i)));
                }
                before = on.orElse(before);
                if (on.isPresent() && left.isPresent() && right.isPresent()) {
                    rows.add(new Row(on.get(), left.get(), right.get()));
                }
            }
        }
        if (filled < FEWEST_ROWS) {
            fields.refuse(ON + 1, Problem.of("begin.rows", ON + 1, fields.text(ON + 1)));
        }
        return rows;
    }
}
