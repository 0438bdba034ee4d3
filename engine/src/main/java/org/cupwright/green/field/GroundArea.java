package org.cupwright.green.field;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.MultiPolygon;
import org.locationtech.jts.geom.Polygon;

/**
 * A part of a green.
 *
 * @param shape its outline, cut at the green's edge
 * @param greatest the greatest value in it of what makes it a part
 */
public record GroundArea(MultiPolygon shape, double greatest) {
    static GroundArea of(Outline green, List<MapPoint> spots, double sideMetres, double greatest) {
        return new GroundArea(LatticeSquares.joined(spots, sideMetres, green), greatest);
    }

    /** Several parts as one. */
    public static GroundArea together(List<GroundArea> parts) {
        Polygon[] pieces = parts.stream()
                .flatMap(part -> IntStream.range(0, part.shape.getNumGeometries())
                        .mapToObj(i -> (Polygon) part.shape.getGeometryN(i)))
                .toArray(Polygon[]::new);
        double greatest = parts.stream().mapToDouble(GroundArea::greatest).max().orElse(Double.NaN);
        return new GroundArea(new GeometryFactory().createMultiPolygon(pieces), greatest);
    }

    public double squareMetres() {
        return shape.getArea();
    }

    /** A point well inside its largest piece; there must be one. */
    public MapPoint inside() {
        Geometry largest = IntStream.range(0, shape.getNumGeometries())
                .mapToObj(shape::getGeometryN)
                .max(Comparator.comparingDouble(Geometry::getArea))
                .orElseThrow();
        return MapPoint.of(largest.getInteriorPoint().getCoordinate());
    }
}
