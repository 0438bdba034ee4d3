package org.cupwright.green;

import org.cupwright.course.MapPoint;
import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Envelope;

/**
 * The spots at which a whole green is looked at: every quarter metre of the course's frame, counted from its origin, so
 * that all greens and all fields of one green share their spots.
 *
 * @param westCount easting of the first column, in cells
 * @param southCount northing of the first row, in cells
 * @param columns spots from west to east
 * @param rows spots from south to north
 */
public record GreenLattice(long westCount, long southCount, int columns, int rows) {
    /** Distance between neighbouring spots, m. */
    public static final double CELL_METRES = 0.25;

    /** The spots over a green and a margin about it. */
    public static GreenLattice over(Outline outline, double marginMetres) {
        Envelope box = outline.polygon().getEnvelopeInternal();
        long west = Math.round(Math.floor((box.getMinX() - marginMetres) / CELL_METRES));
        long south = Math.round(Math.floor((box.getMinY() - marginMetres) / CELL_METRES));
        long east = Math.round(Math.ceil((box.getMaxX() + marginMetres) / CELL_METRES));
        long north = Math.round(Math.ceil((box.getMaxY() + marginMetres) / CELL_METRES));
        return new GreenLattice(west, south, (int) (east - west) + 1, (int) (north - south) + 1);
    }

    public int size() {
        return columns * rows;
    }

    public double east(int column) {
        return (westCount + column) * CELL_METRES;
    }

    public double north(int row) {
        return (southCount + row) * CELL_METRES;
    }

    public MapPoint spot(int index) {
        return new MapPoint(east(index % columns), north(index / columns));
    }

    /** The column of the spot at or next west of an easting, possibly outside. */
    public double columnOf(double east) {
        return east / CELL_METRES - westCount;
    }

    public double rowOf(double north) {
        return north / CELL_METRES - southCount;
    }

    /** The index of the spot nearest to a point, or −1 outside. */
    public int nearest(MapPoint point) {
        long column = Math.round(columnOf(point.east()));
        long row = Math.round(rowOf(point.north()));
        boolean outside = column < 0 || row < 0 || column >= columns || row >= rows;
        return outside ? -1 : (int) (row * columns + column);
    }
}
