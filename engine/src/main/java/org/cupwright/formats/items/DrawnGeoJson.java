package org.cupwright.formats.items;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.BoundedInput;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.formats.outlines.GeoJsonFeatures;
import org.cupwright.formats.outlines.MapFeature;
import org.cupwright.formats.outlines.MapFeatures;
import org.cupwright.formats.outlines.Polygons;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;

/**
 * Reads ground that people drew on a map from GeoJSON: areas with {@code kind} good, bad or area
 * (with its number or letter as {@code area}), points with {@code kind}
 * usual; a point with {@code radiusMetres}, or {@code radius} in paces, is the ground about it. Where known
 * {@code hole}, {@code reason}, {@code person}, {@code date} (2026-05-31) and {@code id}; without a hole, the greens
 * the shape lies on.
 */
public final class DrawnGeoJson {
    /** What people draw in a year is some kilobytes. Our choice. */
    private static final long MAX_BYTES = 16L << 20;

    private final Course course;
    private final double paceMetres;
    private final Projection toCourse;
    private final List<ReadDrawn.Item> items = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    private DrawnGeoJson(Course course, double paceMetres, CoordinateFrame frame) {
        this.course = course;
        this.paceMetres = paceMetres;
        this.toCourse =
                Projection.between(frame, CoordinateFrame.of(course.frame().epsg()));
    }

    /**
     * Reads the ground of a course.
     *
     * @param in the file; not closed
     * @param course the course whose greens are meant
     * @param paceMetres length of the pace in which a radius is given
     * @throws UnreadableFile if the file is empty, no GeoJSON, cut short, beyond the bounds, or the shape of a feature
     *     cannot be read
     */
    public static ReadDrawn read(InputStream in, Course course, double paceMetres) throws IOException {
        MapFeatures map = GeoJsonFeatures.read(new BoundedInput(in, MAX_BYTES), tags -> true);
        DrawnGeoJson reader = new DrawnGeoJson(course, paceMetres, map.frame());
        map.features().forEach(reader::read);
        return new ReadDrawn(reader.items, reader.findings);
    }

    private void read(MapFeature feature) {
        try {
            DrawnParts parts = new DrawnParts(name -> feature.tag(name).orElse(""), feature.where());
            PersonsOpinion word = parts.word();
            Geometry place = place(feature, word.kind(), parts);
            items.add(new ReadDrawn.Item(parts.id(), holes(parts, place, feature), word, place));
        } catch (UnreadableFile trouble) {
            findings.add(DrawnParts.own(trouble.finding()));
        }
    }

    private Geometry place(MapFeature feature, PersonsOpinion.Kind kind, DrawnParts parts) {
        Geometry shape = feature.shape();
        if (shape instanceof Point point) {
            MapPoint at = toCourse.toCourse(point.getX(), point.getY());
            return kind == PersonsOpinion.Kind.USUAL
                    ? DrawnItem.spot(at)
                    : DrawnItem.disc(at, parts.radiusMetres(paceMetres, text -> number(text, parts)));
        }
        List<Polygon> areas = kind == PersonsOpinion.Kind.USUAL ? List.of() : Polygons.of(feature, toCourse);
        if (areas.size() != 1) {
            throw parts.trouble(FindingKind.DRAWN_SHAPE, shape.getGeometryType())
                    .failure();
        }
        return areas.get(0);
    }

    private static double number(String text, DrawnParts parts) {
        if (!text.matches("[0-9]{1,4}([.][0-9]+)?")) {
            throw parts.trouble(FindingKind.DRAWN_NOT_A_NUMBER, text).failure();
        }
        return Double.parseDouble(text);
    }

    private List<String> holes(DrawnParts parts, Geometry place, MapFeature feature) {
        Optional<Hole> named = parts.text("hole").map(id -> Holes.named(course, id, feature.where()));
        List<Hole> candidates = named.map(List::of).orElse(course.holes());
        List<Hole> under = Holes.under(place, candidates, FindingKind.DRAWN_OFF_GREEN, feature.where());
        return under.stream()
                .flatMap(hole -> course.onGreenOf(hole).stream())
                .distinct()
                .toList();
    }
}
