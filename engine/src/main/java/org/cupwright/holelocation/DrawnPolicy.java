package org.cupwright.holelocation;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;
import org.cupwright.policy.SourceKind;

/** What people's word about ground counts for. */
public final class DrawnPolicy {
    /** What is answered on ground that people say is bad. */
    public enum OnBadGround {
        FAIL,
        CAUTION
    }

    public static final Setting<OnBadGround> BAD_GROUND = new Setting<>(
            "holelocation.drawnBad",
            SettingType.oneOf(OnBadGround.class),
            "",
            OnBadGround.FAIL,
            SourceKind.OURS,
            "our choice: who drew it knows why, and taking it back is one command");

    public static final Setting<Double> USUAL_SPOT_METRES = new Setting<>(
            "holelocation.usualSpotMetres",
            SettingType.number(0, 5),
            "m",
            0.91,
            SourceKind.OURS,
            "our choice: a pace; who says that holes go here does not mean the inch");

    private DrawnPolicy() {}

    public static List<Setting<?>> settings() {
        return List.of(BAD_GROUND, USUAL_SPOT_METRES);
    }
}
