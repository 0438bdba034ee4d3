package org.cupwright.green;

import org.cupwright.policy.Mark;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;

/** What the course may decide about how well its ground is known. */
public final class GroundPolicy {
    public static final Setting<Double> GRID_SIGMA_METRES = new Setting<>(
            "ground.gridSigmaMetres",
            SettingType.number(0.001, 1),
            "m",
            0.10,
            Mark.OURS,
            "our choice: what a national height model usually states, where the file says nothing");

    public static final Setting<Double> LEVEL_ERROR_POINTS = new Setting<>(
            "ground.levelErrorPoints",
            SettingType.number(0.01, 1),
            "points",
            0.1,
            Mark.OURS,
            "our choice: a digital level laid on a straight edge");

    public static final Setting<Double> LEVEL_REACH_METRES = new Setting<>(
            "ground.levelReachMetres",
            SettingType.number(0.2, 2),
            "m",
            0.6,
            Mark.OURS,
            "our choice: as far about a level reading as a spot is judged");

    public static final Setting<Integer> LEAST_POINTS_IN_DISC = new Setting<>(
            "ground.leastPointsInDisc",
            SettingType.wholeNumber(4, 100),
            "points",
            6,
            Mark.OURS,
            "our choice: twice what a plane needs");

    public static final Setting<Double> WIDEST_GAP_METRES = new Setting<>(
            "ground.widestGapMetres",
            SettingType.number(0.2, 3),
            "m",
            1.0,
            Mark.OURS,
            "our choice: a spot whose nearest point is farther than half of this is not surveyed");

    public static final Setting<Double> PENALTY_DIVISOR = new Setting<>(
            "ground.penaltyDivisor",
            SettingType.number(1, 30),
            "",
            3.0,
            Mark.OURS,
            "our choice: full REML smooths steps away and its intervals miss there");

    public static final Setting<Double> BLUNDER_LIMIT = new Setting<>(
            "ground.blunderLimit",
            SettingType.number(3, 10),
            "robust sd",
            4.0,
            Mark.OURS,
            "our choice: one good point in sixteen thousand lies beyond");

    private GroundPolicy() {}
}
