package org.cupwright.app.answers;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.level.KeepLevelReading;
import org.cupwright.app.desk.level.KeepLevelReading.TakenBack;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlaneFit;
import org.cupwright.green.ReadingId;
import org.cupwright.message.Message.Direction;

/** What the level read, in words. */
public final class LevelText {
    private static final int PLACE_WIDTH = 42;
    private static final int FALLS_WIDTH = 28;

    private final Texts texts;
    private final PlaceText places;
    private final Lines lines;

    public LevelText(Texts texts, CourseDay day) {
        this.texts = texts;
        this.places = new PlaceText(texts, day.course(), day.policy());
        this.lines = new Lines(texts);
    }

    /** A reading that is kept now, and what was known of the spot before. */
    public Lines kept(KeepLevelReading.Kept kept) {
        Hole hole = kept.hole();
        lines.say("level.kept", hole.id(), where(hole, kept.reading()), falls(hole, kept.reading()));
        kept.replaced().ifPresent(old -> lines.line("  " + texts.say("level.replaced", falls(hole, old))));
        lines.line("  "
                + kept.before()
                        .map(plane -> texts.say("level.before", withError(plane)))
                        .orElseGet(() -> texts.say("level.unknownBefore")));
        kept.now().ifPresent(plane -> lines.line("  " + texts.say("level.now", withError(plane))));
        kept.bought().ifPresent(bought -> new SharingText(texts).bought(bought, lines));
        return lines;
    }

    public Lines takenBack(TakenBack taken) {
        return lines.say("level.takenBack", taken.hole().id(), where(taken.hole(), taken.reading()));
    }

    /** The readings green by green, each beside what is known of its spot without it. */
    public Lines list(KeepLevelReading.Listed list) {
        if (list.greens().isEmpty()) {
            lines.say("level.none");
        }
        for (KeepLevelReading.OfGreen green : list.greens()) {
            lines.say("survey.where.hole", green.hole().id());
            for (int i = 0; i < green.readings().size(); i++) {
                row(green.hole(), green.readings().get(i), green.without().get(i));
            }
            green.bought().ifPresent(bought -> new SharingText(texts).bought(bought, lines));
        }
        return lines;
    }

    private void row(Hole hole, LevelReading reading, Optional<PlaneFit> without) {
        List<Line.Cell> cells = List.of(
                new Line.Cell("  " + ReadingId.of(hole.id(), reading) + "  ", 0),
                Line.left(where(hole, reading), PLACE_WIDTH),
                Line.left(falls(hole, reading), FALLS_WIDTH));
        String known = without.map(plane -> texts.say("level.without", withError(plane)))
                .orElse("");
        lines.row(cells, known + reader(reading));
    }

    /** Who read it and when, where that is known. */
    private String reader(LevelReading reading) {
        return reading.person()
                .flatMap(person -> reading.readOn().map(day -> " (" + person + ", " + texts.day(day) + ")"))
                .orElse("");
    }

    private String where(Hole hole, LevelReading reading) {
        return places.at(hole.id(), reading.place());
    }

    /** How much the ground falls, and which way. */
    private String falls(Hole hole, LevelReading reading) {
        PlaneFit plane = reading.plane();
        String slope = texts.slope(plane.slopePercent());
        return plane.downhill()
                .map(down -> new Direction(down, hole.lineOfPlay().map(LineOfPlay::atGreen)))
                .map(down -> texts.say("level.falls", slope, texts.way(down)))
                .orElse(slope);
    }

    /** A slope, and by how much it may err: two standard errors. */
    private String withError(PlaneFit plane) {
        double error = 2 * 100 * plane.slopeStandardError();
        boolean less = error < JudgementText.LEAST_SAID / 2;
        return texts.say(
                less ? "level.withLess" : "level.withError",
                texts.slope(plane.slopePercent()),
                texts.number(less ? JudgementText.LEAST_SAID : error, 1));
    }
}
