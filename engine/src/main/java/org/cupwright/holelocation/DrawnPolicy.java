package org.cupwright.holelocation;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.oneOf;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** What people's word about ground counts for. */
public final class DrawnPolicy {
    private static final Slice SLICE = new Slice("holelocation");

    /** What is answered on ground that people say is bad. */
    public enum OnBadGround {
        FAIL,
        CAUTION
    }

    public static final Setting<OnBadGround> BAD_GROUND = SLICE.setting(
                    "drawnBad", oneOf(OnBadGround.class), "", OnBadGround.FAIL)
            .ours("who drew it knows why, and taking it back is one command");

    public static final Setting<Double> USUAL_SPOT_METRES = SLICE.setting("usualSpotMetres", number(0, 5), "m", 0.91)
            .ours("a pace; who says that holes go here does not mean the inch");

    private DrawnPolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
