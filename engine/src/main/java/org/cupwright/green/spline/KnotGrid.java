package org.cupwright.green.spline;

/**
 * The knots of a tensor-product cubic spline: square cells over a rectangle, and how the coefficients are numbered.
 *
 * <p>Coefficients run along the shorter side first, which keeps the band of the normal equations as narrow as it can
 * be.
 *
 * @param west left edge, metres, course frame
 * @param south lower edge, metres, course frame
 * @param spacingMetres side of a cell
 * @param cellsEast number of cells towards east
 * @param cellsNorth number of cells towards north
 */
public record KnotGrid(double west, double south, double spacingMetres, int cellsEast, int cellsNorth) {
    /** A cubic spline has three coefficients more than cells in each direction. */
    private static final int DEGREE = 3;

    public KnotGrid {
        if (!(spacingMetres > 0) || cellsEast < 1 || cellsNorth < 1) {
            throw new IllegalArgumentException(
                    "no grid of knots: spacing " + spacingMetres + ", " + cellsEast + " × " + cellsNorth + " cells");
        }
    }

    /**
     * The grid whose cells cover a rectangle, growing to the east and north where the sides are no multiple of the
     * spacing.
     */
    static KnotGrid covering(double west, double south, double east, double north, double spacingMetres) {
        int cellsEast = (int) Math.max(1, Math.ceil((east - west) / spacingMetres - 1e-9));
        int cellsNorth = (int) Math.max(1, Math.ceil((north - south) / spacingMetres - 1e-9));
        return new KnotGrid(west, south, spacingMetres, cellsEast, cellsNorth);
    }

    /** A grid over at least the same rectangle with cells so many times as wide. */
    KnotGrid coarser(int times) {
        return covering(
                west,
                south,
                west + cellsEast * spacingMetres,
                south + cellsNorth * spacingMetres,
                times * spacingMetres);
    }

    /** A grid over at least the same rectangle with cells no wider than so much. */
    KnotGrid finer(double metres) {
        return metres >= spacingMetres
                ? this
                : covering(west, south, west + cellsEast * spacingMetres, south + cellsNorth * spacingMetres, metres);
    }

    int coefficientsEast() {
        return cellsEast + DEGREE;
    }

    int coefficientsNorth() {
        return cellsNorth + DEGREE;
    }

    int coefficients() {
        return coefficientsEast() * coefficientsNorth();
    }

    int strideEast() {
        return coefficientsEast() >= coefficientsNorth() ? coefficientsNorth() : 1;
    }

    int strideNorth() {
        return coefficientsEast() >= coefficientsNorth() ? 1 : coefficientsEast();
    }

    int index(int east, int north) {
        return east * strideEast() + north * strideNorth();
    }

    /**
     * The greatest distance between the numbers of two coefficients that lie at most so many apart in both directions.
     */
    int halfBandwidth(int apart) {
        return apart * (strideEast() + strideNorth());
    }

    /** Distance from the west edge, in cells. */
    double cellsFromWest(double east) {
        return (east - west) / spacingMetres;
    }

    /** Distance from the south edge, in cells. */
    double cellsFromSouth(double north) {
        return (north - south) / spacingMetres;
    }

    /** The column of cells that holds a distance in cells; the nearest one beyond the edge. */
    int cellEast(double cellsFromWest) {
        return Math.min(Math.max((int) Math.floor(cellsFromWest), 0), cellsEast - 1);
    }

    /** The row of cells that holds a distance in cells; the nearest one beyond the edge. */
    int cellNorth(double cellsFromSouth) {
        return Math.min(Math.max((int) Math.floor(cellsFromSouth), 0), cellsNorth - 1);
    }

    /** Whether a disc lies wholly on the grid. */
    boolean holdsDisc(double east, double north, double radiusMetres) {
        return east - radiusMetres >= west
                && north - radiusMetres >= south
                && east + radiusMetres <= west + cellsEast * spacingMetres
                && north + radiusMetres <= south + cellsNorth * spacingMetres;
    }
}
