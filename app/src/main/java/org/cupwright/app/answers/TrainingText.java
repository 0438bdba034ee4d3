package org.cupwright.app.answers;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.training.Competence;
import org.cupwright.app.desk.training.ShowTraining.All;
import org.cupwright.app.desk.training.ShowTraining.History;
import org.cupwright.app.desk.training.ShowTraining.One;
import org.cupwright.app.desk.training.ShowTraining.Stands;
import org.cupwright.app.desk.training.SignOff;
import org.cupwright.app.desk.training.SkillWord;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Day;
import org.cupwright.message.Message.Moment;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;

/**
 * What people learnt and may do, in words.
 *
 * @param zone by whose clock moments are told
 */
public record TrainingText(Texts texts, ZoneId zone, Lines lines) {
    public TrainingText(Texts texts, ZoneId zone) {
        this(texts, zone, new Lines(texts));
    }

    public Lines list(All all) {
        if (all.people().isEmpty()) {
            lines.say("training.nobody");
        }
        all.people().forEach(this::one);
        return lines.say("training.caution");
    }

    public Lines history(History history) {
        one(history.person());
        records(history).forEach(lines::line);
        return lines;
    }

    public Lines signed(SignOff.Answer answer) {
        lines.line(said(
                "training.row",
                new Name(answer.person()),
                new Translated(SkillWord.key(answer.skill())),
                new Name(stands(answer.stands()))));
        return lines.say("training.caution");
    }

    public Lines trainer(TrainingRecord record) {
        return lines.line(record(record));
    }

    private void one(One one) {
        lines.line(one.trainer() ? texts.say("training.trainer", one.name()) : one.name());
        one.skills().forEach(stands -> lines.indented("", row(stands)));
    }

    /** A skill, and how somebody stands with it. */
    public String row(Stands stands) {
        return said(
                "training.skillRow", new Translated(SkillWord.key(stands.skill())), new Name(stands(stands.stands())));
    }

    /** How somebody stands with a skill. */
    public String stands(Competence stands) {
        if (stands instanceof Competence.Signed signed) {
            return said(
                    "training.stands." + EnumNames.lowerCamel(signed.state()),
                    new Day(signed.day()),
                    by(signed.by()),
                    new Day(signed.refresher()));
        }
        return stands instanceof Competence.Ended ended
                ? said("training.stands.ended", new Day(ended.day()), by(ended.by()), new Name(ended.reason()))
                : texts.say("training.stands.notYet");
    }

    /** The same in as few words as fit into a table. */
    public String cell(Competence stands) {
        if (stands instanceof Competence.Signed signed) {
            return said("training.cell." + EnumNames.lowerCamel(signed.state()), new Day(signed.refresher()));
        }
        return texts.say(stands instanceof Competence.Ended ? "training.cell.ended" : "training.cell.notYet");
    }

    /** What is overdue or soon due, a sentence each. */
    public List<String> due(All all) {
        return all.people().stream()
                .flatMap(one -> one.skills().stream()
                        .filter(TrainingText::isDue)
                        .map(stands -> said(
                                "training.row",
                                new Name(one.name()),
                                new Translated(SkillWord.key(stands.skill())),
                                new Name(stands(stands.stands())))))
                .toList();
    }

    private static boolean isDue(Stands stands) {
        return stands.stands() instanceof Competence.Signed signed && signed.state() != Competence.State.GOOD;
    }

    /** All that was written down about somebody, a sentence each, with what was put right. */
    public List<String> records(History history) {
        return history.records().stream().map(record -> record(history, record)).toList();
    }

    /** A record, and beside it what was put right. */
    public String record(History history, TrainingRecord record) {
        String says = record(record);
        return history.correctionOf(record)
                .map(right -> says + " "
                        + right.day()
                                .map(day -> said("training.corrected", new Day(day), new Name(right.reason())))
                                .orElseGet(() -> texts.say("training.takenBack", right.reason())))
                .orElse(says);
    }

    private String record(TrainingRecord record) {
        Argument when = new Moment(record.at(), zone);
        Argument by = by(record.by().name());
        Learnt learnt = record.learnt();
        if (learnt instanceof Learnt.Done done) {
            return done(done, when, by);
        }
        if (learnt instanceof Learnt.Practised practised) {
            Argument exercise = new Translated(SkillWord.key(practised.exercise()));
            return said(
                    "training.record.practised",
                    when,
                    by,
                    exercise,
                    new Count(practised.best()),
                    new Count(practised.last()));
        }
        if (learnt instanceof Learnt.SignedOff signed) {
            return said("training.record.signedOff", when, by, skill(signed.skill()), new Day(signed.day()));
        }
        if (learnt instanceof Learnt.Withdrawn ended) {
            Argument reason = new Name(ended.reason());
            return said("training.record.withdrawn", when, by, skill(ended.skill()), new Day(ended.day()), reason);
        }
        if (learnt instanceof Learnt.Trainer trainer) {
            Argument whom = new Name(record.person().name());
            return said(trainer.may() ? "training.record.trainer" : "training.record.trainerNot", when, by, whom);
        }
        return said("training.record.corrected", when, by);
    }

    private String done(Learnt.Done done, Argument when, Argument by) {
        Argument how = new Translated(SkillWord.key(done.how()));
        Optional<Argument> hole = done.hole().map(Name::new);
        return hole.map(where -> said("training.record.done", when, by, skill(done.skill()), how, where))
                .orElseGet(() -> said("training.record.doneAnywhere", when, by, skill(done.skill()), how));
    }

    private static Argument skill(Skill skill) {
        return new Translated(SkillWord.key(skill));
    }

    private Argument by(String name) {
        return new Name(name.isEmpty() ? texts.say("audit.nobody") : name);
    }

    private String said(String key, Argument... about) {
        return texts.say(new Message(key, List.of(about)));
    }
}
