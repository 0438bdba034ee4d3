package org.cupwright.app.answers.json;

import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.drawn.KeepDrawn.Answer;
import org.cupwright.app.desk.drawn.KeepDrawn.Listed;
import org.cupwright.app.storage.DrawnOnCourse.Kept;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.DrawnItem;
import tools.jackson.databind.JsonNode;

/** Ground that people drew as scripts read it. */
public final class DrawnJson {
    private final CourseDay day;
    private final PlaceShapes places;
    private final Shapes shapes;

    public DrawnJson(CourseDay day, Texts texts) {
        this.day = day;
        this.places = new PlaceShapes(day.course(), day.policy());
        this.shapes = new Shapes(texts).as(Kept.class, this::kept);
    }

    public JsonNode of(Answer answer) {
        return shapes.tree(kept(answer.kept()).with("course", day.course().id()).with("before", answer.before()));
    }

    public JsonNode list(Listed listed) {
        return shapes.tree(new Shape().with("course", day.course().id()).with("drawn", listed.kept()));
    }

    private Shape kept(Kept kept) {
        DrawnItem item = kept.item();
        return new Shape()
                .with("id", item.id())
                .with("holes", kept.holes())
                .with("word", item.word())
                .with("position", places.at(kept.holes().get(0), item.middle()))
                .with("areaSquareMetres", item.areaSquareMetres());
    }
}
