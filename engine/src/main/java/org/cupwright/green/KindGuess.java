package org.cupwright.green;

/**
 * How a green was surveyed where nobody said, from how its points lie. What cannot be told apart so is taken for the
 * kind whose points lie like that most often; all limits are our choice.
 */
public final class KindGuess {
    /** A scanner on the ground leaves more points than this, 1/m². */
    private static final double SCAN_PER_SQUARE_METRE = 60;

    /** A model from photographs has more points than this, 1/m². */
    private static final double DRONE_PER_SQUARE_METRE = 15;

    /** Nobody walks to more points than this, 1/m². */
    private static final double WALKED_PER_SQUARE_METRE = 15;

    /** Cells of a grid narrower than this were made from photographs, m. */
    private static final double DRONE_CELL_METRES = 0.3;

    private KindGuess() {}

    /** The same points with the kind they have, or else the likeliest. */
    public static SurveyPoints withKind(SurveyPoints points) {
        return points.kind().isPresent() ? points : points.as(of(points));
    }

    /** @param points of one green, in the order in which they came */
    public static SurveyKind of(SurveyPoints points) {
        if (points.gridCellMetres().isPresent()) {
            return points.gridCellMetres().getAsDouble() < DRONE_CELL_METRES ? SurveyKind.DRONE : SurveyKind.LIDAR;
        }
        double spacing = Walk.spacingMetres(points);
        double density = 1 / (spacing * spacing);
        if (density < WALKED_PER_SQUARE_METRE && Walk.isWalked(points)) {
            return SurveyKind.RTK;
        }
        if (density >= SCAN_PER_SQUARE_METRE) {
            return SurveyKind.SCAN;
        }
        return density >= DRONE_PER_SQUARE_METRE ? SurveyKind.DRONE : SurveyKind.LIDAR;
    }
}
