package org.cupwright.formats.outlines;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.Projection;
import org.cupwright.green.findings.GreenSize;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * The greens of a map file and what is odd about their size and shape.
 *
 * <p>A green in several parts becomes several greens, because a common export puts all greens of a course into one
 * feature; parts too small to be greens are left out. Both are told.
 */
final class GreenShapes {
    private final Projection toCourse;
    private final List<Finding> findings;
    private final List<GreenShape> greens = new ArrayList<>();

    private GreenShapes(Projection toCourse, List<Finding> findings) {
        this.toCourse = toCourse;
        this.findings = findings;
    }

    /**
     * @throws org.cupwright.finding.UnreadableFile if a green's outline crosses itself
     */
    static List<GreenShape> of(List<MapFeature> features, Projection toCourse, List<Finding> findings) {
        GreenShapes shapes = new GreenShapes(toCourse, findings);
        features.forEach(shapes::add);
        shapes.tellOverlaps();
        return shapes.greens;
    }

    private void add(MapFeature feature) {
        if (feature.shape().getDimension() == 0) {
            findings.add(MapFeature.leftOut(Finding.of(
                    FindingKind.WRONG_SHAPE, feature.where(), feature.shape().getGeometryType())));
            return;
        }
        List<Polygon> parts = Polygons.of(feature, toCourse);
        if (parts.size() == 1) {
            add(parts.get(0), feature);
            return;
        }
        findings.add(Finding.of(FindingKind.GREEN_IN_PARTS, feature.where(), parts.size())
                .trying(new Message.Area(GreenSize.VERY_SMALL_SQUARE_METRES)));
        parts.stream()
                .filter(part -> part.getArea() >= GreenSize.VERY_SMALL_SQUARE_METRES)
                .forEach(part -> add(part, feature));
    }

    private void add(Polygon part, MapFeature feature) {
        GreenSize.refuseImpossible(part, feature.where());
        Outline outline = new Outline(part);
        greens.add(GreenShape.of(outline, feature, findings));
        GreenSize.check(outline, feature.where()).ifPresent(findings::add);
    }

    private void tellOverlaps() {
        for (int i = 0; i < greens.size(); i++) {
            for (int j = i + 1; j < greens.size(); j++) {
                tellOverlap(greens.get(i), greens.get(j));
            }
        }
    }

    private void tellOverlap(GreenShape first, GreenShape second) {
        Polygon a = first.outline().polygon();
        Polygon b = second.outline().polygon();
        if (!a.getEnvelopeInternal().intersects(b.getEnvelopeInternal())) {
            return;
        }
        Geometry shared = a.intersection(b);
        if (shared.getArea() > 0) {
            findings.add(Finding.of(FindingKind.GREENS_OVERLAP, second.where(), new Message.Area(shared.getArea()))
                    .at(MapPoint.of(shared.getInteriorPoint().getCoordinate())));
        }
    }
}
