package org.cupwright.app.desk.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Known;
import org.cupwright.app.storage.SettingUp.PictureOnGround;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.app.storage.SettingUp.Way;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Problem;
import org.cupwright.units.Heading;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Second step, by an aerial picture: how it lies on the ground, then green by green its corners. */
public record PictureStep(Session session) {
    public static final String CORNERS = "corners";
    public static final String HOLE = "hole";
    public static final String PLAY = "play";

    /** Known points, by the beginnings of their fields. */
    public static final List<String> POINTS = List.of("first", "second");

    private static final int LARGEST_PIXELS = 30_000;

    /** Closer together on the ground a slip of a metre would turn and stretch the picture too far: our choice. */
    private static final double NEAREST_METRES = 30;

    /** A pixel of more would be half a green's fringe, one of less is no aerial picture, m: our choices. */
    private static final double COARSEST_METRES = 3;

    private static final double FINEST_METRES = 0.005;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /** Keeps how the picture lies on the ground. */
    public void keepPicture(Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed);
        Place place = new BeginCourse(session).stands().place();
        Optional<Double> width = fields.number("width", 1, LARGEST_PIXELS);
        Optional<Double> height = fields.number("height", 1, LARGEST_PIXELS);
        List<Optional<Known>> known = POINTS.stream()
                .map(point -> known(fields, point, place, width, height))
                .toList();
        if (known.stream().allMatch(Optional::isPresent)) {
            refuseUnlikely(known.get(0).get(), known.get(1).get(), fields);
        }
        fields.check();
        PictureOnGround picture = new PictureOnGround(
                width.get().intValue(),
                height.get().intValue(),
                known.get(0).get(),
                known.get(1).get());
        new BeginCourse(session).keep(stands -> stands.withPicture(picture));
    }

    private static Optional<Known> known(
            TypedFields fields, String point, Place place, Optional<Double> width, Optional<Double> height) {
        Optional<Double> right = fields.number(point + "Right", 0, width.orElse((double) LARGEST_PIXELS));
        Optional<Double> down = fields.number(point + "Down", 0, height.orElse((double) LARGEST_PIXELS));
        String east = point + "East";
        String north = point + "North";
        Optional<MapPoint> at = TypedPlace.read(fields, east, north, place);
        if (fields.isBlank(east) && fields.isBlank(north)) {
            fields.refuse(east, Problem.of("begin.missing", east, fields.text(east)));
        }
        return right.isPresent() && down.isPresent() && at.isPresent()
                ? Optional.of(new Known(right.get(), down.get(), at.get()))
                : Optional.empty();
    }

    private static void refuseUnlikely(Known first, Known second, TypedFields fields) {
        String field = "secondEast";
        double metres = first.at().distanceMetres(second.at());
        double pixels =
                Math.sqrt(Math.pow(first.right() - second.right(), 2) + Math.pow(first.down() - second.down(), 2));
        if (metres < NEAREST_METRES) {
            fields.refuse(
                    field,
                    Problem.of(
                            "begin.pointsTooNear",
                            field,
                            fields.text(field),
                            new Length(metres),
                            new Length(NEAREST_METRES)));
        } else if (metres > COARSEST_METRES * pixels || metres < FINEST_METRES * pixels) {
            fields.refuse(
                    field,
                    Problem.of(
                            "begin.scale",
                            field,
                            fields.text(field),
                            new Length(metres),
                            new Count(Math.round(pixels))));
        }
    }

    /**
     * Keeps a green by its corners: of the picture in pixels, or where {@code ground} is typed, on the ground.
     *
     * @return its number
     */
    public int keepGreen(Map<String, String> typed) {
        TypedFields fields = new TypedFields(typed);
        SettingUp before = new BeginCourse(session).stands();
        Optional<String> name = fields.hole(HOLE);
        Optional<Heading> play = fields.heading(PLAY);
        GreenAdded.refuseTaken(name, 0, before, fields, HOLE);
        Optional<Outline> outline = corners(fields, before).flatMap(ring -> outline(ring, fields));
        fields.check();
        SettingUp after = new BeginCourse(session).keep(stands -> {
            int number = stands.nextNumber();
            BegunGreen green = new BegunGreen(
                    number,
                    Way.PICTURE,
                    GreenAdded.hole(name, number, outline.get(), play),
                    name.isPresent(),
                    false,
                    true,
                    Optional.empty());
            return GreenAdded.refuseTooMany(stands.with(BegunHazards.near(stands, green)), CORNERS, "");
        });
        return after.nextNumber() - 1;
    }

    /** The places of corners that were typed or clicked, on the ground. */
    static Optional<List<MapPoint>> corners(TypedFields fields, SettingUp stands) {
        List<TypedCorners.Pair> pairs = TypedCorners.read(fields, CORNERS);
        boolean ground = fields.has("ground");
        if (!ground && stands.picture().isEmpty()) {
            fields.refuse(CORNERS, Problem.of("begin.pictureFirst", CORNERS, ""));
            return Optional.empty();
        }
        Optional<PictureFrame> picture = stands.picture().map(PictureFrame::of);
        MapPoint course = TypedPlace.of(stands.place());
        List<MapPoint> ring = new ArrayList<>();
        for (TypedCorners.Pair pair : pairs) {
            Optional<MapPoint> at = ground
                    ? TypedPlace.read(pair.first(), pair.second(), stands.place())
                    : picture.map(frame -> frame.ground(pair.first(), pair.second()));
            if (at.filter(place -> place.distanceMetres(course) <= TypedPlace.FARTHEST_METRES)
                    .isEmpty()) {
                String typed = pair.first() + " " + pair.second();
                fields.refuse(CORNERS, Problem.of("begin.cornerFar", CORNERS, typed));
                return Optional.empty();
            }
            ring.add(at.get());
        }
        return ring.isEmpty() ? Optional.empty() : Optional.of(ring);
    }

    private static Optional<Outline> outline(List<MapPoint> ring, TypedFields fields) {
        List<Coordinate> closed =
                new ArrayList<>(ring.stream().map(MapPoint::toCoordinate).toList());
        if (!closed.get(0).equals2D(closed.get(closed.size() - 1))) {
            closed.add(closed.get(0).copy());
        }
        if (closed.size() < 4) {
            fields.refuse(CORNERS, Problem.of("begin.crosses", CORNERS, ""));
            return Optional.empty();
        }
        Polygon shape = FACTORY.createPolygon(closed.toArray(Coordinate[]::new));
        return GreenAdded.outline(shape, fields, CORNERS);
    }
}
