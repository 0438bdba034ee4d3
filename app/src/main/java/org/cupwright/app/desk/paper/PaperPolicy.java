package org.cupwright.app.desk.paper;

import static org.cupwright.policy.SettingType.oneOf;
import static org.cupwright.policy.SettingType.text;
import static org.cupwright.policy.SettingType.yesNo;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** What the course decides about its paper. */
public final class PaperPolicy {
    private static final Slice SLICE = new Slice("paper");

    private static final int SHORT = 24;
    private static final int LINE = 160;
    private static final int LIST = 400;

    public static final Setting<PaperSize> PAPER =
            SLICE.setting("size", oneOf(PaperSize.class), "", PaperSize.A4).ours("as most of the world prints on");

    public static final Setting<String> FLAG_FRONT = flag("flagFront", "red");
    public static final Setting<String> FLAG_MIDDLE = flag("flagMiddle", "white");
    public static final Setting<String> FLAG_BACK = flag("flagBack", "blue");

    public static final Setting<String> RING =
            SLICE.setting("ring", text(LINE), "", "").ours("nobody, until the course names whom to ring");

    /** Whether the day's sheet has an address that is open to everybody. */
    public static final Setting<Boolean> PUBLIC_SHEET =
            SLICE.setting("publicSheet", yesNo(), "", false).ours("nothing is given out until the course says so");

    /** The last part of that address, which nobody guesses. */
    public static final Setting<String> SHEET_LINK = SLICE.setting("sheetLink", SheetLink.typed(), "", "")
            .ours("none, until one is made: one that came with the program would be known to everybody");

    /** Under which address readers find the office. */
    public static final Setting<String> OFFICE_ADDRESS = SLICE.setting(
                    "officeAddress", SheetLink.typedAddress(), "", "")
            .ours("none is guessed: what stands on paper has to lead somewhere");

    public static final Setting<RimWhited> WHITE_RIM = SLICE.setting("whiteRim", RimWhited.type(), "", RimWhited.NEVER)
            .commonPractice("common practice, no source: rims are whited for events");

    public static final Setting<Boolean> TWO_PIECE = SLICE.setting("twoPiece", yesNo(), "", false)
            .commonPractice("common practice, no source: plugs come out in two pieces on heavy clay");

    public static final Setting<CutterKind> CUTTER = SLICE.setting(
                    "cutter", oneOf(CutterKind.class), "", CutterKind.TURNED)
            .commonPractice("common practice, no source: most cutters are turned in by hand, some driven by a hammer");

    public static final Setting<Boolean> MOWN_FIRST = SLICE.setting("mownFirst", yesNo(), "", true)
            .commonPractice("common practice, no source: a green is mown before its hole is cut");

    public static final Setting<String> BALL_MARKS = SLICE.setting(
                    "ballMarks", text(SHORT), "", "whoever changes the hole")
            .commonPractice("common practice, no source");

    public static final Setting<String> NURSERY = SLICE.setting("nursery", text(LINE), "", "")
            .ours("none, until the course says where turf for repairs grows");

    public static final Setting<String> SOIL = SLICE.setting("soil", text(LINE), "", "")
            .commonPractice("common practice, no source: what the green is built of; the course says what that is");

    public static final Setting<String> SHARPENS = SLICE.setting("sharpens", text(LINE), "", "")
            .commonPractice("common practice, no source: whoever looks after the tools; the course says who that is");

    public static final Setting<String> TICK_LIST = SLICE.setting("tickList", text(LIST), "", "")
            .ours("the usual tools, until the course gives its own list, separated by commas");

    private PaperPolicy() {}

    private static Setting<String> flag(String name, String colour) {
        return SLICE.setting(name, text(SHORT), "", colour)
                .commonPractice("common practice, no source; courses differ, there is no standard");
    }

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
