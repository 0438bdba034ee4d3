package org.cupwright.app.desk.policy;

import static org.cupwright.policy.SettingType.oneOf;
import static org.cupwright.policy.SettingType.text;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;
import org.cupwright.units.UnitSystem;

/** The settings that the desk itself reads. */
public final class DeskPolicy {
    private static final Slice SLICE = new Slice("desk");

    /** How lengths are shown; what is shorter than a pace is not told in paces. */
    public static final Setting<UnitSystem> UNITS = SLICE.setting(
                    "units", oneOf(UnitSystem.class), "", UnitSystem.PACES)
            .ours("as on the changer's card: nobody has a tape on the green");

    /** The language in which everything is said. */
    public static final Setting<String> LANGUAGE =
            SLICE.setting("language", text(3), "", "en").ours("the language every text exists in");

    /** Languages that there are words in. */
    public static final List<String> LANGUAGES = List.of("en", "es");

    private DeskPolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
