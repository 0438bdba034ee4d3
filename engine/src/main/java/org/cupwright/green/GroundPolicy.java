package org.cupwright.green;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.wholeNumber;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** The settings by which surveys and level readings become ground. */
public final class GroundPolicy {
    private static final Slice SLICE = new Slice("ground");

    public static final Setting<Double> GRID_SIGMA_METRES = SLICE.setting(
                    "gridSigmaMetres", number(0.001, 1), "m", 0.10)
            .ours("a grid that does not say how good its heights are is taken for ordinary airborne data");

    public static final Setting<Double> GRID_CELL_METRES = SLICE.setting("gridCellMetres", number(0.1, 2), "m", 1.0)
            .ours("wider cells smooth away what a 0.91 m disc is to show");

    public static final Setting<Double> READING_STANDARD_ERROR_PERCENT = SLICE.setting(
                    "readingStandardErrorPercent", number(0.01, 2), "%", 0.1)
            .ours("what a digital level laid on turf repeats to");

    public static final Setting<Double> READING_REACH_METRES = SLICE.setting(
                    "readingReachMetres", number(0.1, 2), "m", 0.6)
            .ours("the error of placing a hole, over which a reading is taken to hold");

    public static final Setting<Integer> LEAST_POINTS_IN_DISC = SLICE.setting(
                    "leastPointsInDisc", wholeNumber(4, 50), "", 6)
            .ours("twice what a plane needs, in the 0.91 m disc");

    public static final Setting<Double> WIDEST_GAP_METRES = SLICE.setting("widestGapMetres", number(0.2, 3), "m", 1.0)
            .ours("a spot in the middle of a wider empty circle is not surveyed");

    public static final Setting<Double> MARGIN_METRES = SLICE.setting("marginMetres", number(0, 10), "m", 2.0)
            .ours("points so far outside the outline still help the slope at the edge");

    public static final Setting<Double> KNOT_SPACING_METRES =
            SLICE.setting("knotSpacingMetres", number(0.25, 1), "m", 0.5).ours("four knots across the 0.91 m disc");

    public static final Setting<Double> PENALTY_DIVISOR = SLICE.setting("penaltyDivisor", number(1, 20), "", 3.0)
            .ours("the full restricted-likelihood penalty smooths tiers away and its intervals miss there");

    public static final Setting<Double> BLUNDER_LIMIT = SLICE.setting("blunderLimit", number(3, 20), "robust sd", 4.0)
            .ours("of ten thousand sound points fewer than one lies so far off");

    private GroundPolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
