package org.cupwright.app.desk.training;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.KeptPerson;
import org.cupwright.app.storage.training.Learnt.Corrected;
import org.cupwright.app.storage.training.Learnt.SignedOff;
import org.cupwright.app.storage.training.Learnt.Trainer;
import org.cupwright.app.storage.training.Learnt.Withdrawn;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.storage.training.TrainingRecord.Somebody;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Name;

/** Says what people can do alone, for those who may; everything is written down beside what was there before. */
public record SignOff(Session session) {
    /** What a reason may be long: our choice, as much as fits a line or two. */
    public static final int LONGEST_REASON = 200;

    /**
     * What was written down, and how the person stands afterwards.
     *
     * @param person whom it is about
     * @param skill what it is about
     */
    public record Answer(TrainingRecord record, String person, Skill skill, Competence stands) {}

    /** Signs somebody off, from today or an earlier day on. */
    public Answer person(String name, Skill skill, Optional<LocalDate> from) {
        return decide(desk -> {
            Somebody person = desk.person(name);
            desk.signers().check(session.person(), person.name());
            LocalDate day = notAfterToday(desk, from.orElse(desk.day().today()));
            TrainingRecord kept = desk.keep(person, new SignedOff(skill, day));
            desk.writeDown(AuditKind.SIGNED_OFF, person, Optional.empty(), Optional.of(SkillWord.of(skill)));
            return answer(desk, kept, skill);
        });
    }

    /** Ends a sign-off from today on. */
    public Answer withdraw(String name, Skill skill, String reason) {
        String why = reason(reason);
        return decide(desk -> {
            Somebody person = desk.person(name);
            desk.signers().check(session.person(), person.name());
            if (!(desk.competences().of(person.name(), skill) instanceof Competence.Signed)) {
                throw TrainingProblems.of(
                        "notSigned", "name", person.name(), new Name(person.name()), SkillWord.of(skill));
            }
            TrainingRecord kept =
                    desk.keep(person, new Withdrawn(skill, desk.day().today(), why));
            desk.writeDown(AuditKind.SIGN_OFF_WITHDRAWN, person, Optional.of(SkillWord.of(skill)), Optional.empty());
            return answer(desk, kept, skill);
        });
    }

    /**
     * Puts a sign-off or its end right.
     *
     * @param day the day that was meant; empty: it should not have been written
     */
    public Answer correct(UUID id, Optional<LocalDate> day, String reason) {
        String why = reason(reason);
        return decide(desk -> {
            TrainingRecord wrong = desk.stores()
                    .training()
                    .find(id)
                    .filter(found -> found.learnt() instanceof SignedOff || found.learnt() instanceof Withdrawn)
                    .orElseThrow(() -> TrainingProblems.of("unknown", "record", id, new Name(id.toString())));
            desk.signers().check(session.person(), wrong.person().name());
            day.ifPresent(meant -> notAfterToday(desk, meant));
            TrainingRecord kept = desk.keep(wrong.person(), new Corrected(id, day, why));
            Optional<LocalDate> before = desk.competences()
                    .correctionOf(id)
                    .map(Corrected::day)
                    .orElseGet(() -> Optional.of(written(wrong)));
            desk.writeDown(AuditKind.TRAINING_CORRECTED, wrong.person(), before.map(Day::new), day.map(Day::new));
            return answer(desk, kept, skill(wrong));
        });
    }

    /** Says who may sign others off: a changer, besides the superintendents. */
    public TrainingRecord trainer(String name, boolean may) {
        return session.decide(Right.PEOPLE, stores -> {
            TrainingDesk desk = TrainingDesk.of(session, stores);
            KeptPerson changer = desk.changer(name);
            Somebody person = new Somebody(Optional.of(changer.id()), changer.name());
            TrainingRecord kept = desk.keep(person, new Trainer(may));
            desk.writeDown(
                    may ? AuditKind.TRAINER_NAMED : AuditKind.TRAINER_ENDED,
                    person,
                    Optional.empty(),
                    Optional.empty());
            return kept;
        });
    }

    private Answer decide(Function<TrainingDesk, Answer> work) {
        return session.decide(Right.RECORD, stores -> work.apply(TrainingDesk.of(session, stores)));
    }

    private static Answer answer(TrainingDesk desk, TrainingRecord kept, Skill skill) {
        String person = kept.person().name();
        Competences after = desk.day().competences(desk.stores());
        return new Answer(kept, person, skill, after.of(person, skill));
    }

    private static LocalDate notAfterToday(TrainingDesk desk, LocalDate day) {
        if (day.isAfter(desk.day().today())) {
            throw TrainingProblems.of("later", "date", day, new Day(day));
        }
        return day;
    }

    private static String reason(String said) {
        String reason = said.strip();
        if (reason.isEmpty()
                || reason.length() > LONGEST_REASON
                || reason.chars().anyMatch(Character::isISOControl)) {
            throw TrainingProblems.of("reason", "reason", "");
        }
        return reason;
    }

    private static Skill skill(TrainingRecord record) {
        return record.learnt() instanceof Withdrawn ended ? ended.skill() : ((SignedOff) record.learnt()).skill();
    }

    private static LocalDate written(TrainingRecord record) {
        return record.learnt() instanceof Withdrawn ended ? ended.day() : ((SignedOff) record.learnt()).day();
    }
}
