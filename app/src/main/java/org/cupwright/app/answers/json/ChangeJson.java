package org.cupwright.app.answers.json;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.plan.ChangeWeeks;
import org.cupwright.app.desk.plan.ChangedHole;
import org.cupwright.app.desk.plan.UndoChange;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.weeks.Evenness;
import tools.jackson.databind.JsonNode;

/** Changed plans, and a change that was taken back, as scripts read them. */
public final class ChangeJson {
    private static final String WHY = "change.why.";

    private final Course course;
    private final PlaceShapes places;
    private final Shapes shapes;

    public ChangeJson(Course course, Policy policy, Texts texts) {
        this.course = course;
        this.places = new PlaceShapes(course, policy);
        this.shapes = new Shapes(texts).as(ChangedHole.class, this::hole).as(Evenness.class, ChangeJson::evenness);
    }

    public JsonNode changed(ChangeWeeks.Answer answer) {
        boolean any = !answer.changes().isEmpty();
        return shapes.tree(new Shape()
                .with("course", course.id())
                .with("undone", Optional.empty())
                .with("days", answer.stored().stream().map(StoredPlan::date).toList())
                .with("standing", answer.standing())
                .with("changes", answer.changes())
                .with("before", any ? Optional.of(answer.before()) : Optional.empty())
                .with("after", any ? Optional.of(answer.after()) : Optional.empty()));
    }

    public JsonNode undone(UndoChange.Answer answer) {
        return shapes.tree(new Shape()
                .with("course", course.id())
                .with(
                        "undone",
                        new Shape()
                                .with("person", answer.change().person())
                                .with("at", answer.change().at().toString()))
                .with("days", answer.change().days())
                .with("standing", List.of())
                .with("changes", answer.holes())
                .with("before", Optional.empty())
                .with("after", Optional.empty()));
    }

    private Shape hole(ChangedHole hole) {
        return new Shape()
                .with("date", hole.date())
                .with("hole", hole.hole())
                .with("from", hole.from().map(this::place))
                .with("to", hole.to().map(this::place))
                .with("cause", cause(hole.why()))
                .with("why", hole.why());
    }

    /** The cause by a plain name of its own, for programs. */
    private static String cause(Message why) {
        return why.key().substring(WHY.length());
    }

    private Shape place(StoredHole hole) {
        return places.at(hole.position());
    }

    private static Shape evenness(Evenness evenness) {
        return new Shape()
                .with("thirdsOff", evenness.thirdsOff())
                .with("leftRight", evenness.leftRight())
                .with("lateral", evenness.lateral())
                .with("difficulty", evenness.difficulty())
                .with("hardestOffPercent", evenness.hardestOffPercent());
    }
}
