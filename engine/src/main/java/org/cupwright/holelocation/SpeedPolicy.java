package org.cupwright.holelocation;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.wholeNumber;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** How long a reading of the green speed holds, and from how much rain on a forecast is believed. */
public final class SpeedPolicy {
    private static final Slice SLICE = new Slice("holelocation");

    public static final Setting<Integer> CARRIED_DAYS = SLICE.setting("speedCarriedDays", wholeNumber(0, 14), "d", 3)
            .ours("greens keep their speed for some days; later the season's figure is as good a guess");

    public static final Setting<Double> RAIN_FORETOLD_MILLIMETRES = SLICE.setting(
                    "rainForetoldMillimetres", number(0.1, 50), "mm", 1.0)
            .ours("of less no water stands in a hollow");

    private SpeedPolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
