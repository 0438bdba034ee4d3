package org.cupwright.app.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What an eye sees on a drawing of the golden green: places in the drawing's own units, to the right and up the page.
 *
 * @param edge the green's corners
 * @param bunker the bunker's corners
 * @param mark the middle of the mark's cross
 * @param spot the middle of today's spot
 * @param northTail where the north arrow begins
 * @param northTip where it points
 * @param bar both ends of the scale bar, said to be five metres
 * @param play where the arrow of play begins and where it points
 */
record SeenDrawing(
        List<Point2D> edge,
        List<Point2D> bunker,
        Point2D mark,
        Point2D spot,
        Point2D northTail,
        Point2D northTip,
        List<Point2D> bar,
        List<Point2D> play) {
    /** How true a place is drawn, m on the ground. */
    private static final double WITHIN_METRES = 0.1;

    private double scale() {
        return bar.get(0).distance(bar.get(1)) / 5;
    }

    /** A way on the drawing as metres to the right and up. */
    private Point2D metres(Point2D from, Point2D to) {
        return new Point2D.Double((to.getX() - from.getX()) / scale(), (to.getY() - from.getY()) / scale());
    }

    /** Where a place is, told from the front's left corner as a person on the fairway sees it. */
    Point2D ground(Point2D drawn) {
        Point2D metres = metres(edge.get(0), drawn);
        Point2D corner = GoldenGreen.CORNERS.get(0);
        return GoldenGreen.seen(corner.getX() + metres.getX(), corner.getY() + metres.getY());
    }

    void isTrueOf(GoldenGreen green) {
        everythingIsInItsPlace();
        leftIsLeftAndTheBackIsUp();
        northPointsNorth(green);
    }

    private void everythingIsInItsPlace() {
        assertThat(edge).hasSameSizeAs(GoldenGreen.CORNERS);
        assertThat(bunker).hasSameSizeAs(GoldenGreen.BUNKER);
        for (int i = 0; i < edge.size(); i++) {
            isAt("corner " + i, edge.get(i), GoldenGreen.CORNERS.get(i));
        }
        for (int i = 0; i < bunker.size(); i++) {
            isAt("bunker " + i, bunker.get(i), GoldenGreen.BUNKER.get(i));
        }
        isAt("mark", mark, GoldenGreen.MARK);
        isAt("spot", spot, GoldenGreen.SPOT);
        assertThat(edge.get(0).distance(edge.get(1)) / scale())
                .as("the front is 26 m wide by the scale bar")
                .isCloseTo(26, within(WITHIN_METRES));
        assertThat(edge.get(0).distance(edge.get(5)) / scale())
                .as("the left arm is 30 m long by the scale bar")
                .isCloseTo(30, within(WITHIN_METRES));
    }

    private void isAt(String what, Point2D drawn, Point2D seen) {
        assertThat(ground(drawn).distance(seen)).as(what).isLessThan(WITHIN_METRES);
    }

    private void leftIsLeftAndTheBackIsUp() {
        assertThat(greatest(bunker, Point2D::getX))
                .as("bunker left of the green")
                .isLessThan(least(edge));
        assertThat(mark.getX()).as("mark right of the spot").isGreaterThan(spot.getX());
        assertThat(edge.get(5).getY())
                .as("back above front")
                .isGreaterThan(edge.get(0).getY());
        assertThat(play.get(1).getY())
                .as("play runs up")
                .isGreaterThan(play.get(0).getY());
        assertThat(play.get(1).getX()).isCloseTo(play.get(0).getX(), within(0.01));
        assertThat(bar.get(0).getY())
                .as("the bar lies level")
                .isCloseTo(bar.get(1).getY(), within(0.01));
    }

    private static double greatest(List<Point2D> points, ToDoubleFunction<Point2D> side) {
        return points.stream().mapToDouble(side).max().orElseThrow();
    }

    private static double least(List<Point2D> points) {
        return points.stream().mapToDouble(Point2D::getX).min().orElseThrow();
    }

    /** The arrow against the north of the coordinates: two drawn edges of the green, put together to lead north. */
    private void northPointsNorth(GoldenGreen green) {
        Point2D corner = green.onMap(GoldenGreen.CORNERS.get(0));
        Point2D front = green.onMap(GoldenGreen.CORNERS.get(1));
        Point2D side = green.onMap(GoldenGreen.CORNERS.get(5));
        double frontEast = front.getX() - corner.getX();
        double frontNorth = front.getY() - corner.getY();
        double sideEast = side.getX() - corner.getX();
        double sideNorth = side.getY() - corner.getY();
        double fronts = -sideEast / (frontEast * sideNorth - frontNorth * sideEast);
        double sides = frontEast / (frontEast * sideNorth - frontNorth * sideEast);
        Point2D drawnFront = metres(edge.get(0), edge.get(1));
        Point2D drawnSide = metres(edge.get(0), edge.get(5));
        double right = fronts * drawnFront.getX() + sides * drawnSide.getX();
        double up = fronts * drawnFront.getY() + sides * drawnSide.getY();
        Point2D arrow = metres(northTail, northTip);
        double length = arrow.distance(0, 0);
        assertThat(arrow.getX() / length).as("north to the right").isCloseTo(right, within(0.02));
        assertThat(arrow.getY() / length).as("north up").isCloseTo(up, within(0.02));
    }
}
