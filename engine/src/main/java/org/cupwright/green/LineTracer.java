package org.cupwright.green;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateList;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * Traces the lines of one value through a grid.
 *
 * <p>Every side of a cell has a number: twice its south-west node's for the side towards east, one more for the side
 * towards north. A value crosses a side at most once, and a side belongs to two cells, so each crossed side has at most
 * two neighbours on its line; following them gives whole lines. A node of exactly the value counts as above it.
 */
final class LineTracer {
    private static final int NONE = -1;

    private final ScalarGrid grid;
    private final double level;
    private final GeometryFactory factory;
    private final int[] oneWay;
    private final int[] otherWay;
    private final boolean[] traced;

    LineTracer(ScalarGrid grid, double level, GeometryFactory factory) {
        this.grid = grid;
        this.level = level;
        this.factory = factory;
        int sides = 2 * grid.columns() * grid.rows();
        oneWay = new int[sides];
        otherWay = new int[sides];
        traced = new boolean[sides];
        Arrays.fill(oneWay, NONE);
        Arrays.fill(otherWay, NONE);
    }

    List<LineString> lines() {
        for (int row = 0; row + 1 < grid.rows(); row++) {
            for (int column = 0; column + 1 < grid.columns(); column++) {
                cross(column, row);
            }
        }
        List<LineString> lines = new ArrayList<>();
        for (int side = 0; side < oneWay.length; side++) {
            if (oneWay[side] != NONE && otherWay[side] == NONE) {
                trace(side, lines); // open lines first, from one of their ends
            }
        }
        for (int side = 0; side < oneWay.length; side++) {
            if (oneWay[side] != NONE) {
                trace(side, lines);
            }
        }
        return lines;
    }

    /** Joins the crossed sides of one cell. */
    private void cross(int column, int row) {
        double southWest = grid.value(column, row);
        double southEast = grid.value(column + 1, row);
        double northEast = grid.value(column + 1, row + 1);
        double northWest = grid.value(column, row + 1);
        double sum = southWest + southEast + northEast + northWest;
        if (!Double.isFinite(sum)) {
            return;
        }
        int south = 2 * (row * grid.columns() + column);
        int west = south + 1;
        int east = west + 2;
        int north = south + 2 * grid.columns();
        boolean[] crossed = {
            above(southWest) != above(southEast),
            above(southEast) != above(northEast),
            above(northEast) != above(northWest),
            above(northWest) != above(southWest)
        };
        int[] sides = {south, east, north, west};
        if (crossed[0] && crossed[1] && crossed[2] && crossed[3]) {
            boolean southWestStandsAlone = above(southWest) != above(sum / 4);
            join(south, southWestStandsAlone ? west : east);
            join(north, southWestStandsAlone ? east : west);
            return;
        }
        int first = NONE;
        for (int i = 0; i < 4; i++) {
            if (crossed[i] && first == NONE) {
                first = sides[i];
            } else if (crossed[i]) {
                join(first, sides[i]);
            }
        }
    }

    private boolean above(double value) {
        return value >= level;
    }

    private void join(int a, int b) {
        addNeighbour(a, b);
        addNeighbour(b, a);
    }

    private void addNeighbour(int side, int neighbour) {
        if (oneWay[side] == NONE) {
            oneWay[side] = neighbour;
        } else {
            otherWay[side] = neighbour;
        }
    }

    private void trace(int start, List<LineString> lines) {
        if (traced[start]) {
            return;
        }
        CoordinateList line = new CoordinateList();
        int before = NONE;
        int side = start;
        while (side != NONE && !traced[side]) {
            traced[side] = true;
            line.add(crossing(side), false);
            int next = oneWay[side] == before ? otherWay[side] : oneWay[side];
            before = side;
            side = next;
        }
        if (side == start) {
            line.add(crossing(start), false);
        }
        if (line.size() > 1) {
            lines.add(factory.createLineString(line.toCoordinateArray()));
        }
    }

    private Coordinate crossing(int side) {
        int column = side / 2 % grid.columns();
        int row = side / 2 / grid.columns();
        boolean towardsNorth = side % 2 == 1;
        double from = grid.value(column, row);
        double to = towardsNorth ? grid.value(column, row + 1) : grid.value(column + 1, row);
        double share = (level - from) / (to - from);
        double step = share * grid.cellMetres();
        return new Coordinate(
                grid.east(column) + (towardsNorth ? 0 : step), grid.north(row) + (towardsNorth ? step : 0));
    }
}
