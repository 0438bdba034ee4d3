package org.cupwright.app.desk.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.log.FactIds;
import org.cupwright.app.desk.log.MomentOfCorrection;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.Correction;
import org.cupwright.cupchange.Fact;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** Says what an entry should have said, or that it should not be there. The entry itself stays as it was recorded. */
public record CorrectFact(Session session) {
    /**
     * What is changed of an entry; the rest stays.
     *
     * @param id the entry's id, or so much of its beginning that it is the only one
     * @param hole the hole it should have named
     * @param says what it should have said
     * @param sure whether an entry that looks wrong is meant
     */
    public record Change(String id, Optional<String> hole, Optional<Says> says, boolean sure) {}

    /**
     * A correction that is kept now.
     *
     * @param correction its id
     * @param was the entry as it counted before
     * @param now the entry as it counts from now on; empty where it is withdrawn
     * @param remarks how what was typed was understood, where it could be understood otherwise
     */
    public record Answer(
            Course course, Policy policy, UUID correction, Fact was, Optional<Fact> now, List<Message> remarks) {}

    /**
     * An entry that may be put right.
     *
     * @param was it as it counts
     */
    public record Standing(Course course, Policy policy, Fact was) {}

    /** The entry as it counts now. */
    public Standing standing(String id) {
        return session.read(stores -> {
            Ground ground = ground(stores, id);
            return new Standing(ground.course(), ground.policy(), ground.was());
        });
    }

    /** Corrects what is named and leaves the rest. */
    public Answer correct(Change change) {
        if (change.hole().isEmpty() && change.says().isEmpty()) {
            throw Problem.of("log.nothingToCorrect", "request", "");
        }
        return session.decide(Right.RECORD, stores -> {
            Ground ground = ground(stores, change.id());
            Fact was = ground.was();
            Optional<Hole> hole = change.hole().or(was::hole).map(id -> HoleChoice.hole(ground.course(), id));
            Says.Said said = change.says()
                    .map(says -> says.on(ground.occasion(hole)))
                    .orElseGet(() -> new Says.Said(was.payload(), Optional.empty(), List.of()));
            Correction correction = Correction.to(was.id(), said.payload());
            UUID id = session.ids().get();
            // one that names no hole is asked about as of the hole of its fact
            Fact asked = correcting(id, ground, hole.map(Hole::id), correction);
            FactQuestions.ask(ground.course(), asked, change.sure());
            return kept(stores, ground, correcting(id, ground, change.hole(), correction), said.remarks());
        });
    }

    /** Takes an entry out of what counts. */
    public Answer withdraw(String id) {
        return session.decide(Right.RECORD, stores -> {
            Ground ground = ground(stores, id);
            Correction correction = Correction.withdrawing(ground.was().id());
            Fact withdrawal = correcting(session.ids().get(), ground, Optional.empty(), correction);
            return kept(stores, ground, withdrawal, List.of());
        });
    }

    /** The course, the policy of the day of the fact, and all that was recorded of it. */
    private record Ground(Course course, Policy policy, LocalDate day, FactIds.Found found, Fact was) {
        Says.Occasion occasion(Optional<Hole> hole) {
            return new Says.Occasion(course, policy, day, hole, Optional.of(was.payload()), Optional.empty());
        }
    }

    private Ground ground(Stores stores, String id) {
        Course course = session.course(stores);
        FactIds.Found found = FactIds.of(stores.facts(), course.id(), id);
        Fact was = found.counting();
        LocalDate day = LocalDate.ofInstant(was.happenedAt(), course.frame().zone());
        return new Ground(course, stores.policies().history(course.id()).at(day), day, found, was);
    }

    private static Answer kept(Stores stores, Ground ground, Fact correction, List<Message> remarks) {
        stores.facts().add(correction);
        return new Answer(
                ground.course(),
                ground.policy(),
                correction.id(),
                ground.was(),
                ground.found().with(correction),
                remarks);
    }

    /** A correction counts from when its fact happened. */
    private Fact correcting(UUID id, Ground ground, Optional<String> hole, Correction says) {
        Fact of = ground.was();
        return new Fact(
                id,
                Fact.CURRENT_VERSION,
                of.happenedAt(),
                MomentOfCorrection.on(of, ground.found().all(), session.now()),
                Optional.empty(),
                session.person().name(),
                of.course(),
                hole,
                says);
    }
}
