package org.cupwright.app.desk.training;

import java.time.LocalDate;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Learnt.SignedOff;
import org.cupwright.app.storage.training.Learnt.Withdrawn;

/** How somebody stands with a skill. */
public sealed interface Competence {
    /** Whether the person may do it alone. */
    default boolean counts() {
        return false;
    }

    /** Nobody has signed it off. */
    record NotYet() implements Competence {}

    /**
     * It is signed off.
     *
     * @param day from when on
     * @param by who says so
     * @param refresher the last day on which it counts without being looked at again
     * @param state on the day that is asked about
     */
    record Signed(LocalDate day, String by, LocalDate refresher, State state) implements Competence {
        @Override
        public boolean counts() {
            return state != State.OVERDUE;
        }
    }

    /** It was signed off and counts no more. */
    record Ended(LocalDate day, String by, String reason) implements Competence {}

    /** Of what is signed off. */
    enum State {
        GOOD,
        /** The refresher is due within a month: our choice. */
        DUE,
        /** Its day is past. */
        OVERDUE
    }

    /** What follows, on a day, from the latest that was decided; whatever else it is says nothing of a skill. */
    static Competence of(Learnt latest, String by, LocalDate today, int refresherMonths) {
        if (latest instanceof SignedOff signed) {
            LocalDate refresher = signed.day().plusMonths(refresherMonths);
            return new Signed(signed.day(), by, refresher, state(refresher, today));
        }
        return latest instanceof Withdrawn ended ? new Ended(ended.day(), by, ended.reason()) : new NotYet();
    }

    private static State state(LocalDate refresher, LocalDate today) {
        if (today.isAfter(refresher)) {
            return State.OVERDUE;
        }
        return today.isAfter(refresher.minusMonths(1)) ? State.DUE : State.GOOD;
    }
}
