package org.cupwright.app.desk.training;

import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Learnt.Done;
import org.cupwright.app.storage.training.Learnt.Practised;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.storage.training.TrainingRecord.Somebody;
import org.cupwright.message.Message.Count;

/** Keeps what a learner did on a green, as a trainer saw it, and what somebody practised. */
public record RecordPractice(Session session) {
    /** More than that in a row nobody practises: our choice. */
    private static final int MOST = 999;

    /**
     * Keeps it.
     *
     * @param learner whom it is about; empty: whoever says it, who may practise alone but not judge himself
     */
    public TrainingRecord keep(Optional<String> learner, Learnt learnt) {
        return session.decide(Right.RECORD, stores -> {
            TrainingDesk desk = TrainingDesk.of(session, stores);
            Somebody person = learner.map(desk::person)
                    .orElseGet(() ->
                            new Somebody(session.person().id(), session.person().name()));
            if (learnt instanceof Done done) {
                done.hole().ifPresent(hole -> HoleChoice.hole(session.course(stores), hole));
                desk.signers().check(session.person(), person.name());
            } else if (learnt instanceof Practised practised) {
                checkCounts(practised);
                if (!isOneself(person)) {
                    desk.signers().check(session.person(), person.name());
                }
            } else {
                throw new IllegalArgumentException("no practice: " + learnt);
            }
            return desk.keep(person, learnt);
        });
    }

    private boolean isOneself(Somebody person) {
        return NameKey.of(person.name()).equals(NameKey.of(session.person().name()));
    }

    private static void checkCounts(Practised practised) {
        boolean sound = practised.last() >= 0 && practised.best() >= practised.last() && practised.best() <= MOST;
        if (!sound) {
            throw TrainingProblems.of("counts", "entry", practised.best(), new Count(MOST));
        }
    }
}
