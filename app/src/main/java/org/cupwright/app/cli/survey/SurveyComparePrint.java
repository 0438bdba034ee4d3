package org.cupwright.app.cli.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.json.SurveyJson;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.desk.resurvey.CompareSurveys;
import org.cupwright.app.desk.resurvey.CompareSurveys.NotCompared;
import org.cupwright.app.desk.resurvey.GoodGround;
import org.cupwright.app.desk.resurvey.GreenChange;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.resurvey.HeightChange;
import org.cupwright.green.resurvey.Resurvey;
import org.cupwright.green.resurvey.SlopeChange;
import org.cupwright.green.resurvey.Volume;
import org.cupwright.policy.EnumNames;

/** What changed between two surveys, as a page. */
final class SurveyComparePrint {
    private final Texts texts;
    private final CompareSurveys.Answer answer;
    private final PositionText positions;
    private final GreenPlaces places;

    SurveyComparePrint(Texts texts, CompareSurveys.Answer answer) {
        this.texts = texts;
        this.answer = answer;
        this.positions = new PositionText(texts, answer.day().policy().get(PlacePolicy.PACE_METRES));
        this.places = new GreenPlaces(answer.day().course(), answer.day().policy());
    }

    List<String> page() {
        List<String> lines = new ArrayList<>();
        String title = texts.say(
                "survey.compare.title",
                answer.day().course().name(),
                texts.day(answer.day().date()));
        lines.add(title + " · " + new DayText(texts).speed(answer.day()));
        answer.greens().forEach(green -> lines.addAll(green(green)));
        if (!answer.notCompared().isEmpty()) {
            lines.add("");
            lines.addAll(notCompared());
        }
        return lines;
    }

    private List<String> notCompared() {
        List<String> lines = new ArrayList<>();
        for (CompareSurveys.Why why : CompareSurveys.Why.values()) {
            String holes = answer.notCompared().stream()
                    .filter(green -> green.why() == why)
                    .map(NotCompared::hole)
                    .map(Hole::id)
                    .collect(Collectors.joining(", "));
            if (!holes.isEmpty()) {
                lines.addAll(Layout.wrapped("", texts.say("survey.compare.not." + EnumNames.lowerCamel(why), holes)));
            }
        }
        return lines;
    }

    private List<String> green(GreenChange green) {
        List<String> said = new ArrayList<>();
        said.add(ground(green.report()));
        if (green.levelsMayDiffer()) {
            said.add(texts.say(
                    "survey.compare.levelsMayDiffer",
                    millimetres(green.report().heights().middle().orElseThrow().metres())));
        }
        said.addAll(heights(green));
        said.addAll(slopes(green));
        said.addAll(good(green));
        if (!green.olderReadings().isEmpty()) {
            String numbers = green.olderReadings().stream().map(String::valueOf).collect(Collectors.joining(", "));
            said.add(texts.say(
                    "survey.compare.olderReadings", green.olderReadings().size(), numbers));
        }
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(texts.say("survey.compare.green", green.hole().id(), version(green.before()), version(green.now())));
        said.forEach(line -> lines.addAll(hanging(line)));
        return lines;
    }

    private static List<String> hanging(String text) {
        List<String> lines = new ArrayList<>(Layout.wrapped("    ", text));
        lines.set(0, "  " + lines.get(0).strip());
        return lines;
    }

    private String version(SurveyVersion version) {
        return texts.say(
                "survey.compare.version",
                version.number(),
                texts.day(version.recordedAt()
                        .atZone(answer.day().course().frame().zone())
                        .toLocalDate()),
                SurveyJson.file(version));
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

    private List<String> heights(GreenChange green) {
        Resurvey report = green.report();
        List<String> lines = new ArrayList<>();
        lines.add(
                texts.say("survey.compare.volumes", volume(report.fill()), volume(report.cut()), volume(report.net())));
        report.heights().greatestRise().ifPresent(rise -> lines.add(height("survey.compare.rise", green.hole(), rise)));
        report.heights().greatestFall().ifPresent(fall -> lines.add(height("survey.compare.fall", green.hole(), fall)));
        return lines;
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

    private List<String> slopes(GreenChange green) {
        Resurvey report = green.report();
        List<String> lines = new ArrayList<>();
        lines.add(texts.say(
                "survey.compare.slopes",
                texts.area(report.steeperSquareMetres() + report.gentlerSquareMetres()),
                texts.area(report.steeperSquareMetres()),
                texts.area(report.gentlerSquareMetres())));
        report.greatestChange().ifPresent(greatest -> lines.add(slope(green.hole(), greatest)));
        return lines;
    }

    private String slope(Hole hole, SlopeChange change) {
        return texts.say(
                change.points() > 0 ? "survey.compare.steeper" : "survey.compare.gentler",
                texts.number(Math.abs(change.points()), 1),
                texts.number(2 * change.standardErrorPoints(), 1),
                where(hole, change.at()));
    }

    private List<String> good(GreenChange green) {
        GoodGround good = green.good();
        List<String> lines = new ArrayList<>();
        lines.add(texts.say(
                "survey.compare.good", texts.area(good.beforeSquareMetres()), texts.area(good.nowSquareMetres())));
        part("survey.compare.gained", green.hole(), good.gained()).ifPresent(lines::add);
        part("survey.compare.lost", green.hole(), good.lost()).ifPresent(lines::add);
        part("survey.compare.openNow", green.hole(), good.openNow()).ifPresent(lines::add);
        return lines;
    }

    private Optional<String> part(String key, Hole hole, GoodGround.Part part) {
        return part.largest().map(at -> texts.say(key, texts.area(part.squareMetres()), where(hole, at)));
    }

    private String where(Hole hole, MapPoint at) {
        return positions.of(places.find(hole.id(), at), at);
    }
}
