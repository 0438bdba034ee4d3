package org.cupwright.app.answers;

import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.desk.resurvey.CompareSurveys;
import org.cupwright.app.desk.resurvey.CompareSurveys.NotCompared;
import org.cupwright.app.desk.resurvey.GoodGround;
import org.cupwright.app.desk.resurvey.GreenChange;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.resurvey.HeightChange;
import org.cupwright.green.resurvey.Resurvey;
import org.cupwright.green.resurvey.SlopeChange;
import org.cupwright.green.resurvey.Volume;
import org.cupwright.policy.EnumNames;

/** What changed between two surveys, in words. */
public final class SurveyChangeText {
    private final Texts texts;
    private final CompareSurveys.Answer answer;
    private final PlaceText places;
    private final Lines lines;

    public SurveyChangeText(Texts texts, CompareSurveys.Answer answer) {
        this.texts = texts;
        this.answer = answer;
        this.places = new PlaceText(texts, answer.day().course(), answer.day().policy());
        this.lines = new Lines(texts);
    }

    /** What changed green by green, then which could not be compared. */
    public Lines lines() {
        lines.line(new DayText(texts).title("survey.compare.title", answer.day()));
        answer.greens().forEach(this::green);
        if (!answer.notCompared().isEmpty()) {
            lines.gap();
        }
        notCompared();
        return lines;
    }

    /** Which greens could not be compared, and why. */
    private void notCompared() {
        for (CompareSurveys.Why why : CompareSurveys.Why.values()) {
            String holes = answer.notCompared().stream()
                    .filter(green -> green.why() == why)
                    .map(NotCompared::hole)
                    .map(Hole::id)
                    .collect(Collectors.joining(", "));
            if (!holes.isEmpty()) {
                lines.wrapped("", texts.say("survey.compare.not." + EnumNames.lowerCamel(why), holes));
            }
        }
    }

    /** Which green, which surveys of it, and what changed, sentence by sentence. */
    private void green(GreenChange green) {
        lines.heading("survey.compare.green", green.hole().id(), version(green.before()), version(green.now()));
        change(ground(green.report()));
        if (green.levelsMayDiffer()) {
            double metres = green.report().heights().middle().orElseThrow().metres();
            change(texts.say("survey.compare.levelsMayDiffer", millimetres(metres)));
        }
        heights(green);
        slopes(green);
        good(green);
        List<Integer> older = green.olderReadings();
        if (!older.isEmpty()) {
            String numbers = older.stream().map(String::valueOf).collect(Collectors.joining(", "));
            change(texts.say("survey.compare.olderReadings", older.size(), numbers));
        }
    }

    private void change(String said) {
        lines.indented("  ", said);
    }

    private String version(SurveyVersion version) {
        return texts.say(
                "survey.compare.version",
                version.number(),
                texts.day(version.recordedAt()
                        .atZone(answer.day().course().frame().zone())
                        .toLocalDate()),
                SurveyText.file(version));
    }

    private String ground(Resurvey report) {
        String compared = texts.say(
                "survey.compare.ground",
                texts.area(report.changedSquareMetres()),
                texts.area(report.comparedSquareMetres()));
        return report.notComparedSquareMetres() < 1
                ? compared
                : compared + " " + texts.say("survey.compare.notKnown", texts.area(report.notComparedSquareMetres()));
    }

    private void heights(GreenChange green) {
        Resurvey report = green.report();
        change(texts.say("survey.compare.volumes", volume(report.fill()), volume(report.cut()), volume(report.net())));
        report.heights().greatestRise().ifPresent(rise -> change(height("survey.compare.rise", green.hole(), rise)));
        report.heights().greatestFall().ifPresent(fall -> change(height("survey.compare.fall", green.hole(), fall)));
    }

    private String volume(Volume volume) {
        return texts.say(
                "survey.compare.volume",
                texts.number(volume.cubicMetres(), 2),
                texts.number(2 * volume.standardErrorCubicMetres(), 2));
    }

    private String height(String key, Hole hole, HeightChange change) {
        return texts.say(
                key,
                millimetres(Math.abs(change.metres())),
                texts.number(2 * 1000 * change.standardErrorMetres(), 0),
                where(hole, change.at()));
    }

    private String millimetres(double metres) {
        return texts.number(1000 * metres, 0);
    }

    private void slopes(GreenChange green) {
        Resurvey report = green.report();
        change(texts.say(
                "survey.compare.slopes",
                texts.area(report.steeperSquareMetres() + report.gentlerSquareMetres()),
                texts.area(report.steeperSquareMetres()),
                texts.area(report.gentlerSquareMetres())));
        report.greatestChange().ifPresent(greatest -> change(slope(green.hole(), greatest)));
    }

    private String slope(Hole hole, SlopeChange change) {
        return texts.say(
                change.points() > 0 ? "survey.compare.steeper" : "survey.compare.gentler",
                texts.number(Math.abs(change.points()), 1),
                texts.number(2 * change.standardErrorPoints(), 1),
                where(hole, change.at()));
    }

    private void good(GreenChange green) {
        GoodGround good = green.good();
        change(texts.say(
                "survey.compare.good", texts.area(good.beforeSquareMetres()), texts.area(good.nowSquareMetres())));
        part("survey.compare.gained", green.hole(), good.gained());
        part("survey.compare.lost", green.hole(), good.lost());
        part("survey.compare.openNow", green.hole(), good.openNow());
    }

    private void part(String key, Hole hole, GoodGround.Part part) {
        part.largest().ifPresent(at -> change(texts.say(key, texts.area(part.squareMetres()), where(hole, at))));
    }

    private String where(Hole hole, MapPoint at) {
        return places.at(hole.id(), at);
    }
}
