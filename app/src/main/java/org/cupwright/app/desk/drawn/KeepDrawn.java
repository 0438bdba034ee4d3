package org.cupwright.app.desk.drawn;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.SpotOnGreen;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.DrawnOnCourse;
import org.cupwright.app.storage.DrawnOnCourse.Kept;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.formats.items.ReadDrawn;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.locationtech.jts.geom.Geometry;

/** Keeps what a person says of a spot or of the ground about it, takes it back, and lists it. */
public record KeepDrawn(Session session) {
    /**
     * What a person says.
     *
     * @param kind what
     * @param reason why
     * @param person who
     * @param radiusMetres how far about the spot; empty for a usual spot
     * @param area the number or letter of an area; empty for all else
     */
    public record Said(
            PersonsOpinion.Kind kind,
            Optional<String> reason,
            Optional<String> person,
            Optional<Double> radiusMetres,
            Optional<String> area) {}

    /**
     * What is kept now, or was until now.
     *
     * @param day the day on which it was handed in
     * @param kept the piece of ground or the spot
     * @param before what was said of the same ground before; it counts no longer
     */
    public record Answer(CourseDay day, Kept kept, Optional<Kept> before) {}

    /** Keeps what is said of a spot on a green, said on the day that is asked about. */
    public Answer add(DayQuestion question, String holeId, Spot spot, Said said) {
        return session.decide(Right.SURVEY, stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            DrawnOnCourse all = stores.drawn().of(day.course().id());
            ReadDrawn.Item item = item(day, HoleChoice.hole(day.course(), holeId), spot, said);
            Optional<Kept> before = all.idOf(item).flatMap(all::find);
            DrawnOnCourse now = all.with(item);
            stores.drawn().add(day.course().id(), now);
            Kept kept = now.find(now.idOf(item).orElseThrow()).orElseThrow();
            return new Answer(day, kept, before);
        });
    }

    private static ReadDrawn.Item item(CourseDay day, Hole hole, Spot spot, Said said) {
        MapPoint at = SpotOnGreen.of(hole, day.policy(), spot);
        Geometry place =
                said.radiusMetres().map(radius -> DrawnItem.disc(at, radius)).orElseGet(() -> DrawnItem.spot(at));
        List<String> holes = day.course().onGreenOf(hole);
        PersonsOpinion word =
                new PersonsOpinion(said.kind(), said.reason(), said.person(), Optional.of(day.date()), said.area());
        return new ReadDrawn.Item(Optional.empty(), holes, word, place);
    }

    /** Takes back what is kept under an id. */
    public Answer remove(DayQuestion question, String id) {
        return session.decide(Right.SURVEY, stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            DrawnOnCourse all = stores.drawn().of(day.course().id());
            Kept gone = all.find(id).orElseThrow(() -> unknown(id, all));
            stores.drawn().add(day.course().id(), all.without(id));
            return new Answer(day, gone, Optional.empty());
        });
    }

    private static Problem unknown(String id, DrawnOnCourse all) {
        String ids = String.join(
                ", ", all.all().stream().map(kept -> kept.item().id()).toList());
        return Problem.of(
                Message.of("problem.drawn.unknownId", new Name(id)),
                "id",
                id,
                ids.isEmpty() ? Message.of("try.drawn.none") : Message.of("try.drawn.unknownId", new Name(ids)));
    }

    /**
     * What is kept.
     *
     * @param day the day that was asked about
     * @param kept the oldest first
     */
    public record Listed(CourseDay day, List<Kept> kept) {
        public Listed {
            kept = List.copyOf(kept);
        }
    }

    /** All that lies on some holes' greens; none named, or "all": on any. */
    public Listed list(DayQuestion question, List<String> holes) {
        return session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            List<Kept> all = stores.drawn().of(day.course().id()).all();
            if (holes.isEmpty() || holes.equals(List.of("all"))) {
                return new Listed(day, all);
            }
            holes.forEach(hole -> HoleChoice.hole(day.course(), hole));
            return new Listed(
                    day,
                    all.stream()
                            .filter(kept -> kept.holes().stream().anyMatch(holes::contains))
                            .toList());
        });
    }
}
