package org.cupwright.holelocation.spot;

import org.cupwright.course.Outline;
import org.cupwright.green.Jet;
import org.cupwright.green.Surface;
import org.locationtech.jts.geom.Envelope;

/**
 * A surface read from a fine table instead of evaluated, for the millions of short rolls by which a whole green is judged.
 *
 * <p>Heights and slopes are each interpolated bilinearly between nodes {@link #NODE_METRES} apart, so a slope is off by at most
 * node²/8 times its second derivative: 0.1 points on a tier of 0.3 m in 2 m, a hundredth of that on ordinary ground. Second
 * derivatives are the differences of the slopes in a cell. Off the table the nearest node's cell goes on.
 */
final class TabulatedSurface implements Surface {
    private static final double NODE_METRES = 0.125;

    /** Balls are followed this far over the edge at most, m. */
    private static final double MARGIN_METRES = 0.5;

    private final double west;
    private final double south;
    private final int columns;
    private final int rows;

    /** Height, slope east and slope north of every node, row by row from the south-west. */
    private final double[] nodes;

    TabulatedSurface(Surface surface, Outline outline) {
        Envelope box = outline.polygon().getEnvelopeInternal();
        this.west = box.getMinX() - MARGIN_METRES;
        this.south = box.getMinY() - MARGIN_METRES;
        this.columns = 2 + (int) ((box.getWidth() + 2 * MARGIN_METRES) / NODE_METRES);
        this.rows = 2 + (int) ((box.getHeight() + 2 * MARGIN_METRES) / NODE_METRES);
        this.nodes = new double[3 * columns * rows];
        Jet jet = new Jet();
        for (int node = 0; node < columns * rows; node++) {
            surface.at(west + NODE_METRES * (node % columns), south + NODE_METRES * (node / columns), jet);
            nodes[3 * node] = jet.z;
            nodes[3 * node + 1] = jet.zx;
            nodes[3 * node + 2] = jet.zy;
        }
    }

    @Override
    public void at(double east, double north, Jet out) {
        double x = (east - west) * (1 / NODE_METRES);
        double y = (north - south) * (1 / NODE_METRES);
        int column = Math.min(columns - 2, Math.max(0, (int) x));
        int row = Math.min(rows - 2, Math.max(0, (int) y));
        double t = x - column;
        double s = y - row;
        int southWest = 3 * (row * columns + column);
        int northWest = southWest + 3 * columns;
        out.z = between(southWest, northWest, t, s);
        out.zx = between(southWest + 1, northWest + 1, t, s);
        out.zy = between(southWest + 2, northWest + 2, t, s);
        out.zxx = eastwards(southWest + 1, northWest + 1, s);
        out.zyy = northwards(southWest + 2, northWest + 2, t);
        out.zxy = (eastwards(southWest + 2, northWest + 2, s) + northwards(southWest + 1, northWest + 1, t)) / 2;
    }

    private double between(int southWest, int northWest, double t, double s) {
        double below = nodes[southWest] + t * (nodes[southWest + 3] - nodes[southWest]);
        double above = nodes[northWest] + t * (nodes[northWest + 3] - nodes[northWest]);
        return below + s * (above - below);
    }

    private double eastwards(int southWest, int northWest, double s) {
        double below = nodes[southWest + 3] - nodes[southWest];
        double above = nodes[northWest + 3] - nodes[northWest];
        return (below + s * (above - below)) * (1 / NODE_METRES);
    }

    private double northwards(int southWest, int northWest, double t) {
        double left = nodes[northWest] - nodes[southWest];
        double right = nodes[northWest + 3] - nodes[southWest + 3];
        return (left + t * (right - left)) * (1 / NODE_METRES);
    }
}
