package org.cupwright.app.desk;

import java.util.List;
import org.cupwright.policy.Mark;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;

/** What the course decides about its paper. */
public final class PaperPolicy {
    private static final int SHORT = 24;
    private static final int LINE = 160;

    public static final Setting<PaperSize> PAPER =
            new Setting<>("paper.size", SettingType.oneOf(PaperSize.class), "", PaperSize.A4, Mark.OURS, "our choice");

    public static final Setting<String> FLAG_FRONT = flag("flagFront", "red");
    public static final Setting<String> FLAG_MIDDLE = flag("flagMiddle", "white");
    public static final Setting<String> FLAG_BACK = flag("flagBack", "blue");

    public static final Setting<String> RING = new Setting<>(
            "paper.ring",
            SettingType.text(LINE),
            "",
            "",
            Mark.OURS,
            "our choice: nobody, until the course names whom to ring");

    public static final Setting<Boolean> WHITE_RIM = new Setting<>(
            "paper.whiteRim",
            SettingType.yesNo(),
            "",
            false,
            Mark.COMMON_PRACTICE,
            "common practice, no source: rims are whited for events");

    private PaperPolicy() {}

    private static Setting<String> flag(String name, String colour) {
        return new Setting<>(
                "paper." + name,
                SettingType.text(SHORT),
                "",
                colour,
                Mark.COMMON_PRACTICE,
                "common practice, no source; courses differ, there is no standard");
    }

    public static List<Setting<?>> settings() {
        return List.of(PAPER, FLAG_FRONT, FLAG_MIDDLE, FLAG_BACK, RING, WHITE_RIM);
    }
}
