package org.cupwright.settingout;

import java.util.List;
import org.cupwright.policy.SourceKind;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;

/** What a course may set about measuring a position out. */
public final class SettingOutPolicy {
    public static final Setting<Double> TAPE_SIGMA_METRES = new Setting<>(
            "settingout.tapeSigmaMetres",
            SettingType.number(0.001, 0.5),
            "m",
            0.02,
            SourceKind.OURS,
            "a tape pulled by hand over a green, held to a mark and read to the centimetre");

    public static final Setting<Double> LEAST_TAPE_ANGLE_DEGREES = new Setting<>(
            "settingout.leastTapeAngleDegrees",
            SettingType.number(10, 80),
            "°",
            30.0,
            SourceKind.COMMON_PRACTICE,
            "tapes that meet at a sharper angle, or at one as flat on the other side (150°), fix a point badly");

    public static final Setting<Double> LONGEST_TAPE_METRES = new Setting<>(
            "settingout.longestTapeMetres",
            SettingType.number(10, 200),
            "m",
            50.0,
            SourceKind.OURS,
            "a long tape of the usual length");

    private SettingOutPolicy() {}

    public static List<Setting<?>> settings() {
        return List.of(TAPE_SIGMA_METRES, LEAST_TAPE_ANGLE_DEGREES, LONGEST_TAPE_METRES);
    }
}
