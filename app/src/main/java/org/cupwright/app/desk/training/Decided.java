package org.cupwright.app.desk.training;

import java.time.LocalDate;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Learnt.SignedOff;
import org.cupwright.app.storage.training.Learnt.Withdrawn;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;

/**
 * A sign-off or its end as it counts, corrections taken in.
 *
 * @param record as it was written down
 * @param skill of what
 * @param day as it counts
 */
record Decided(TrainingRecord record, Skill skill, LocalDate day) {
    /** What it says, of the day that counts. */
    Learnt learnt() {
        return record.learnt() instanceof Withdrawn ended
                ? new Withdrawn(skill, day, ended.reason())
                : new SignedOff(skill, day);
    }
}
