package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.cli.EightHeadings;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.maps.AreaOnMap;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.GreenGeoJson;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MadeDrawing;
import org.cupwright.app.sheets.PaperPaths.Drawn;
import org.cupwright.app.sheets.PaperText.Letter;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.CourseFrame;
import org.cupwright.course.Hole;
import org.cupwright.green.Green;
import org.cupwright.green.GroundOnDay;
import org.cupwright.green.LevelSpotsGround;
import org.cupwright.holelocation.DayConditions;
import org.cupwright.holelocation.Verdict;
import org.cupwright.holelocation.judging.GreenJudge;
import org.cupwright.policy.Policy;
import org.cupwright.settingout.SettingOut;
import org.cupwright.units.GreenSpeed;
import org.cupwright.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Pictures, card and GeoJSON of the golden green, in each of eight directions of play, held against what a person on
 * the fairway sees. They are read back by code that shares nothing with what drew them.
 */
class GoldenGreenTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 20);
    private static final double LINE_MILLIMETRES = 0.198;
    private static final double EDGE_MILLIMETRES = 0.374;
    private static final double BUNKER_MILLIMETRES = 0.22;
    private static final double MARK_MILLIMETRES = 0.154;
    private static final int ACCENT = 0xa4431d;

    private final Texts texts =
            Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 0.914).orElseThrow();
    private final GreenMap maps = new GreenMap(texts);

    private static GreenDrawing drawing(GoldenGreen green) {
        return MadeDrawing.of(green.hole()).withSpots(List.of(green.at(GoldenGreen.SPOT)));
    }

    @ParameterizedTest
    @EnumSource
    void thePictureShowsTheGreenAsItIsSeen(EightHeadings play) throws Exception {
        GoldenGreen green = new GoldenGreen(play);
        new SeenSvg(maps.picture(drawing(green))).drawing().isTrueOf(green);
    }

    @ParameterizedTest
    @EnumSource
    void theSmallDrawingShowsItTheSameWay(EightHeadings play) throws Exception {
        GoldenGreen green = new GoldenGreen(play);
        new SeenSvg(maps.card(drawing(green), 340, 600)).drawing().isTrueOf(green);
        new SeenSvg(maps.card(drawing(green), 600, 340)).drawing().isTrueOf(green);
    }

    private static GreenDrawing withAreas(GoldenGreen green) {
        return drawing(green)
                .withAreas(List.of(
                        new AreaOnMap("7", green.polygon(GoldenGreen.AREA_7), true),
                        new AreaOnMap("2", green.polygon(GoldenGreen.AREA_2), false)));
    }

    @ParameterizedTest
    @EnumSource
    void theCoursesOwnAreasAreOutlinedAndTodaysIsMarked(EightHeadings play) throws Exception {
        SeenSvg svg = new SeenSvg(maps.picture(withAreas(new GoldenGreen(play))));
        SeenDrawing drawing = svg.drawing();
        drawing.isTrueOf(new GoldenGreen(play));
        isOutlined(drawing, svg.corners("area-today"), GoldenGreen.AREA_7);
        isOutlined(drawing, svg.corners("area"), GoldenGreen.AREA_2);
        assertThat(isIn(drawing, svg.written("2").orElseThrow(), GoldenGreen.AREA_2))
                .isTrue();
        assertThat(isIn(drawing, svg.written("7").orElseThrow(), GoldenGreen.AREA_7))
                .isTrue();
        assertThat(svg.corners("area-today-within")).as("the second line").hasSize(4);
        for (Point2D corner : svg.corners("area-today-within")) {
            assertThat(isIn(drawing, corner, GoldenGreen.AREA_7))
                    .as("the second line")
                    .isTrue();
        }
    }

    @ParameterizedTest
    @EnumSource
    void theSmallDrawingHasTodaysAreaAlone(EightHeadings play) throws Exception {
        SeenSvg svg = new SeenSvg(maps.card(withAreas(new GoldenGreen(play)), 340, 600));
        isOutlined(svg.drawing(), svg.corners("area-today"), GoldenGreen.AREA_7);
        assertThat(svg.written("7")).isPresent();
        assertThat(svg.corners("area")).isEmpty();
        assertThat(svg.written("2")).isEmpty();
    }

    private static void isOutlined(SeenDrawing drawing, List<Point2D> drawn, List<Point2D> area) {
        assertThat(drawn).hasSameSizeAs(area);
        for (Point2D corner : area) {
            assertThat(drawn.stream()
                            .map(drawing::ground)
                            .mapToDouble(corner::distance)
                            .min()
                            .orElseThrow())
                    .as("corner %s", corner)
                    .isLessThan(0.1);
        }
    }

    /** The areas here are upright: between their first and third corner. */
    private static boolean isIn(SeenDrawing drawing, Point2D drawn, List<Point2D> area) {
        Point2D at = drawing.ground(drawn);
        return at.getX() > area.get(0).getX()
                && at.getX() < area.get(2).getX()
                && at.getY() > area.get(0).getY()
                && at.getY() < area.get(2).getY();
    }

    /** By our defaults a hole keeps four paces from the edge, five from it beside a bunker: 3.7 m and 4.6 m. */
    @ParameterizedTest
    @EnumSource
    void hatchedIsTheGroundAlongTheEdge(EightHeadings play) throws Exception {
        GoldenGreen green = new GoldenGreen(play);
        GreenDrawing judged = GreenDrawing.of(judge(green.hole()).judgeGreen(), GroundOnDay.clear(DAY))
                .withSpots(List.of(green.at(GoldenGreen.SPOT)));
        SeenSvg svg = new SeenSvg(maps.picture(judged));
        SeenDrawing drawing = svg.drawing();
        List<Point2D> ends = svg.hatching().stream().map(drawing::ground).toList();
        assertThat(ends).hasSizeGreaterThan(100);
        for (int i = 0; i + 1 < ends.size(); i += 2) {
            Point2D middle = SeenSvg.middle(ends.subList(i, i + 2));
            assertThat(toEdge(middle)).as("hatched at %s", middle).isLessThan(4.9);
        }
        for (Point2D shut : List.of(
                GoldenGreen.seen(-10, 25), GoldenGreen.seen(12, 7), GoldenGreen.seen(0, 2), GoldenGreen.seen(-4, 28))) {
            assertThat(nearest(ends, shut)).as("hatched about %s", shut).isLessThan(1);
        }
    }

    private static double toEdge(Point2D at) {
        return IntStream.range(0, 6)
                .mapToDouble(i -> new Line2D.Double(GoldenGreen.CORNERS.get(i), GoldenGreen.CORNERS.get((i + 1) % 6))
                        .ptSegDist(at))
                .min()
                .orElseThrow();
    }

    private static double nearest(List<Point2D> ends, Point2D at) {
        return IntStream.range(0, ends.size() / 2)
                .mapToDouble(i -> new Line2D.Double(ends.get(2 * i), ends.get(2 * i + 1)).ptSegDist(at))
                .min()
                .orElseThrow();
    }

    @ParameterizedTest
    @EnumSource
    void theCardsDrawingsShowItTheSameWay(PaperSize paper) throws IOException {
        byte[] pdf = card(paper);
        List<Drawn> paths = PaperPaths.of(pdf);
        List<Drawn> edges = strokes(paths, EDGE_MILLIMETRES);
        List<Drawn> bunkers = strokes(paths, BUNKER_MILLIMETRES);
        List<Drawn> marks = strokes(paths, MARK_MILLIMETRES);
        List<Drawn> lines = strokes(paths, LINE_MILLIMETRES);
        List<Drawn> spots = paths.stream()
                .filter(path -> !path.stroked() && path.rgb() == ACCENT)
                .toList();
        assertThat(edges).hasSize(8);
        assertThat(bunkers).hasSize(8);
        assertThat(marks).hasSize(8);
        assertThat(spots).hasSize(8);
        assertThat(lines).as("north, scale and play of each").hasSize(24);

        for (EightHeadings play : EightHeadings.values()) {
            int i = play.ordinal();
            List<Point2D> needle = lines.get(3 * i).corners();
            List<Point2D> bar = lines.get(3 * i + 1).corners();
            new SeenDrawing(
                            edges.get(i).corners().subList(0, 6),
                            bunkers.get(i).corners().subList(0, 4),
                            marks.get(i).middle(),
                            spots.get(i).middle(),
                            needle.get(0),
                            needle.get(1),
                            bar.subList(1, 3),
                            lines.get(3 * i + 2).corners().subList(0, 2))
                    .isTrueOf(new GoldenGreen(play));
            assertThat(beside(pdf, edges.get(i), paper))
                    .as("beside the drawing")
                    .contains("frontleft")
                    .contains("10on·9fromleft")
                    .doesNotContain("right");
        }
    }

    private static List<Drawn> strokes(List<Drawn> paths, double widthMillimetres) {
        return paths.stream()
                .filter(path -> path.stroked() && Math.abs(path.widthMillimetres() - widthMillimetres) < 0.004)
                .toList();
    }

    /** The letters of a drawing's quarter of the card that are as high up as it. */
    private static String beside(byte[] pdf, Drawn edge, PaperSize paper) throws IOException {
        double low = paper.heightMillimetres() - edge.shape().getBounds2D().getMinY();
        double high = paper.heightMillimetres() - edge.shape().getBounds2D().getMaxY();
        double fold = paper.widthMillimetres() / 2;
        boolean right = edge.middle().getX() > fold;
        return PaperText.letters(pdf).stream()
                .filter(letter -> letter.page() == edge.page() && letter.box().getCenterX() > fold == right)
                .filter(letter ->
                        letter.box().getCenterY() > high - 15 && letter.box().getCenterY() < low)
                .map(Letter::text)
                .collect(Collectors.joining());
    }

    private byte[] card(PaperSize paper) {
        Policy policy = Policy.defaults().with(PaperPolicy.PAPER, paper);
        List<Hole> holes = Arrays.stream(EightHeadings.values())
                .map(play -> new GoldenGreen(play).hole())
                .toList();
        Course course = new Course("made", "made", new CourseFrame(GoldenGreen.EPSG, ZoneOffset.UTC), holes);
        List<SheetHole> sheets = Arrays.stream(EightHeadings.values())
                .map(play -> sheet(new GoldenGreen(play), policy))
                .toList();
        return new ChangersCard(texts)
                .pdf(new DaySheet(
                        "made (invented)",
                        DAY,
                        DaySpeed.of(10, DaySpeed.From.SEASON),
                        CutSoFar.NOTHING,
                        sheets,
                        new BlockText(texts, course),
                        List.of(),
                        policy));
    }

    private static SheetHole sheet(GoldenGreen green, Policy policy) {
        Hole hole = green.hole();
        SheetHole.Cut cut = new SheetHole.Cut(
                SettingOut.of(hole, policy).directions(green.at(GoldenGreen.SPOT), 1.5, Optional.empty()),
                Optional.empty(),
                true,
                Verdict.PASS,
                false,
                Set.of(),
                Optional.empty());
        return new SheetHole(
                hole.id(),
                Optional.of(cut),
                Optional.empty(),
                Optional.empty(),
                drawing(green),
                false,
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static GreenJudge judge(Hole hole) {
        return new GreenJudge(
                new Green(hole, new LevelSpotsGround(List.of(), Policy.defaults())),
                new DayConditions(new GreenSpeed(10), false, false, GroundOnDay.clear(DAY)),
                Policy.defaults());
    }

    /** Degrees become metres by the lengths of a degree on the ellipsoid of WGS84 about 39° 45′ north. */
    @ParameterizedTest
    @EnumSource
    void geoJsonHasEveryCornerAndTheSpotWhereTheyAre(EightHeadings play) {
        GoldenGreen green = new GoldenGreen(play);
        GreenJudge judge = judge(green.hole());
        String text = new GreenGeoJson(judge.judgeGreen(), GoldenGreen.EPSG, Map.of())
                .document(Optional.of(judge.judge(green.at(GoldenGreen.SPOT))));
        JsonNode document = JsonMapper.shared().readTree(text);
        JsonNode spot = geometry(document, "position");
        assertThat(metresEast(spot.path(0).asDouble() + 27))
                .as("east of the zone's middle")
                .isCloseTo(green.onMap(GoldenGreen.SPOT).getX(), org.assertj.core.data.Offset.offset(0.1));
        JsonNode ring = geometry(document, "outline").path(0);
        assertThat(ring.size()).isEqualTo(GoldenGreen.CORNERS.size() + 1);
        for (Point2D corner : GoldenGreen.CORNERS) {
            Point2D way = green.onMap(
                    GoldenGreen.seen(corner.getX() - GoldenGreen.SPOT.getX(), corner.getY() - GoldenGreen.SPOT.getY()));
            double nearest = Double.POSITIVE_INFINITY;
            for (JsonNode at : ring) {
                double east = metresEast(at.path(0).asDouble() - spot.path(0).asDouble());
                double north = metresNorth(at.path(1).asDouble() - spot.path(1).asDouble());
                nearest = Math.min(nearest, way.distance(east, north));
            }
            assertThat(nearest).as("corner %s", corner).isLessThan(0.1);
        }
    }

    private static JsonNode geometry(JsonNode document, String kind) {
        for (JsonNode feature : document.path("features")) {
            if (feature.path("properties").path("kind").asString().equals(kind)) {
                return feature.path("geometry").path("coordinates");
            }
        }
        throw new IllegalStateException("no " + kind);
    }

    private static final double LATITUDE = Math.toRadians(39.75);
    private static final double AXIS_METRES = 6_378_137;
    private static final double ECCENTRICITY_SQUARED = 0.00669437999;
    private static final double MIDDLE_SCALE = 0.9996;
    private static final double CURVED = 1 - ECCENTRICITY_SQUARED * Math.pow(Math.sin(LATITUDE), 2);

    private static double metresEast(double degrees) {
        return MIDDLE_SCALE * Math.toRadians(degrees) * Math.cos(LATITUDE) * AXIS_METRES / Math.sqrt(CURVED);
    }

    private static double metresNorth(double degrees) {
        return MIDDLE_SCALE
                * Math.toRadians(degrees)
                * AXIS_METRES
                * (1 - ECCENTRICITY_SQUARED)
                / Math.pow(CURVED, 1.5);
    }

    @Test
    void theHeadingsAreEightAndEachIsAnother() {
        assertThat(Arrays.stream(EightHeadings.values())
                        .map(play -> Math.round(10 * play.east(0, 1)) + " " + Math.round(10 * play.north(0, 1)))
                        .distinct())
                .hasSize(8);
    }
}
