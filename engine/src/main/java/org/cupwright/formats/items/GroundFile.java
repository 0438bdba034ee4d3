package org.cupwright.formats.items;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.Projection;
import org.cupwright.formats.outlines.GeoJsonFeatures;
import org.cupwright.formats.outlines.MapFeature;
import org.cupwright.formats.outlines.MapFeatures;
import org.cupwright.green.GroundItem;
import org.locationtech.jts.geom.Geometry;

/**
 * Reads what lies on the greens from GeoJSON: points and polygons with {@code kind} (oldHole, plug, lightUse, outOfUse,
 * saved), and if known {@code since} and {@code until} (2026-05-31) and {@code hole}; without a hole, the greens the
 * shape lies on.
 *
 * <p>A feature that does not read is told and left out.
 */
public final class GroundFile {
    private static final Map<String, GroundItem.Kind> KINDS = Map.of(
            "oldHole", GroundItem.Kind.OLD_HOLE,
            "plug", GroundItem.Kind.PLUG,
            "lightUse", GroundItem.Kind.LIGHT_USE,
            "outOfUse", GroundItem.Kind.OUT_OF_USE,
            "saved", GroundItem.Kind.SAVED);

    private final Course course;
    private final Projection toCourse;
    private final Map<String, List<GroundItem>> byHole = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    private GroundFile(Course course, CoordinateFrame frame) {
        this.course = course;
        this.toCourse =
                Projection.between(frame, CoordinateFrame.of(course.frame().epsg()));
    }

    /**
     * Reads the items of a course.
     *
     * @param in the file; not closed
     * @throws UnreadableFile if the file is empty, no GeoJSON, or beyond the bounds
     */
    public static GroundItems read(InputStream in, Course course) throws IOException {
        MapFeatures map = GeoJsonFeatures.read(in, tags -> false);
        GroundFile reader = new GroundFile(course, map.frame());
        reader.findings.addAll(map.findings());
        map.features().forEach(reader::read);
        return new GroundItems(reader.byHole, reader.findings);
    }

    private void read(MapFeature feature) {
        try {
            GroundItem item = item(feature);
            for (Hole hole : holes(feature, item.place())) {
                byHole.computeIfAbsent(hole.id(), id -> new ArrayList<>()).add(item);
            }
        } catch (UnreadableFile trouble) {
            findings.add(trouble.finding());
        }
    }

    private GroundItem item(MapFeature feature) {
        DrawnParts parts = new DrawnParts(name -> feature.tag(name).orElse(""), feature.where());
        String name = parts.text("kind").orElse("");
        GroundItem.Kind kind = KINDS.get(name);
        if (kind == null) {
            throw parts.trouble(FindingKind.KIND_UNKNOWN, name).failure();
        }
        boolean point = kind == GroundItem.Kind.OLD_HOLE || kind == GroundItem.Kind.PLUG;
        Geometry shape = feature.shape();
        if (shape.getDimension() != (point ? 0 : 2) || shape.getNumGeometries() != 1 || !shape.isValid()) {
            throw parts.trouble(FindingKind.WRONG_SHAPE, shape.getGeometryType())
                    .failure();
        }
        Optional<LocalDate> since = parts.date("since");
        Optional<LocalDate> until = parts.date("until");
        if (since.isPresent() && until.isPresent() && until.get().isBefore(since.get())) {
            throw parts.trouble(FindingKind.DATE_NOT_READABLE, since.get() + " > " + until.get())
                    .failure();
        }
        return new GroundItem(kind, toCourse.apply(shape), since, until);
    }

    private List<Hole> holes(MapFeature feature, Geometry place) {
        List<Hole> candidates = feature.tag("hole")
                .map(id -> List.of(Holes.named(course, id, feature.where())))
                .orElse(course.holes());
        return Holes.under(place, candidates, FindingKind.NOT_ON_A_GREEN, feature.where());
    }
}
