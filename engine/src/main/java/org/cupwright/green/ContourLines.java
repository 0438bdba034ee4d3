package org.cupwright.green;

import java.util.ArrayList;
import java.util.Collection;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.cupwright.course.Outline;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.MultiLineString;
import org.locationtech.jts.geom.util.LineStringExtracter;
import org.locationtech.jts.operation.linemerge.LineMerger;

/**
 * Lines of equal value of a grid: contour lines of the ground, or the border of ground steeper than a limit.
 *
 * <p>Lines go straight through each cell, between points interpolated on the cell's sides (marching squares), and are
 * joined from cell to cell: a line is closed, or ends at the grid's border or at unknown ground. For a smooth function
 * f they lie off the true line by at most about cell²·|f''|/(8·|∇f|). Where a cell has two opposite corners above and
 * two below, the mean of the four, taken for the value at the centre, decides which pair belongs together.
 */
public final class ContourLines {
    /**
     * Distance between contour lines of a green, m: our choice, close enough to show a tier and far enough to be
     * counted.
     */
    public static final double HEIGHT_STEP_METRES = 0.05;

    /** More lines than anyone could read, a slip in the step: our choice. */
    private static final int MOST_LEVELS = 10_000;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /**
     * The lines of one value.
     *
     * @param level the value
     * @param lines not empty
     */
    public record Contour(double level, MultiLineString lines) {}

    private ContourLines() {}

    /** The contour lines at every multiple of a step that the grid reaches, lowest first. */
    public static List<Contour> every(double step, ScalarGrid grid) {
        DoubleSummaryStatistics known = grid.known();
        if (known.getCount() == 0) {
            return List.of();
        }
        double first = Math.ceil(known.getMin() / step);
        double last = Math.floor(known.getMax() / step);
        if (!(step > 0) || !(last - first < MOST_LEVELS)) {
            throw new IllegalArgumentException("a step of " + step + " between lines does not suit values from "
                    + known.getMin() + " to " + known.getMax());
        }
        List<Contour> contours = new ArrayList<>();
        for (double multiple = first; multiple <= last; multiple++) {
            contours.add(new Contour(multiple * step, at(multiple * step, grid)));
        }
        return withLines(contours);
    }

    /** As {@link #every(double, ScalarGrid)}, of what lies within an outline. */
    public static List<Contour> every(double step, ScalarGrid grid, Outline outline) {
        return withLines(every(step, grid).stream()
                .map(contour -> new Contour(contour.level(), clipped(contour.lines(), outline)))
                .toList());
    }

    /** The lines of one value; a {@code MULTILINESTRING EMPTY} where the grid never crosses it. */
    public static MultiLineString at(double level, ScalarGrid grid) {
        return FACTORY.createMultiLineString(
                new LineTracer(grid, level, FACTORY).lines().toArray(LineString[]::new));
    }

    /** What of the lines lies within an outline. */
    public static MultiLineString clipped(MultiLineString lines, Outline outline) {
        Geometry inside = lines.intersection(outline.polygon());
        LineMerger merger = new LineMerger();
        merger.add(LineStringExtracter.getLines(inside));
        Collection<?> joined = merger.getMergedLineStrings();
        return FACTORY.createMultiLineString(joined.toArray(LineString[]::new));
    }

    private static List<Contour> withLines(List<Contour> contours) {
        return contours.stream().filter(contour -> !contour.lines().isEmpty()).toList();
    }
}
