package org.cupwright.app.desk.begin;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.TypedHeading;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Paced;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.app.storage.SettingUp.Way;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.units.Heading;

/** Third step: which green is which hole's, from where it is played to, and which are no hole's. */
public record NumberStep(Session session) {
    /** Beginnings of the fields of a green, which end in its number. */
    public static final String HOLE = "hole-";

    public static final String PLAY = "play-";
    public static final String OUT = "out-";

    /** Takes a green away for good. */
    public void remove(int number) {
        new BeginCourse(session).keep(stands -> stands.without(number));
    }

    /**
     * Keeps what was typed; what is still empty may be said later.
     *
     * @throws WrongFields if a name or a direction is none, or two greens have one name
     */
    public void keep(Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed);
        new BeginCourse(session).keep(stands -> {
            List<BegunGreen> greens = new ArrayList<>();
            Map<String, Integer> taken = new HashMap<>();
            for (BegunGreen green : stands.greens()) {
                greens.add(fields.has(HOLE + green.number()) ? numbered(green, stands, fields, taken) : green);
            }
            fields.check();
            return stands.withGreens(greens);
        });
    }

    private static BegunGreen numbered(
            BegunGreen green, SettingUp stands, TypedFields fields, Map<String, Integer> taken) {
        int number = green.number();
        boolean out = !fields.isBlank(OUT + number);
        Optional<String> name = fields.hole(HOLE + number);
        Optional<Heading> play = fields.heading(PLAY + number);
        if (name.isPresent() && !out && taken.putIfAbsent(name.get(), number) != null) {
            String field = HOLE + number;
            fields.refuse(field, Problem.of("begin.taken", field, name.get(), new Name(name.get())));
        }
        Optional<Paced> paced =
                green.paced().map(measures -> play.map(measures::towards).orElse(measures));
        Hole measured = paced.map(measures -> measured(green, measures, stands.place()))
                .orElseGet(() -> green.way() == Way.DRAWN ? turned(green.hole(), play) : green.hole());
        Hole hole = towards(measured, play).called(name.orElse("N" + number));
        return new BegunGreen(number, green.way(), hole, name.isPresent(), out, green.placed(), paced);
    }

    private static Hole measured(BegunGreen green, Paced measures, Place place) {
        List<Hazard> hazards = BegunHazards.turned(
                green.hole().hazards(),
                PacedStep.front(measures, green.number(), place),
                green.paced().orElseThrow().along(),
                measures.along());
        return green.hole()
                .withGreen(PacedStep.outline(measures, green.number(), place))
                .withHazards(hazards);
    }

    /** What was drawn on a grid lies along the way of play, north as long as that is not known. */
    static Hole turned(Hole hole, Optional<Heading> play) {
        Heading north = new Heading(0);
        Heading from = hole.lineOfPlay().map(LineOfPlay::atGreen).orElse(north);
        Heading to = play.orElse(north);
        if (TypedHeading.degrees(from) == TypedHeading.degrees(to)) {
            return hole;
        }
        MapPoint about = hole.green().centroid();
        return hole.withGreen(new Outline(BegunHazards.turned(hole.green().polygon(), about, from, to)))
                .withHazards(BegunHazards.turned(hole.hazards(), about, from, to));
    }

    /** A line of play of the map stays where it says the same to a degree. */
    private static Hole towards(Hole hole, Optional<Heading> play) {
        Optional<Long> known = hole.lineOfPlay().map(line -> TypedHeading.degrees(line.atGreen()));
        if (known.equals(play.map(TypedHeading::degrees)) && hole.lineOfPlay().isPresent()) {
            boolean ofTheMap =
                    hole.lineOfPlay().get().points().size() > 2 || !hole.tees().isEmpty();
            return ofTheMap ? hole : hole.withLineOfPlay(LineOfPlay.towards(hole.green(), play.orElseThrow()));
        }
        return play.map(way -> hole.withLineOfPlay(LineOfPlay.towards(hole.green(), way)))
                .orElseGet(hole::withoutLineOfPlay);
    }
}
