package org.cupwright.app.desk.policy;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;
import org.cupwright.policy.SourceKind;
import org.cupwright.units.UnitSystem;

/** The settings that the desk itself reads. */
public final class DeskPolicy {
    /** How lengths are shown. */
    public static final Setting<UnitSystem> UNITS = new Setting<>(
            "desk.units",
            SettingType.oneOf(UnitSystem.class),
            "",
            UnitSystem.METRIC,
            SourceKind.OURS,
            "the engine's own units; places on a green are told in paces whatever is chosen");

    /** The language in which everything is said. */
    public static final Setting<String> LANGUAGE = new Setting<>(
            "desk.language", SettingType.text(3), "", "en", SourceKind.OURS, "the language every text exists in");

    private DeskPolicy() {}

    public static List<Setting<?>> settings() {
        return List.of(UNITS, LANGUAGE);
    }
}
