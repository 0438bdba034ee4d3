package org.cupwright.turf;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.oneOf;
import static org.cupwright.policy.SettingType.wholeNumber;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** What of the turf depends on the course. */
public final class TurfPolicy {
    private static final Slice SLICE = new Slice("turf");

    private static final String MODEL = "growth stretches the clocks, see the guide's page on turf";

    public static final Setting<GrassKind> GRASS = SLICE.setting(
                    "grass", oneOf(GrassKind.class), "", GrassKind.COOL_SEASON)
            .ours("most greens of temperate courses; set it");

    /** Rest from foot traffic about an old hole while the grass grows. */
    public static final Setting<Integer> WEAR_REST_DAYS = SLICE.setting("wearRestDays", wholeNumber(3, 28), "days", 14)
            .published("Lemons, USGA Green Section Record, 2008: no fewer than 14 days");

    /** The same where it hardly grows. */
    public static final Setting<Integer> WEAR_REST_SLOW_DAYS =
            SLICE.setting("wearRestSlowDays", wholeNumber(3, 60), "days", 28).ours(MODEL);

    /** However slow the growth, a hole's surroundings rest no longer than this. */
    public static final Setting<Integer> WEAR_REST_CAP_DAYS =
            SLICE.setting("wearRestCapDays", wholeNumber(3, 60), "days", 28).ours(MODEL);

    /** When a plug's outline is guessed to be gone, while the grass grows. */
    public static final Setting<Integer> PLUG_DAYS =
            SLICE.setting("plugDays", wholeNumber(2, 28), "days", 7).ours(MODEL);

    /** The same where it hardly grows. */
    public static final Setting<Integer> PLUG_SLOW_DAYS =
            SLICE.setting("plugSlowDays", wholeNumber(2, 60), "days", 21).ours(MODEL);

    /** A plug that was looked at and had not knit counts for so many days more at least. */
    public static final Setting<Integer> PLUG_LOOK_AGAIN_DAYS =
            SLICE.setting("plugLookAgainDays", wholeNumber(1, 14), "days", 3).ours("two looks a week are bearable");

    /** For so long after the guess somebody is asked to look; then the plug is taken to have knit. */
    public static final Setting<Integer> PLUG_ASK_DAYS =
            SLICE.setting("plugAskDays", wholeNumber(0, 60), "days", 14).ours("a list nobody works off is not read");

    /** How many days a new plug is looked after with water. */
    public static final Setting<Integer> WATERING_DAYS =
            SLICE.setting("wateringDays", wholeNumber(0, 14), "days", 3).commonPractice("common practice, no source");

    /** Rain of less than this wets no plug. */
    public static final Setting<Double> WETTING_RAIN_MILLIMETRES =
            SLICE.setting("wettingRainMillimetres", number(0.1, 20), "mm", 1.0).ours("less hardly passes the leaves");

    public static final Setting<Double> CROP_COEFFICIENT = SLICE.setting("cropCoefficient", number(0.2, 1.5), "", 0.8)
            .published("Meyer et al. 1985: cool-season turf 0.80, warm-season 0.60; "
                    + "Aamlid et al. 2016: putting green 0.81");

    /** A day on which the turf loses this much water is hot enough for an afternoon round with the can. */
    public static final Setting<Double> AFTERNOON_LOSS_MILLIMETRES =
            SLICE.setting("afternoonLossMillimetres", number(1, 15), "mm", 4.0).ours("about a summer day of 5 mm ETo");

    /** The same for wind, mean of the day. */
    public static final Setting<Double> AFTERNOON_WIND_METRES_PER_SECOND = SLICE.setting(
                    "afternoonWindMetresPerSecond", number(1, 30), "m/s", 8.0)
            .ours("a fresh breeze all day");

    /** The ground holds no more than this: the deficit grows no further. */
    public static final Setting<Double> DEFICIT_CAP_MILLIMETRES =
            SLICE.setting("deficitCapMillimetres", number(5, 150), "mm", 25.0).ours("a sandy root zone of some 250 mm");

    public static final Setting<Double> ALTITUDE_METRES =
            SLICE.setting("altitudeMetres", number(-400, 5000), "m", 100.0).ours("set it: 100 m change little");

    /** Height at which the weather station measures wind. */
    public static final Setting<Double> WIND_HEIGHT_METRES =
            SLICE.setting("windHeightMetres", number(1, 100), "m", 10.0).commonPractice("common practice, no source");

    /** After so many greens a cutter's blade is due. */
    public static final Setting<Integer> GREENS_PER_SHARPENING = SLICE.setting(
                    "greensPerSharpening", wholeNumber(1, 2000), "greens", 126)
            .ours("a week of eighteen greens");

    /** So many greens running high, or low, from one cutter ask for a look at its stop. */
    public static final Setting<Integer> SAME_WAY_GREENS = SLICE.setting(
                    "sameWayGreens", wholeNumber(2, 18), "greens", 3)
            .ours("one in eight by chance, were it a coin");

    /** A cutter's stop that is set so far from how it was on an earlier day is asked about. */
    public static final Setting<Double> STOP_DIFFERS_MILLIMETRES =
            SLICE.setting("stopDiffersMillimetres", number(0.5, 25), "mm", 1.0).ours("nearer than a ruler is read");

    private TurfPolicy() {}

    /** All of them, in the order in which they are shown. */
    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
