package org.cupwright.app.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.desk.plan.PaintedDots.Dot;
import org.cupwright.app.maps.MadeDrawing;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.course.LineOfPlay;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Mark;
import org.cupwright.course.Outline;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.settingout.SettingOut;
import org.cupwright.testing.Shapes;
import org.cupwright.units.Heading;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What is carried of the way to a spot, worked out by hand: an invented green of 20 m a side about 500100, 4400100,
 * played to eastwards. Its spot lies 5 m east and 3 m north of the middle, and so 5 m on and 3 m to the left.
 */
class CarriedWayTest {
    private static final CourseFrame FRAME = new CourseFrame(32_626, ZoneOffset.UTC);
    private static final MapPoint SPOT = new MapPoint(500_105, 4_400_103);
    private static final Outline SQUARE = Shapes.rectangle(500_090, 4_400_090, 500_110, 4_400_110);

    private static final Mark NAIL = new Mark(Mark.Kind.SURVEYED_MARK, "nail A", new MapPoint(500_105, 4_400_115));
    private static final Mark HEAD = new Mark(Mark.Kind.SPRINKLER_HEAD, "head 1", new MapPoint(500_085, 4_400_100));

    private static JsonNode way(Optional<LineOfPlay> play, Policy policy, Optional<Dot> dot, Optional<CourseFrame> in) {
        Hole hole = new Hole(
                "1",
                SQUARE,
                play,
                OptionalInt.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of(),
                List.of(NAIL, HEAD),
                List.of());
        SheetHole.Cut cut = new SheetHole.Cut(
                SettingOut.of(hole, policy).directions(SPOT, 1.5, Optional.empty()),
                Optional.empty(),
                true,
                Verdict.PASS,
                true,
                Set.of(),
                Optional.empty());
        SheetHole sheetHole = new SheetHole(
                "1",
                Optional.of(cut),
                Optional.empty(),
                Optional.empty(),
                MadeDrawing.of(hole),
                false,
                List.of(),
                Optional.empty(),
                Optional.empty());
        Texts texts = Texts.find("en", Door.PAGES, UnitSystem.METRIC, 0.914).orElseThrow();
        DaySheet sheet = new DaySheet(
                "Made",
                LocalDate.of(2026, 6, 20),
                DaySpeed.of(10, DaySpeed.From.SEASON),
                CutSoFar.NOTHING,
                List.of(sheetHole),
                new BlockText(texts, new Course("made", "Made", FRAME, List.of(hole))),
                List.of(),
                policy,
                Optional.empty());
        ObjectNode out = Json.object();
        new CarriedWay(sheetHole, sheet, texts).put(out, dot, in);
        return out.path("way");
    }

    private static JsonNode eastwards() {
        return way(
                Optional.of(LineOfPlay.towards(SQUARE, new Heading(90))),
                Policy.defaults(),
                Optional.empty(),
                Optional.of(FRAME));
    }

    private static List<Double> numbers(JsonNode node) {
        return StreamSupport.stream(node.spliterator(), false)
                .filter(JsonNode::isNumber)
                .map(JsonNode::asDouble)
                .toList();
    }

    @Test
    void theSpotLiesAsItIsSeenFromTheFairway() {
        assertThat(numbers(eastwards().path("spot"))).containsExactly(-3.0, 5.0);
        assertThat(eastwards().path("played").asBoolean()).isTrue();
    }

    @Test
    void whatIsPacedIsSaidWithItsLength() {
        JsonNode said = eastwards().path("said");
        assertThat(said.toString())
                .isEqualTo("[[\"16½ on\",15],[\"5½ from back\",5],[\"7½ from left\",7],"
                        + "[\"good within 1½ paces\",1.5,\"down\"],"
                        + "[\"13 paces from nail A towards the right\",12,\"mark\"]]");
        assertThat(eastwards().path("from").asInt()).isZero();
    }

    @Test
    void marksLieInTheGreensFrame() {
        JsonNode marks = eastwards().path("marks");
        assertThat(marks.toString()).isEqualTo("[[\"nail A\",-15,5,true],[\"head 1\",0,-15,false]]");
    }

    @Test
    void theEdgeIsCarriedWithoutItsLastCorner() {
        List<Double> edge = numbers(eastwards().path("edge").path(0));
        assertThat(edge).hasSize(8);
        assertThat(edge).containsExactly(10.0, -10.0, 10.0, 10.0, -10.0, 10.0, -10.0, -10.0);
    }

    @Test
    void theMapHasItsMiddleInTheMiddle() {
        List<Double> map = numbers(eastwards().path("map"));
        assertThat(map.get(0)).isEqualTo(500); // of 1000, as wide as 30 m: the green and 5 m on both sides
        assertThat(map.get(2)).isEqualTo(33.333);
    }

    @Test
    void aDegreeOfLatitudeGoesToTheLeftOfWhoeverFacesEast() {
        List<Double> world = numbers(eastwards().path("world"));
        assertThat(world.get(3)).isBetween(-111_100.0, -110_900.0); // to the right: a degree is 111 km there
        assertThat(world.get(4)).isBetween(85_000.0, 86_000.0); // on: 111.3 km times the cosine of 39.7 degrees
    }

    @Test
    void whereNobodyKnowsThePlaceNoPositionIsCarried() {
        JsonNode way = way(
                Optional.of(LineOfPlay.towards(SQUARE, new Heading(90))),
                Policy.defaults(),
                Optional.empty(),
                Optional.empty());
        assertThat(way.has("world")).isFalse();
        assertThat(way.has("spot")).isTrue();
    }

    @Test
    void northIsOnWhereNobodyKnowsThePlay() {
        JsonNode way = way(Optional.empty(), Policy.defaults(), Optional.empty(), Optional.of(FRAME));
        assertThat(numbers(way.path("spot"))).containsExactly(5.0, 3.0);
        assertThat(way.path("played").asBoolean()).isFalse();
        assertThat(way.path("said").toString())
                .contains("13 paces from nail A, see the drawing")
                .doesNotContain(" on");
    }

    @Test
    void squaredOffTheFrontSaysWhereTheFrontIs() {
        Policy squared = Policy.defaults().with(PlacePolicy.ON_CONVENTION, OnConvention.SQUARED_OFF_FRONT);
        JsonNode way = way(
                Optional.of(LineOfPlay.towards(SQUARE, new Heading(90))),
                squared,
                Optional.empty(),
                Optional.of(FRAME));
        assertThat(way.path("front").asDouble()).isEqualTo(-10);
        assertThat(eastwards().has("front")).isFalse();
    }

    @Test
    void aDotIsLookedForWhereItLies() {
        Optional<LineOfPlay> play = Optional.of(LineOfPlay.towards(SQUARE, new Heading(90)));
        Dot here = new Dot(new MapPoint(500_105.4, 4_400_103), "Invented Official");
        Dot elsewhere = new Dot(new MapPoint(500_100, 4_400_100), "Invented Official");
        assertThat(way(play, Policy.defaults(), Optional.of(here), Optional.empty())
                        .path("dot")
                        .asString())
                .isEqualTo("Invented Official painted a dot for today here: look for it.");
        assertThat(way(play, Policy.defaults(), Optional.of(elsewhere), Optional.empty())
                        .path("dot")
                        .asString())
                .contains("elsewhere");
    }
}
