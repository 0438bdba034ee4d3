package org.cupwright.app.answers.json;

import java.util.UUID;
import org.cupwright.app.desk.training.Competence;
import org.cupwright.app.desk.training.ShowTraining.All;
import org.cupwright.app.desk.training.ShowTraining.History;
import org.cupwright.app.desk.training.ShowTraining.One;
import org.cupwright.app.desk.training.ShowTraining.Stands;
import org.cupwright.app.desk.training.SignOff;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.JsonNode;

/** What people learnt and may do, as scripts read it. */
public final class TrainingJson {
    private final Shapes shapes;

    public TrainingJson(Texts texts) {
        this.shapes = new Shapes(texts)
                .as(UUID.class, UUID::toString)
                .as(One.class, TrainingJson::shape)
                .as(Stands.class, TrainingJson::shape)
                .as(TrainingRecord.class, TrainingJson::shape);
    }

    public JsonNode list(All all) {
        return shapes.tree(new Shape().with("date", all.today()).with("people", all.people()));
    }

    public JsonNode history(History history) {
        return shapes.tree(new Shape()
                .with("date", history.today())
                .with("person", history.person())
                .with("records", history.records()));
    }

    public JsonNode answer(SignOff.Answer answer) {
        return shapes.tree(new Shape()
                .with("person", answer.person())
                .with("stands", new Stands(answer.skill(), answer.stands()))
                .with("record", answer.record()));
    }

    public JsonNode record(TrainingRecord record) {
        return shapes.tree(record);
    }

    private static Shape shape(One one) {
        return new Shape()
                .with("name", one.name())
                .with("trainer", one.trainer())
                .with("skills", one.skills());
    }

    private static Shape shape(Stands stands) {
        Shape shape = new Shape().with("skill", stands.skill());
        if (stands.stands() instanceof Competence.Signed signed) {
            return shape.with("stands", signed.state())
                    .with("counts", signed.counts())
                    .with("day", signed.day())
                    .with("by", signed.by())
                    .with("refresher", signed.refresher());
        }
        if (stands.stands() instanceof Competence.Ended ended) {
            return shape.with("stands", "ended")
                    .with("counts", false)
                    .with("day", ended.day())
                    .with("by", ended.by())
                    .with("reason", ended.reason());
        }
        return shape.with("stands", "notYet").with("counts", false);
    }

    private static Shape shape(TrainingRecord record) {
        Shape shape = new Shape()
                .with("id", record.id())
                .with("at", record.at())
                .with("recordedAt", record.recordedAt())
                .with("person", record.person().name())
                .with("by", record.by().name())
                .with("course", record.course())
                .with("what", what(record.learnt()));
        Learnt learnt = record.learnt();
        if (learnt instanceof Learnt.Done done) {
            return shape.with("skill", done.skill())
                    .with("how", done.how())
                    .with("day", done.day())
                    .with("hole", done.hole());
        }
        if (learnt instanceof Learnt.Practised practised) {
            return shape.with("exercise", practised.exercise())
                    .with("day", practised.day())
                    .with("best", practised.best())
                    .with("last", practised.last());
        }
        if (learnt instanceof Learnt.SignedOff signed) {
            return shape.with("skill", signed.skill()).with("day", signed.day());
        }
        if (learnt instanceof Learnt.Withdrawn ended) {
            return shape.with("skill", ended.skill()).with("day", ended.day()).with("reason", ended.reason());
        }
        return decided(learnt, shape);
    }

    private static Shape decided(Learnt learnt, Shape shape) {
        if (learnt instanceof Learnt.Corrected corrected) {
            return shape.with("of", corrected.of()).with("day", corrected.day()).with("reason", corrected.reason());
        }
        return shape.with("may", ((Learnt.Trainer) learnt).may());
    }

    private static String what(Learnt learnt) {
        String name = learnt.getClass().getSimpleName();
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }
}
