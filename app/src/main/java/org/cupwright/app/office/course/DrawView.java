package org.cupwright.app.office.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.app.desk.ground.DrawGround;
import org.cupwright.app.desk.ground.GroundChange;
import org.cupwright.app.desk.ground.PaceGrid;
import org.cupwright.app.desk.ground.TypedRing;
import org.cupwright.app.maps.DrawnRing;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.app.office.frame.Board;
import org.cupwright.app.session.Right;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.policy.EnumNames;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** The edge of a green and what lies about it, in the words and the order of its page. */
record DrawView(Visit visit, DrawGround.Answer green) {
    /**
     * The page.
     *
     * @param hole its name
     * @param title which green
     * @param holes all holes
     * @param version of the course, which what is drawn rests on
     * @param edge how large the green is
     * @param hazards what lies about it
     * @param play from where it is played to
     * @param map where it is drawn
     * @param mayDraw whether whoever looks may draw
     * @param form what is being drawn; null where nothing is
     */
    record Page(
            String hole,
            String title,
            List<Link> holes,
            long version,
            String edge,
            List<Row> hazards,
            PlayView.Play play,
            Board map,
            boolean mayDraw,
            Form form) {}

    /** The way to another green. */
    record Link(String hole, boolean here) {}

    /** A hazard and its number on the map. */
    record Row(int number, String says) {}

    /** What is being drawn, with its corners so far. */
    record Form(String draw, String title, String says, String corners) {}

    /** What a drawing changes: how large it is, what is to be seen to, and what becomes of plans. */
    record Change(List<String> says, List<String> warns, List<String> plans) {}

    Page page(DrawWish wish) {
        Hole hole = green.hole();
        boolean may = visit.may(Right.SURVEY);
        Optional<Form> form = may ? form(wish) : Optional.empty();
        return new Page(
                hole.id(),
                texts().say("draw.title", hole.id()),
                green.course().holes().stream()
                        .map(one -> new Link(one.id(), one.id().equals(hole.id())))
                        .toList(),
                green.version(),
                edge(hole),
                IntStream.range(0, hole.hazards().size()).mapToObj(this::row).toList(),
                new PlayView(texts()).of(hole),
                board(form.map(Form::corners).orElse("")),
                may,
                form.orElse(null));
    }

    private Texts texts() {
        return visit.texts();
    }

    private String edge(Hole hole) {
        PaceGrid grid = green.grid();
        List<MapPoint> corners = corners(hole.green().polygon());
        double on = corners.stream().mapToDouble(grid::on).max().orElse(0);
        double left = corners.stream().mapToDouble(grid::right).min().orElse(0);
        double right = corners.stream().mapToDouble(grid::right).max().orElse(0);
        return texts().say(
                        "draw.edge",
                        texts().area(hole.green().areaSquareMetres()),
                        texts().number(on, 0),
                        texts().number(right - left, 0));
    }

    private Row row(int index) {
        Hazard hazard = green.hole().hazards().get(index);
        double gap = hazard.area().distance(green.hole().green().polygon());
        String key = "draw.hazard." + EnumNames.lowerCamel(hazard.kind());
        String says = texts().say(key, index + 1, texts().area(hazard.area().getArea()), texts().length(gap));
        return new Row(index + 1, says);
    }

    /** What is being drawn; of what is there already its corners, where none were sent. */
    private Optional<Form> form(DrawWish wish) {
        Optional<Polygon> there = wish.moved()
                .filter(number -> number <= green.hole().hazards().size())
                .map(number -> green.hole().hazards().get(number - 1).area());
        boolean edge = wish.draw().equals(DrawWish.EDGE);
        boolean another = Stream.of(DrawWish.BUNKER, DrawWish.WATER).anyMatch(wish.draw()::equals);
        if (!edge && !another && there.isEmpty()) {
            return Optional.empty();
        }
        String corners = wish.corners();
        if (corners.isEmpty() && !another) {
            Polygon ground = there.orElseGet(() -> green.hole().green().polygon());
            corners = TypedRing.written(green.grid(), corners(ground));
        }
        String title = there.isPresent()
                ? texts().say("draw.form.hazard", wish.draw())
                : texts().say("draw.form." + wish.draw(), green.hole().id());
        return Optional.of(
                new Form(wish.draw(), title, texts().say(another ? "draw.form.round" : "draw.form.move"), corners));
    }

    private static List<MapPoint> corners(Polygon ground) {
        Coordinate[] ring = ground.getExteriorRing().getCoordinates();
        return Stream.of(ring).limit(ring.length - 1L).map(MapPoint::of).toList();
    }

    private Board board(String corners) {
        GreenDrawing drawing = GreenDrawing.about(
                green.hole(), texts().say("map.title", green.hole().id()));
        GreenMap map = new GreenMap(texts());
        MapFrame frame = map.frame(drawing);
        PaceGrid grid = green.grid();
        MapPoint middle = green.hole().green().centroid();
        double pace = frame.length(grid.paceMetres());
        return new Board(
                map.picture(drawing),
                new DrawnRing(ring(corners)).drawn(frame),
                pace / 2,
                frame.x(middle),
                frame.y(middle),
                frame.x(grid.zero()),
                frame.y(grid.zero()),
                pace);
    }

    /** What can be drawn of the corners so far. */
    private List<MapPoint> ring(String corners) {
        try {
            return corners.isBlank() ? List.of() : new TypedRing(green.grid(), List.of()).read(corners);
        } catch (Problem notYet) {
            return List.of(); // what is wrong with them is told above
        }
    }

    Change change(GroundChange change) {
        List<Message> warns = new ArrayList<>(change.doubtful());
        warns.addAll(change.holes());
        return new Change(said(change.says()), said(warns), said(change.plans()));
    }

    private List<String> said(List<Message> all) {
        return all.stream().map(texts()::say).toList();
    }
}
