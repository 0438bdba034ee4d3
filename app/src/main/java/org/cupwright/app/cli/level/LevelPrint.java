package org.cupwright.app.cli.level;

import java.util.Optional;
import org.cupwright.app.answers.LevelText;
import org.cupwright.app.answers.PlaceText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.LevelJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.level.KeepLevelReading.TakenBack;
import org.cupwright.app.desk.level.LevelReadingKept;
import org.cupwright.app.desk.level.LevelReadingList;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.ReadingId;

/** Level readings as pages. */
final class LevelPrint {
    private static final int PLACE_WIDTH = 42;
    private static final int FALLS_WIDTH = 28;

    private final Task task;
    private final Texts texts;
    private final LevelText words;

    LevelPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
        this.words = new LevelText(texts);
    }

    void kept(LevelReadingKept kept) {
        if (task.options().json()) {
            task.print(Json.document(new LevelJson(kept.day(), texts).kept(kept)));
            return;
        }
        Hole hole = kept.hole();
        String where = where(kept.day(), hole, kept.reading());
        task.print(texts.say("level.kept", hole.id(), where, words.falls(hole, kept.reading())));
        kept.replaced().ifPresent(old -> task.print("  " + texts.say("level.replaced", words.falls(hole, old))));
        task.print("  "
                + kept.before()
                        .map(plane -> texts.say("level.before", words.withError(plane)))
                        .orElseGet(() -> texts.say("level.unknownBefore")));
        kept.now().ifPresent(plane -> task.print("  " + texts.say("level.now", words.withError(plane))));
    }

    void takenBack(TakenBack taken) {
        String where = where(taken.day(), taken.hole(), taken.reading());
        task.print(
                task.options().json()
                        ? Json.document(new LevelJson(taken.day(), texts).takenBack(taken))
                        : texts.say("level.takenBack", taken.hole().id(), where));
    }

    void list(LevelReadingList list) {
        if (task.options().json()) {
            task.print(Json.document(new LevelJson(list.day(), texts).list(list)));
            return;
        }
        if (list.greens().isEmpty()) {
            task.print(texts.say("level.none"));
        }
        for (LevelReadingList.OfGreen green : list.greens()) {
            task.print(texts.say("survey.where.hole", green.hole().id()));
            for (int i = 0; i < green.readings().size(); i++) {
                task.print(row(list.day(), green, i));
            }
        }
    }

    private String row(CourseDay day, LevelReadingList.OfGreen green, int index) {
        LevelReading reading = green.readings().get(index);
        Optional<PlaneFit> without = green.without().get(index);
        return "  " + ReadingId.of(green.hole().id(), reading) + "  "
                + Layout.left(where(day, green.hole(), reading), PLACE_WIDTH)
                + Layout.left(words.falls(green.hole(), reading), FALLS_WIDTH)
                + without.map(plane -> texts.say("level.without", words.withError(plane)))
                        .orElse("")
                + reader(reading);
    }

    /** Who read it and when, where that is known. */
    private String reader(LevelReading reading) {
        return reading.person()
                .flatMap(person -> reading.readOn().map(day -> " (" + person + ", " + texts.day(day) + ")"))
                .orElse("");
    }

    private String where(CourseDay day, Hole hole, LevelReading reading) {
        return new PlaceText(texts, day.course(), day.policy()).at(hole.id(), reading.place());
    }
}
