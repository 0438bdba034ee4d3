package org.cupwright.app.store.sqlite;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.storage.training.Exercise;
import org.cupwright.app.storage.training.HowWell;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.storage.training.TrainingRecord.Somebody;

/** Invented records of training, one of each kind. */
final class TrainingMade {
    static final Instant THEN = Instant.parse("2026-06-20T04:00:00.25Z");
    static final LocalDate DAY = LocalDate.of(2026, 6, 20);
    static final String LEARNER = "Kim Ås";

    private TrainingMade() {}

    static List<TrainingRecord> all() {
        return List.of(
                record(1, new Learnt.Done(Skill.CUTTING, HowWell.WITH_HELP, DAY, Optional.of("7"))),
                record(2, new Learnt.Practised(Exercise.LEVEL_PLUGS, DAY, 10, 3)),
                record(3, new Learnt.SignedOff(Skill.EVENT_HOLES, DAY)),
                record(4, new Learnt.Withdrawn(Skill.EVENT_HOLES, DAY, "an invented reason")),
                record(5, new Learnt.Trainer(true)),
                record(6, new Learnt.Corrected(new UUID(3, 3), Optional.of(DAY.minusDays(1)), "an invented slip")));
    }

    private static TrainingRecord record(int number, Learnt learnt) {
        Somebody ida = new Somebody(Optional.of(new UUID(7, 1)), "Ida Ås");
        return new TrainingRecord(
                new UUID(3, number), THEN, THEN, new Somebody(Optional.empty(), LEARNER), ida, "made", learnt);
    }
}
