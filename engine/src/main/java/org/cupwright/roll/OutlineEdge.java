package org.cupwright.roll;

import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * An outline prepared for millions of questions: cells that lie wholly on or off the green answer by themselves, those
 * that the edge crosses ask the outline. The answer is the outline's own.
 */
public final class OutlineEdge implements Edge {
    /** Our choice: small enough that few cells are crossed, large enough to be made in some milliseconds. */
    private static final double CELL_METRES = 0.5;

    private static final byte OFF = 0;
    private static final byte ON = 1;
    private static final byte CROSSED = 2;

    private final Outline outline;
    private final double west;
    private final double south;
    private final int columns;
    private final int rows;
    private final byte[] cells;

    public OutlineEdge(Outline outline) {
        this.outline = outline;
        Envelope bounds = outline.polygon().getEnvelopeInternal();
        this.west = bounds.getMinX();
        this.south = bounds.getMinY();
        this.columns = 1 + (int) (bounds.getWidth() / CELL_METRES);
        this.rows = 1 + (int) (bounds.getHeight() / CELL_METRES);
        this.cells = new byte[columns * rows];
        classify(
                PreparedGeometryFactory.prepare(outline.polygon()),
                outline.polygon().getFactory());
    }

    private void classify(PreparedGeometry green, GeometryFactory factory) {
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Polygon cell = (Polygon) factory.toGeometry(new Envelope(
                        west + column * CELL_METRES,
                        west + (column + 1) * CELL_METRES,
                        south + row * CELL_METRES,
                        south + (row + 1) * CELL_METRES));
                byte inOrCrossed = green.containsProperly(cell) ? ON : CROSSED;
                cells[row * columns + column] = green.disjoint(cell) ? OFF : inOrCrossed;
            }
        }
    }

    @Override
    public boolean holds(double east, double north) {
        double column = (east - west) / CELL_METRES;
        double row = (north - south) / CELL_METRES;
        if (!(column >= 0 && row >= 0 && column < columns && row < rows)) {
            return false;
        }
        byte cell = cells[(int) row * columns + (int) column];
        return cell == CROSSED ? outline.contains(new MapPoint(east, north)) : cell == ON;
    }
}
