package org.cupwright.app.office.training;

import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.answers.TrainingText;
import org.cupwright.app.desk.training.Competence;
import org.cupwright.app.desk.training.ShowTraining.All;
import org.cupwright.app.desk.training.ShowTraining.History;
import org.cupwright.app.desk.training.ShowTraining.One;
import org.cupwright.app.desk.training.SkillWord;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.texts.Texts;

/** Training in the words and the order of its pages. */
public record TrainingView(Texts texts) {
    /** Practice is shown as far back as that: the command has all of it. Our choice. */
    private static final int MOST_LINES = 60;

    /**
     * Everybody.
     *
     * @param skills what there is to be signed off for
     * @param people by skills
     * @param due what is overdue or soon due, a sentence each
     * @param changers who may be named a trainer
     */
    record Everybody(List<Choice> skills, List<Row> people, List<String> due, List<String> changers, boolean maySign) {}

    /** Something to choose: its value, its name, and what it takes. */
    public record Choice(String value, String says, String takes) {}

    /** Somebody: how that person stands, skill by skill. */
    record Row(String name, boolean trainer, List<Cell> cells) {}

    /**
     * How somebody stands with a skill.
     *
     * @param skill its name
     * @param says in few words
     * @param wholly in a sentence
     * @param bad whether it is overdue or withdrawn
     */
    public record Cell(String skill, String says, String wholly, boolean bad) {}

    /** Somebody's records. */
    public record Person(String name, List<Cell> cells, List<Choice> skills, List<Record> records, boolean maySign) {}

    /**
     * A record.
     *
     * @param id of one that can be put right; empty of others
     */
    public record Record(String says, String id) {}

    Everybody of(All all) {
        TrainingText text = new TrainingText(texts, all.zone());
        return new Everybody(
                skills(),
                all.people().stream()
                        .map(one -> new Row(one.name(), one.trainer(), cells(one, text)))
                        .toList(),
                text.due(all),
                all.changers(),
                all.maySign());
    }

    public Person of(History history) {
        TrainingText text = new TrainingText(texts, history.zone());
        One one = history.person();
        List<Record> records = history.records().stream()
                .limit(MOST_LINES)
                .map(record -> new Record(text.record(history, record), correctable(record)))
                .toList();
        return new Person(one.name(), cells(one, text), skills(), records, history.maySign());
    }

    private static String correctable(TrainingRecord record) {
        boolean may = record.learnt() instanceof Learnt.SignedOff || record.learnt() instanceof Learnt.Withdrawn;
        return may ? record.id().toString() : "";
    }

    private List<Choice> skills() {
        return Stream.of(Skill.values())
                .map(skill ->
                        new Choice(skill.name(), texts.say(SkillWord.key(skill)), texts.say(SkillWord.takes(skill))))
                .toList();
    }

    private List<Cell> cells(One one, TrainingText text) {
        return one.skills().stream()
                .map(stands -> new Cell(
                        texts.say(SkillWord.key(stands.skill())),
                        text.cell(stands.stands()),
                        text.stands(stands.stands()),
                        isBad(stands.stands())))
                .toList();
    }

    private static boolean isBad(Competence stands) {
        return stands instanceof Competence.Ended
                || stands instanceof Competence.Signed signed && signed.state() == Competence.State.OVERDUE;
    }
}
