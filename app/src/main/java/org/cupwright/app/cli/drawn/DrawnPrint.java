package org.cupwright.app.cli.drawn;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.PositionJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.drawn.KeepDrawn.Answer;
import org.cupwright.app.desk.drawn.KeepDrawn.Listed;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.storage.DrawnOnCourse.Kept;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.EnumNames;
import tools.jackson.databind.node.ObjectNode;

/** Ground that people drew, as pages and as JSON. */
final class DrawnPrint {
    private static final int ID_WIDTH = 14;
    private static final int KIND_WIDTH = 22;
    private static final int PLACE_WIDTH = 42;

    private final Task task;
    private final Texts texts;

    DrawnPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void kept(Answer answer) {
        if (task.options().json()) {
            task.print(Json.document(json(answer)));
            return;
        }
        Kept kept = answer.kept();
        task.print(texts.say("drawn.kept", kept.item().id(), what(kept.item()), where(answer.day(), kept)));
        answer.before()
                .ifPresent(before -> task.print("  "
                        + texts.say("drawn.replaced", who(before.item().word()).strip())));
    }

    void takenBack(Answer answer) {
        Kept gone = answer.kept();
        task.print(
                task.options().json()
                        ? Json.document(json(answer))
                        : texts.say("drawn.takenBack", gone.item().id(), what(gone.item()), where(answer.day(), gone)));
    }

    void list(Listed listed) {
        if (task.options().json()) {
            ObjectNode node = Json.object();
            node.put("course", listed.day().course().id());
            node.set(
                    "drawn",
                    Json.array(listed.kept().stream()
                            .map(kept -> json(listed.day(), kept))
                            .toList()));
            task.print(Json.document(node));
            return;
        }
        if (listed.kept().isEmpty()) {
            task.print(texts.say("drawn.none"));
        }
        listed.kept().forEach(kept -> row(listed.day(), kept).forEach(task::print));
    }

    private List<String> row(CourseDay day, Kept kept) {
        List<String> lines = new ArrayList<>();
        lines.add((Layout.left(kept.item().id(), ID_WIDTH)
                        + Layout.left(what(kept.item()), KIND_WIDTH)
                        + Layout.left(where(day, kept), PLACE_WIDTH))
                .stripTrailing());
        String who = who(kept.item().word());
        if (!who.isBlank()) {
            lines.addAll(Layout.wrapped(" ".repeat(ID_WIDTH), who.strip()));
        }
        return lines;
    }

    /** {@code bad ground, 19.6 m²}. */
    private String what(DrawnItem item) {
        String kind = texts.say("drawn." + EnumNames.lowerCamel(item.word().kind()));
        return item.areaSquareMetres()
                .map(area -> kind + ", " + texts.area(area))
                .orElse(kind);
    }

    /** Why, who and when, as far as they are known. */
    private String who(PersonsOpinion word) {
        List<String> parts = new ArrayList<>();
        word.person().ifPresent(parts::add);
        word.date().ifPresent(date -> parts.add(texts.day(date)));
        word.reason().ifPresent(parts::add);
        return String.join(" · ", parts);
    }

    private String where(CourseDay day, Kept kept) {
        double pace = day.policy().get(PlacePolicy.PACE_METRES);
        GreenPlaces places = new GreenPlaces(day.course(), day.policy());
        String hole = kept.holes().get(0);
        return new PositionText(texts, pace)
                .of(places.find(hole, kept.item().middle()), kept.item().middle());
    }

    private ObjectNode json(Answer answer) {
        ObjectNode node = json(answer.day(), answer.kept());
        node.put("course", answer.day().course().id());
        node.set(
                "before",
                answer.before().map(before -> json(answer.day(), before)).orElse(null));
        return node;
    }

    private ObjectNode json(CourseDay day, Kept kept) {
        DrawnItem item = kept.item();
        PositionJson positions = new PositionJson(texts, day.policy().get(PlacePolicy.PACE_METRES));
        GreenPlaces places = new GreenPlaces(day.course(), day.policy());
        ObjectNode node = Json.object();
        node.put("id", item.id());
        node.set("holes", Json.texts(kept.holes()));
        node.set("word", PositionJson.word(item.word()));
        node.set("position", positions.position(places.find(kept.holes().get(0), item.middle()), item.middle()));
        node.set("areaSquareMetres", Json.number(item.areaSquareMetres().orElse(Double.NaN)));
        return node;
    }
}
