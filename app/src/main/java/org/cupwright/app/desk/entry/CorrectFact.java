package org.cupwright.app.desk.entry;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.log.FactIds;
import org.cupwright.app.desk.log.MomentOfCorrection;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.Logbook;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** Says what an entry should have said, or that it should not be there. The entry itself stays as it was recorded. */
public final class CorrectFact {
    private final Session session;

    public CorrectFact(Session session) {
        this.session = session;
    }

    /**
     * What is changed of an entry; the rest stays.
     *
     * @param id the entry's id, or so much of its beginning that it is the only one
     * @param hole the hole it should have named
     * @param where the place it should have named
     * @param radiusMetres how far about the place the ground is meant
     * @param parts further parts by name
     * @param sure whether an entry that looks wrong is meant
     */
    public record Change(
            String id,
            Optional<String> hole,
            Optional<Spot> where,
            OptionalDouble radiusMetres,
            Map<String, String> parts,
            boolean sure) {
        public Change {
            parts = Map.copyOf(parts);
        }

        static Change none(String id) {
            return new Change(id, Optional.empty(), Optional.empty(), OptionalDouble.empty(), Map.of(), true);
        }

        private boolean isNothing() {
            return hole.isEmpty() && where.isEmpty() && parts.isEmpty();
        }
    }

    /**
     * A correction that is kept now.
     *
     * @param was the entry as it counted before
     * @param now the entry as it counts from now on; empty where it is withdrawn
     * @param remarks how what was typed was understood, where it could be understood otherwise
     */
    public record Answer(Course course, Policy policy, Fact was, Optional<Fact> now, UUID id, List<Message> remarks) {}

    /** Corrects what is named and leaves the rest. */
    public Answer correct(Change change) {
        if (change.isNothing()) {
            throw Problem.of("log.nothingToCorrect", "request", "");
        }
        return kept(change, (ground, fact) -> {
            Optional<Hole> hole = change.hole().or(fact::hole).map(id -> HoleChoice.hole(ground.course(), id));
            Correction correction =
                    Correction.to(fact.id(), changed(change, ground, fact, hole).finished());
            Fact kept = correcting(ground, fact, change.hole(), correction);
            FactQuestions.ask(ground.course(), checkable(kept, fact, hole), change.sure());
            return kept;
        });
    }

    /** Takes an entry out of what counts. */
    public Answer withdraw(String id) {
        return kept(
                Change.none(id),
                (ground, fact) -> correcting(ground, fact, Optional.empty(), Correction.withdrawing(fact.id())));
    }

    /** The course, the policy of the day of the fact, and all that was recorded of it. */
    private record Ground(Course course, Policy policy, List<Fact> all, MomentText moments) {}

    private interface Making {
        Fact of(Ground ground, Fact fact);
    }

    private Answer kept(Change change, Making making) {
        return session.decide(Right.RECORD, stores -> kept(stores, change, making));
    }

    private Answer kept(Stores stores, Change change, Making making) {
        Course course = session.course(stores);
        UUID id = FactIds.of(stores.facts(), course.id(), change.id());
        List<Fact> all = new ArrayList<>(withCorrections(stores, course, id));
        Fact was = find(all, id)
                .orElseThrow(() -> Problem.of("log.withdrawn", "entry", change.id(), new Name(change.id())));
        LocalDate day = LocalDate.ofInstant(was.happenedAt(), course.frame().zone());
        Ground ground = new Ground(
                course,
                stores.policies().history(course.id()).at(day),
                all,
                new MomentText(day, course.frame().zone()));
        Fact correction = making.of(ground, was);
        stores.facts().add(correction);
        all.add(correction);
        return new Answer(
                course,
                ground.policy(),
                was,
                find(all, id),
                correction.id(),
                ground.moments().remarks());
    }

    /** An entry with all that was ever said of it, and what happened at the same moment. */
    private static List<Fact> withCorrections(Stores stores, Course course, UUID id) {
        Instant when = stores.facts().find(id).orElseThrow().happenedAt();
        return stores.facts().between(course.id(), when, when.plusNanos(1));
    }

    /** An entry as it counts; empty when it is withdrawn. */
    private static Optional<Fact> find(List<Fact> all, UUID id) {
        return Logbook.of(all).facts().stream()
                .filter(fact -> fact.id().equals(id))
                .findFirst();
    }

    private static Draft changed(Change change, Ground ground, Fact fact, Optional<Hole> hole) {
        Draft draft = Draft.of(fact.payload());
        EntryPlace places = new EntryPlace(hole, ground.policy());
        PartText texts = new PartText(places::typed, ground.moments());
        change.parts().forEach((name, text) -> {
            Part part = draft.form().part(name);
            draft.set(part.name(), texts.typed(part, text));
        });
        change.where().ifPresent(where -> places.into(draft, where, change.radiusMetres()));
        return draft;
    }

    /** A correction counts from when its fact happened. */
    private Fact correcting(Ground ground, Fact of, Optional<String> hole, Correction says) {
        Instant now = MomentOfCorrection.on(of, ground.all(), session.now());
        return new Fact(
                session.ids().get(),
                Fact.CURRENT_VERSION,
                of.happenedAt(),
                now,
                Optional.empty(),
                session.person().name(),
                of.course(),
                hole,
                says);
    }

    /** A correction that names no hole is asked about as of the hole of its fact. */
    private static Fact checkable(Fact correction, Fact of, Optional<Hole> hole) {
        return new Fact(
                correction.id(),
                correction.version(),
                correction.happenedAt(),
                correction.recordedAtDevice(),
                Optional.empty(),
                correction.person(),
                of.course(),
                hole.map(Hole::id),
                correction.payload());
    }
}
