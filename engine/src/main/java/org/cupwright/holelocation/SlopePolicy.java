package org.cupwright.holelocation;

import static org.cupwright.policy.SettingType.number;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** How level and even the ground about a hole is to be, and how far from steep ground. */
public final class SlopePolicy {
    private static final Slice SLICE = new Slice("holelocation");

    private static final String RANDA = "R&A, Guidance on Running a Competition, ch. 4 (superseded)";
    private static final String LEMONS = "Lemons, USGA Green Section Record, 2008";
    private static final String TRADE = "Golf Course Industry, June 2018 (trade press, chart after Lemons)";

    public static final Setting<Double> LEVEL_SHARE = SLICE.setting("levelShare", number(0.1, 1), "of ρ", 0.5)
            .published(
                    LEMONS + " (a ball stops within 2 ft); half the rolling resistance is the plane on which it does");

    public static final Setting<Double> LEVEL_CAP_PERCENT = SLICE.setting("levelCapPercent", number(0.5, 10), "%", 3.0)
            .commonPractice("most greens are cut on 3 % or less, whatever the green speed allows");

    public static final Setting<Double> LEVEL_CAP_EVENT_PERCENT = SLICE.setting(
                    "levelCapEventPercent", number(0.5, 10), "%", 2.5)
            .commonPractice("events keep to flatter ground than everyday play");

    public static final Setting<Double> LEVEL_CAUTION_PERCENT = SLICE.setting(
                    "levelCautionPercent", number(0, 10), "%", 2.5)
            .commonPractice("from here on somebody should look");

    public static final Setting<Double> LEVEL_WET_PERCENT = SLICE.setting("levelWetPercent", number(0, 3), "%", 0.5)
            .commonPractice("flatter ground drains badly when rain is expected");

    public static final Setting<Double> EVEN_GRADE_POINTS = SLICE.setting(
                    "evenGradePoints", number(0.5, 10), "points", 2.0)
            .ours(LEMONS + " asks for a uniform grade about the hole");

    public static final Setting<Double> EVEN_GRADE_ERROR_POINTS = SLICE.setting(
                    "evenGradeErrorPoints", number(0.1, 10), "points", 1.0)
            .ours("a worse known change of slope decides nothing");

    public static final Setting<Double> WIDE_GRADE_SHARE =
            SLICE.setting("wideGradeShare", number(0, 1), "of ρ", 0.4).ours("where a slope is marginal");

    public static final Setting<Double> WIDE_GRADE_METRES = SLICE.setting("wideGradeMetres", number(1, 6), "m", 2.44)
            .published(LEMONS + ": 8 ft about the hole where the slope is marginal");

    public static final Setting<Double> RIDGE_CAUTION_PACES = SLICE.setting(
                    "ridgeCautionPaces", number(0, 20), "paces", 3.0)
            .published(RANDA + ": at least three paces from a severe slope");

    public static final Setting<Double> RIDGE_CAUTION_SHARE = SLICE.setting(
                    "ridgeCautionShare", number(0.1, 2), "of ρ", 0.69)
            .published(TRADE + ": its upper slope limit is about 0.69 of the rolling resistance");

    public static final Setting<Double> RIDGE_FAIL_METRES = SLICE.setting("ridgeFailMetres", number(0, 20), "m", 3.05)
            .published(RANDA + ": at least three paces from a severe slope, here 10 ft");

    public static final Setting<Double> RIDGE_FAIL_SHARE = SLICE.setting("ridgeFailShare", number(0.1, 2), "of ρ", 1.0)
            .published("Weber, USGA Green Section Record, 1997, as quoted: on the critical slope, ρ, "
                    + "a ball does not stop");

    public static final Setting<Double> HOLLOW_PASS_MILLIMETRES = SLICE.setting(
                    "hollowPassMillimetres", number(0, 100), "mm", 5.0)
            .ours("shallower water is gone before play");

    public static final Setting<Double> HOLLOW_FAIL_MILLIMETRES = SLICE.setting(
                    "hollowFailMillimetres", number(0, 200), "mm", 15.0)
            .ours("deeper water stands while play goes on");

    public static final Setting<Double> ABOUT_METRES = SLICE.setting("aboutMetres", number(0, 1.5), "m", 0.6)
            .ours("rounding to half a pace and pacing move a person 0.3 to 0.5 m");

    private SlopePolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
