package org.cupwright.holelocation.spot;

import java.util.Arrays;
import java.util.List;
import org.cupwright.course.Hazard;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenLattice;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;

/**
 * The part of a green on which a ball counts as on the green: its outline without false fronts and other fall-offs that
 * reach into it.
 *
 * <p>Distances are exact. Whether a point lies inside is asked millions of times, so cells that the edge does not touch
 * are settled beforehand; near the edge the answer is the polygon's own. Safe for use by several threads.
 */
public final class PuttingArea {
    private static final byte NEAR_EDGE = 0;
    private static final byte INSIDE = 1;
    private static final byte OUTSIDE = 2;

    /** The edge is walked in steps this long, less than half a cell, m. */
    private static final double WALK_METRES = 0.1;

    private final Geometry area;
    private final IndexedPointInAreaLocator locator;
    private final LatticeDistances edge;
    private final GreenLattice lattice;
    private final byte[] cells;

    public PuttingArea(Hole hole) {
        this.area = withoutFallOffs(hole);
        this.locator = new IndexedPointInAreaLocator(area);
        this.lattice = GreenLattice.over(hole.green(), 1);
        this.edge = new LatticeDistances(lattice, NearestBorder.of(area.getBoundary())::metresFrom);
        this.cells = new byte[lattice.size()];
        settle();
    }

    private static Geometry withoutFallOffs(Hole hole) {
        Geometry left = hole.green().polygon();
        for (Hazard hazard : hole.hazards()) {
            if (hazard.kind() == Hazard.Kind.FALL_OFF && hazard.area().intersects(left)) {
                left = left.difference(hazard.area());
            }
        }
        if (left.isEmpty()) {
            throw new IllegalArgumentException("fall-offs cover the whole green of hole " + hole.id()
                    + ". Maybe the fall-off was drawn round the green instead of beside it.");
        }
        return left;
    }

    private void settle() {
        Arrays.fill(cells, OUTSIDE);
        boolean[] touched = touchedByEdge();
        for (int i = 0; i < cells.length; i++) {
            if (touched[i]) {
                cells[i] = NEAR_EDGE;
            } else if (locator.locate(lattice.spot(i).toCoordinate()) == Location.INTERIOR) {
                cells[i] = INSIDE;
            }
        }
    }

    private boolean[] touchedByEdge() {
        boolean[] touched = new boolean[cells.length];
        Geometry boundary = area.getBoundary();
        for (int part = 0; part < boundary.getNumGeometries(); part++) {
            Coordinate[] ring = boundary.getGeometryN(part).getCoordinates();
            for (int i = 1; i < ring.length; i++) {
                int steps = 1 + (int) (ring[i].distance(ring[i - 1]) / WALK_METRES);
                for (int step = 0; step <= steps; step++) {
                    double share = (double) step / steps;
                    touchAbout(
                            ring[i - 1].x + share * (ring[i].x - ring[i - 1].x),
                            ring[i - 1].y + share * (ring[i].y - ring[i - 1].y),
                            touched);
                }
            }
        }
        return touched;
    }

    private void touchAbout(double east, double north, boolean[] touched) {
        int column = (int) Math.round(lattice.columnOf(east));
        int row = (int) Math.round(lattice.rowOf(north));
        for (int r = row - 1; r <= row + 1; r++) {
            for (int c = column - 1; c <= column + 1; c++) {
                touched[r * lattice.columns() + c] = true;
            }
        }
    }

    /** The spots at which the green is looked at. */
    public GreenLattice lattice() {
        return lattice;
    }

    /** Whether a point lies on the green, its edge included. */
    public boolean contains(double east, double north) {
        long column = Math.round(lattice.columnOf(east));
        long row = Math.round(lattice.rowOf(north));
        if (column < 0 || row < 0 || column >= lattice.columns() || row >= lattice.rows()) {
            return false;
        }
        byte cell = cells[(int) (row * lattice.columns() + column)];
        return cell == INSIDE || cell == NEAR_EDGE && locator.locate(new Coordinate(east, north)) != Location.EXTERIOR;
    }

    /** Distance to the edge, m: positive on the green, negative off it. */
    public double edgeMetres(MapPoint point) {
        double distance = edge.from(point);
        return contains(point.east(), point.north()) ? distance : -distance;
    }

    /**
     * The part of the edge within a reach of any of some hazards.
     *
     * <p>Reach is measured through whatever lies between; on a green narrower than the reach a hazard also tells on the
     * far edge.
     */
    public Geometry edgeNear(List<Hazard> hazards, double reachMetres) {
        Geometry boundary = area.getBoundary();
        Geometry near = area.getFactory().createLineString();
        for (Hazard hazard : hazards) {
            // 32 segments a quarter circle keep the reach to 2 mm
            Geometry part = boundary.intersection(hazard.area().buffer(reachMetres, 32));
            near = near.union(part);
        }
        return near;
    }
}
