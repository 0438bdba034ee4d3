package org.cupwright.app.desk;

import java.util.List;
import org.cupwright.policy.Mark;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;
import org.cupwright.units.UnitSystem;

/** The settings that the desk itself reads. */
public final class DeskPolicy {
    /** How far back plans are looked at for the last holes of a green, days: our choice. */
    static final int LOOK_BACK_DAYS = 28;

    /** How long the ground about an old hole rests. */
    public static final Setting<Integer> REST_DAYS = new Setting<>(
            "desk.restDays",
            SettingType.wholeNumber(0, 60),
            "days",
            14,
            Mark.PUBLISHED,
            "Lemons, USGA Green Section Record, 2008: no fewer than 14 days");

    /** How lengths are shown. */
    public static final Setting<UnitSystem> UNITS = new Setting<>(
            "desk.units",
            SettingType.oneOf(UnitSystem.class),
            "",
            UnitSystem.METRIC,
            Mark.OURS,
            "the engine's own units; places on a green are told in paces whatever is chosen");

    /** The language in which everything is said. */
    public static final Setting<String> LANGUAGE = new Setting<>(
            "desk.language", SettingType.text(3), "", "en", Mark.OURS, "the language every text exists in");

    private DeskPolicy() {}

    public static List<Setting<?>> settings() {
        return List.of(REST_DAYS, UNITS, LANGUAGE);
    }
}
