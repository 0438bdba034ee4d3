package org.cupwright.app.answers.json;

import java.util.function.Function;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.resurvey.CompareSurveys;
import org.cupwright.app.desk.resurvey.GoodGround;
import org.cupwright.app.desk.resurvey.GreenChange;
import org.cupwright.app.desk.resurvey.ListSurveys;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.resurvey.HeightChange;
import org.cupwright.green.resurvey.Resurvey;
import org.cupwright.green.resurvey.SlopeChange;
import tools.jackson.databind.JsonNode;

/** The surveys of greens, and what changed between two, as scripts read them. */
public record SurveyJson(Texts texts) {
    public JsonNode list(ListSurveys.Answer answer) {
        return new Shapes(texts)
                .tree(new Shape().with("course", answer.day().course()).with("greens", answer.greens()));
    }

    public JsonNode changes(CompareSurveys.Answer answer) {
        CourseDay day = answer.day();
        PlaceShapes places = new PlaceShapes(day.course(), day.policy());
        return new Shapes(texts)
                .as(
                        GreenChange.class,
                        green -> green(green, at -> places.at(green.hole().id(), at)))
                .tree(new Shape()
                        .with("course", day.course().id())
                        .with("date", day.date())
                        .with("speedFeet", day.fastest().feet())
                        .with("greens", answer.greens())
                        .with("notCompared", answer.notCompared()));
    }

    private static Shape green(GreenChange green, Function<MapPoint, Shape> places) {
        Resurvey report = green.report();
        return new Shape()
                .with("hole", green.hole().id())
                .with("before", green.before())
                .with("now", green.now())
                .with("comparedSquareMetres", report.comparedSquareMetres())
                .with("notComparedSquareMetres", report.notComparedSquareMetres())
                .with("levelsMayDiffer", green.levelsMayDiffer())
                .with("heights", heights(report, places))
                .with("slopes", slopes(report, places))
                .with("goodGround", good(green.good(), places))
                .with("olderReadings", green.olderReadings());
    }

    private static Shape heights(Resurvey report, Function<MapPoint, Shape> places) {
        Function<HeightChange, Shape> height = change -> new Shape()
                .with("metres", change.metres())
                .with("standardErrorMetres", change.standardErrorMetres())
                .with("position", places.apply(change.at()));
        return new Shape()
                .with("changedSquareMetres", report.changedSquareMetres())
                .with("fill", report.fill())
                .with("cut", report.cut())
                .with("net", report.net())
                .with("middle", report.heights().middle().map(height))
                .with("greatestRise", report.heights().greatestRise().map(height))
                .with("greatestFall", report.heights().greatestFall().map(height));
    }

    private static Shape slopes(Resurvey report, Function<MapPoint, Shape> places) {
        Function<SlopeChange, Shape> slope = change -> new Shape()
                .with("points", change.points())
                .with("standardErrorPoints", change.standardErrorPoints())
                .with("position", places.apply(change.at()));
        return new Shape()
                .with("steeperSquareMetres", report.steeperSquareMetres())
                .with("gentlerSquareMetres", report.gentlerSquareMetres())
                .with("median", report.medianChange().map(slope))
                .with("p95", report.wideChange().map(slope))
                .with("greatest", report.greatestChange().map(slope));
    }

    private static Shape good(GoodGround good, Function<MapPoint, Shape> places) {
        Function<GoodGround.Part, Shape> part = ground -> new Shape()
                .with("squareMetres", ground.squareMetres())
                .with("largestAt", ground.largest().map(places));
        return new Shape()
                .with("beforeSquareMetres", good.beforeSquareMetres())
                .with("nowSquareMetres", good.nowSquareMetres())
                .with("gained", part.apply(good.gained()))
                .with("lost", part.apply(good.lost()))
                .with("openNow", part.apply(good.openNow()));
    }
}
