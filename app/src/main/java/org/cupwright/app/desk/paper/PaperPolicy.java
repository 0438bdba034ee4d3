package org.cupwright.app.desk.paper;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SettingType;
import org.cupwright.policy.SourceKind;

/** What the course decides about its paper. */
public final class PaperPolicy {
    private static final int SHORT = 24;
    private static final int LINE = 160;
    private static final int LIST = 400;

    public static final Setting<PaperSize> PAPER = new Setting<>(
            "paper.size", SettingType.oneOf(PaperSize.class), "", PaperSize.A4, SourceKind.OURS, "our choice");

    public static final Setting<String> FLAG_FRONT = flag("flagFront", "red");
    public static final Setting<String> FLAG_MIDDLE = flag("flagMiddle", "white");
    public static final Setting<String> FLAG_BACK = flag("flagBack", "blue");

    public static final Setting<String> RING = new Setting<>(
            "paper.ring",
            SettingType.text(LINE),
            "",
            "",
            SourceKind.OURS,
            "our choice: nobody, until the course names whom to ring");

    public static final Setting<Boolean> WHITE_RIM = new Setting<>(
            "paper.whiteRim",
            SettingType.yesNo(),
            "",
            false,
            SourceKind.COMMON_PRACTICE,
            "common practice, no source: rims are whited for events");

    public static final Setting<Boolean> TWO_PIECE = new Setting<>(
            "paper.twoPiece",
            SettingType.yesNo(),
            "",
            false,
            SourceKind.COMMON_PRACTICE,
            "common practice, no source: plugs come out in two pieces on heavy clay");

    public static final Setting<Boolean> MOWN_FIRST = new Setting<>(
            "paper.mownFirst",
            SettingType.yesNo(),
            "",
            true,
            SourceKind.COMMON_PRACTICE,
            "common practice, no source: a green is mown before its hole is cut");

    public static final Setting<String> BALL_MARKS = new Setting<>(
            "paper.ballMarks",
            SettingType.text(SHORT),
            "",
            "whoever changes the hole",
            SourceKind.COMMON_PRACTICE,
            "common practice, no source");

    public static final Setting<String> NURSERY = new Setting<>(
            "paper.nursery",
            SettingType.text(LINE),
            "",
            "",
            SourceKind.OURS,
            "our choice: none, until the course says where turf for repairs grows");

    public static final Setting<String> TICK_LIST = new Setting<>(
            "paper.tickList",
            SettingType.text(LIST),
            "",
            "",
            SourceKind.OURS,
            "our choice: the usual tools, until the course gives its own list, separated by commas");

    private PaperPolicy() {}

    private static Setting<String> flag(String name, String colour) {
        return new Setting<>(
                "paper." + name,
                SettingType.text(SHORT),
                "",
                colour,
                SourceKind.COMMON_PRACTICE,
                "common practice, no source; courses differ, there is no standard");
    }

    public static List<Setting<?>> settings() {
        return List.of(
                PAPER,
                FLAG_FRONT,
                FLAG_MIDDLE,
                FLAG_BACK,
                RING,
                WHITE_RIM,
                TWO_PIECE,
                MOWN_FIRST,
                BALL_MARKS,
                NURSERY,
                TICK_LIST);
    }
}
