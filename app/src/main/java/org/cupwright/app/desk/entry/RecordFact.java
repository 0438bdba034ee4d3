package org.cupwright.app.desk.entry;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.log.DayEntries;
import org.cupwright.app.desk.log.PhotoReading;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;
import tools.jackson.databind.node.JsonNodeFactory;

/** Keeps an entry in the logbook. When the answer is there, it is on the disk. */
public final class RecordFact {
    /**
     * The time of entries of another day that name none (our choice: cups are changed before play; the day is what
     * matters).
     */
    private static final LocalTime MORNING = LocalTime.of(5, 0);

    private static final String CUT_AT = "cutAt";

    private final Session session;

    public RecordFact(Session session) {
        this.session = session;
    }

    /** The course and what was read of it. */
    private record Ground(
            Course course,
            Policy policy,
            LocalDate day,
            Optional<StoredPlan> plan,
            DayEntries entries,
            MomentText moments) {
        ZoneId zone() {
            return course.frame().zone();
        }
    }

    /** Keeps the entry, one fact for each hole it names, all of them or none. */
    public Answer record(Entry entry) {
        EntryForm form = EntryForm.of(entry.kind());
        if (entry.photo().isPresent() && form.find(Photo.PART).isEmpty()) {
            throw Problem.of("log.takesNoPhoto", "photo", "", new Name(EntryForm.typed(form.kind())));
        }
        Optional<Photo> photo = entry.photo().map(PhotoReading::read);
        return session.decide(Right.RECORD, stores -> {
            Ground ground = ground(stores, entry);
            List<Fact> facts = holes(ground, entry).stream()
                    .map(hole -> fact(form, entry, photo, ground, hole))
                    .toList();
            facts.forEach(fact -> FactQuestions.ask(ground.course(), fact, entry.sure()));
            if (!entry.sure()) {
                ClockBehind.ask(stores.facts(), ground.course(), session.now());
            }
            List<Message> remarks = new ArrayList<>(ground.moments().remarks());
            facts.forEach(fact -> StopRemark.about(fact, stores.facts(), ground.policy(), ground.zone())
                    .ifPresent(remarks::add));
            photo.ifPresent(stores.photos()::add);
            facts.forEach(stores.facts()::add);
            return new Answer(ground.course(), ground.policy(), facts, remarks);
        });
    }

    /**
     * Facts that are kept now.
     *
     * @param remarks how what was typed was understood, where it could be understood otherwise
     */
    public record Answer(Course course, Policy policy, List<Fact> facts, List<Message> remarks) {}

    private Ground ground(Stores stores, Entry entry) {
        Course course = session.course(stores);
        LocalDate day = entry.day().orElseGet(() -> CourseToday.of(course, session.clock()));
        Policy policy = stores.policies().history(course.id()).at(day);
        Optional<StoredPlan> plan = entry.asPlanned()
                ? Optional.of(PlanChoice.plan(stores, course, day))
                : stores.plans().find(course.id(), day);
        MomentText moments = new MomentText(day, course.frame().zone());
        return new Ground(course, policy, day, plan, DayEntries.of(stores, course, day), moments);
    }

    private static List<Optional<Hole>> holes(Ground ground, Entry entry) {
        if (entry.holes().isEmpty()) {
            return List.of(Optional.empty());
        }
        if (entry.holes().equals(List.of("all"))) {
            return all(ground, entry);
        }
        return entry.holes().stream()
                .map(id -> Optional.of(HoleChoice.hole(ground.course(), id)))
                .toList();
    }

    /** Every hole of the course; cut as planned, those of the plan that nobody has said anything about yet. */
    private static List<Optional<Hole>> all(Ground ground, Entry entry) {
        List<Optional<Hole>> holes = ground.course().holes().stream()
                .filter(hole -> !entry.asPlanned() || planned(ground, hole).isPresent())
                .filter(hole -> !entry.asPlanned()
                        || ground.entries().cutOrLeft(hole.id()).isEmpty())
                .map(Optional::of)
                .toList();
        if (holes.isEmpty()) {
            throw Problem.of("log.allEntered", "hole", "all", new Day(ground.day()));
        }
        return holes;
    }

    private Fact fact(EntryForm form, Entry entry, Optional<Photo> photo, Ground ground, Optional<Hole> hole) {
        Instant now = session.now();
        Payload payload = payload(draft(form, photo), entry, ground, hole);
        if (payload.needsHole() && hole.isEmpty()) {
            throw Problem.of("log.needsHole", "hole", "", new Name(EntryForm.typed(form.kind())));
        }
        ground.entries().ask(payload, hole, entry.sure());
        return new Fact(
                session.ids().get(),
                Fact.CURRENT_VERSION,
                happened(entry, ground, now),
                now,
                Optional.empty(),
                session.person().name(),
                ground.course().id(),
                hole.map(Hole::id),
                payload);
    }

    private static Instant happened(Entry entry, Ground ground, Instant now) {
        ZoneId zone = ground.course().frame().zone();
        boolean today = LocalDate.ofInstant(now, zone).equals(ground.day());
        return entry.when().map(ground.moments()::read).orElseGet(() -> today ? now : morning(ground, zone));
    }

    /**
     * The morning of a day; after what is entered of that morning already, so that the later entry counts as the later.
     */
    private static Instant morning(Ground ground, ZoneId zone) {
        Instant morning = ground.day().atTime(MORNING).atZone(zone).toInstant();
        return ground.entries()
                .last(morning, morning.plus(Duration.ofHours(1)))
                .map(last -> last.plusSeconds(1))
                .orElse(morning);
    }

    private static Draft draft(EntryForm form, Optional<Photo> photo) {
        Draft draft = Draft.empty(form);
        photo.ifPresent(taken -> draft.set(Photo.PART, JsonNodeFactory.instance.stringNode(taken.hash())));
        return draft;
    }

    private static Payload payload(Draft draft, Entry entry, Ground ground, Optional<Hole> hole) {
        EntryForm form = draft.form();
        EntryPlace places = new EntryPlace(hole, ground.policy());
        PartText texts = new PartText(places::typed, ground.moments());
        entry.parts().forEach((name, text) -> {
            Part part = form.part(name);
            draft.set(part.name(), texts.typed(part, text));
        });
        entry.where().ifPresent(where -> places.into(draft, where, entry.radiusMetres()));
        if (form.find(CUT_AT).isPresent()) {
            takePlan(draft, entry, ground, hole);
        } else if (entry.asPlanned()) {
            throw Problem.of("log.noPlace", "asPlanned", "", new Name(EntryForm.typed(form.kind())));
        }
        draft.fillIn(ground.day());
        return draft.finished();
    }

    /** Where the plan had the hole is kept beside where it was cut. */
    private static void takePlan(Draft draft, Entry entry, Ground ground, Optional<Hole> hole) {
        Optional<MapPoint> planned = hole.flatMap(known -> planned(ground, known));
        if (entry.asPlanned()) {
            Hole known = hole.orElseThrow(() -> Problem.of(
                    "log.needsHole",
                    "hole",
                    "",
                    new Name(EntryForm.typed(draft.form().kind()))));
            draft.set(CUT_AT, PartText.point(planned.orElseThrow(() -> PlanChoice.leftOut(known.id(), ground.day()))));
        }
        if (!draft.says("planned")) {
            planned.ifPresent(point -> draft.set("planned", PartText.point(point)));
        }
    }

    private static Optional<MapPoint> planned(Ground ground, Hole hole) {
        return ground.plan()
                .flatMap(plan -> plan.find(hole.id()))
                .map(StoredHole::position)
                .map(position -> position.judgement().position());
    }
}
