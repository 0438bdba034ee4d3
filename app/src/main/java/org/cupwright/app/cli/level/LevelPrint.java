package org.cupwright.app.cli.level;

import java.util.Optional;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.LevelJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.level.KeepLevelReading.TakenBack;
import org.cupwright.app.desk.level.LevelReadingKept;
import org.cupwright.app.desk.level.LevelReadingList;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.PlaneFit;
import org.cupwright.message.Message.Direction;

/** Level readings as pages. */
final class LevelPrint {
    private static final int PLACE_WIDTH = 42;
    private static final int FALLS_WIDTH = 28;

    private final Task task;
    private final Texts texts;
    private final LevelJson json;

    LevelPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
        this.json = new LevelJson(texts);
    }

    void kept(LevelReadingKept kept) {
        if (task.options().json()) {
            task.print(Json.document(json.kept(kept)));
            return;
        }
        Hole hole = kept.hole();
        String where = where(kept.day(), hole, kept.reading());
        task.print(texts.say("level.kept", hole.id(), where, falls(hole, kept.reading())));
        kept.replaced().ifPresent(old -> task.print("  " + texts.say("level.replaced", falls(hole, old))));
        task.print("  "
                + kept.before()
                        .map(plane -> texts.say("level.before", withError(plane)))
                        .orElseGet(() -> texts.say("level.unknownBefore")));
        kept.now().ifPresent(plane -> task.print("  " + texts.say("level.now", withError(plane))));
    }

    void takenBack(TakenBack taken) {
        String where = where(taken.day(), taken.hole(), taken.reading());
        task.print(
                task.options().json()
                        ? Json.document(json.reading(taken.day(), taken.hole(), taken.reading()))
                        : texts.say("level.takenBack", taken.hole().id(), where));
    }

    void list(LevelReadingList list) {
        if (task.options().json()) {
            task.print(Json.document(json.list(list)));
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
        return "  " + Layout.right(Integer.toString(index + 1), 2) + "  "
                + Layout.left(where(day, green.hole(), reading), PLACE_WIDTH)
                + Layout.left(falls(green.hole(), reading), FALLS_WIDTH)
                + without.map(plane -> texts.say("level.without", withError(plane)))
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
        double pace = day.policy().get(PlacePolicy.PACE_METRES);
        GreenPlaces places = new GreenPlaces(day.course(), day.policy());
        return new PositionText(texts, pace).of(places.find(hole.id(), reading.place()), reading.place());
    }

    private String falls(Hole hole, LevelReading reading) {
        PlaneFit plane = reading.plane();
        String slope = texts.slope(plane.slopePercent());
        return plane.downhill()
                .map(down -> new Direction(down, hole.lineOfPlay().map(LineOfPlay::atGreen)))
                .map(down -> texts.say("level.falls", slope, texts.way(down)))
                .orElse(slope);
    }

    private String withError(PlaneFit plane) {
        return texts.say(
                "level.withError",
                texts.slope(plane.slopePercent()),
                texts.number(2 * 100 * plane.slopeStandardError(), 1));
    }
}
