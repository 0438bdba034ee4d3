package org.cupwright.app.cli.drawn;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.DrawnText;
import org.cupwright.app.answers.PlaceText;
import org.cupwright.app.answers.json.DrawnJson;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.drawn.KeepDrawn.Answer;
import org.cupwright.app.desk.drawn.KeepDrawn.Listed;
import org.cupwright.app.storage.DrawnOnCourse.Kept;
import org.cupwright.app.texts.Texts;

/** Ground that people drew, as pages and as JSON. */
final class DrawnPrint {
    private static final int ID_WIDTH = 14;
    private static final int KIND_WIDTH = 22;
    private static final int PLACE_WIDTH = 42;

    private final Task task;
    private final Texts texts;
    private final DrawnText words;

    DrawnPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
        this.words = new DrawnText(texts);
    }

    void kept(Answer answer) {
        if (task.options().json()) {
            task.print(Json.document(new DrawnJson(answer.day(), texts).of(answer)));
            return;
        }
        Kept kept = answer.kept();
        task.print(texts.say("drawn.kept", kept.item().id(), words.what(kept.item()), where(answer.day(), kept)));
        answer.before()
                .ifPresent(before -> task.print("  "
                        + texts.say(
                                "drawn.replaced",
                                words.who(before.item().word()).strip())));
    }

    void takenBack(Answer answer) {
        Kept gone = answer.kept();
        task.print(
                task.options().json()
                        ? Json.document(new DrawnJson(answer.day(), texts).of(answer))
                        : texts.say(
                                "drawn.takenBack",
                                gone.item().id(),
                                words.what(gone.item()),
                                where(answer.day(), gone)));
    }

    void list(Listed listed) {
        if (task.options().json()) {
            task.print(Json.document(new DrawnJson(listed.day(), texts).list(listed)));
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
                        + Layout.left(words.what(kept.item()), KIND_WIDTH)
                        + Layout.left(where(day, kept), PLACE_WIDTH))
                .stripTrailing());
        String who = words.who(kept.item().word());
        if (!who.isBlank()) {
            lines.addAll(Layout.wrapped(" ".repeat(ID_WIDTH), who.strip()));
        }
        return lines;
    }

    private String where(CourseDay day, Kept kept) {
        return new PlaceText(texts, day.course(), day.policy())
                .at(kept.holes().get(0), kept.item().middle());
    }
}
