package org.cupwright.turf;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.oneOf;
import static org.cupwright.policy.SettingType.wholeNumber;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.SourceKind;

/** What of the turf depends on the course. */
public final class TurfPolicy {
    private static final String MODEL = "our choice: growth stretches the clocks, see the guide's page on turf";

    public static final Setting<GrassKind> GRASS = new Setting<>(
            "turf.grass",
            oneOf(GrassKind.class),
            "",
            GrassKind.COOL_SEASON,
            SourceKind.OURS,
            "most greens of temperate courses; set it");

    /** Rest from foot traffic about an old hole while the grass grows. */
    public static final Setting<Integer> WEAR_REST_DAYS = new Setting<>(
            "turf.wearRestDays",
            wholeNumber(3, 28),
            "days",
            14,
            SourceKind.PUBLISHED,
            "Lemons, USGA Green Section Record, 2008: no fewer than 14 days");

    /** The same where it hardly grows. */
    public static final Setting<Integer> WEAR_REST_SLOW_DAYS =
            new Setting<>("turf.wearRestSlowDays", wholeNumber(3, 60), "days", 28, SourceKind.OURS, MODEL);

    /** However slow the growth, a hole's surroundings rest no longer than this. */
    public static final Setting<Integer> WEAR_REST_CAP_DAYS =
            new Setting<>("turf.wearRestCapDays", wholeNumber(3, 60), "days", 28, SourceKind.OURS, MODEL);

    /** When a plug's outline is guessed to be gone, while the grass grows. */
    public static final Setting<Integer> PLUG_DAYS =
            new Setting<>("turf.plugDays", wholeNumber(2, 28), "days", 7, SourceKind.OURS, MODEL);

    /** The same where it hardly grows. */
    public static final Setting<Integer> PLUG_SLOW_DAYS =
            new Setting<>("turf.plugSlowDays", wholeNumber(2, 60), "days", 21, SourceKind.OURS, MODEL);

    /** A plug that was looked at and had not knit counts for so many days more at least. */
    public static final Setting<Integer> PLUG_LOOK_AGAIN_DAYS = new Setting<>(
            "turf.plugLookAgainDays", wholeNumber(1, 14), "days", 3, SourceKind.OURS, "two looks a week are bearable");

    /** For so long after the guess somebody is asked to look; then the plug is taken to have knit. */
    public static final Setting<Integer> PLUG_ASK_DAYS = new Setting<>(
            "turf.plugAskDays", wholeNumber(0, 60), "days", 14, SourceKind.OURS, "a list nobody works off is not read");

    /** How many days a new plug is looked after with water. */
    public static final Setting<Integer> WATERING_DAYS = new Setting<>(
            "turf.wateringDays",
            wholeNumber(0, 14),
            "days",
            3,
            SourceKind.COMMON_PRACTICE,
            "common practice, no source");

    /** Rain of less than this wets no plug. */
    public static final Setting<Double> WETTING_RAIN_MILLIMETRES = new Setting<>(
            "turf.wettingRainMillimetres",
            number(0.1, 20),
            "mm",
            1.0,
            SourceKind.OURS,
            "less hardly passes the leaves");

    public static final Setting<Double> CROP_COEFFICIENT = new Setting<>(
            "turf.cropCoefficient",
            number(0.2, 1.5),
            "",
            0.8,
            SourceKind.PUBLISHED,
            "Meyer et al. 1985: cool-season turf 0.80, warm-season 0.60; Aamlid et al. 2016: putting green 0.81");

    /** A day on which the turf loses this much water is hot enough for an afternoon round with the can. */
    public static final Setting<Double> AFTERNOON_LOSS_MILLIMETRES = new Setting<>(
            "turf.afternoonLossMillimetres",
            number(1, 15),
            "mm",
            4.0,
            SourceKind.OURS,
            "about a summer day of 5 mm ETo");

    /** The same for wind, mean of the day. */
    public static final Setting<Double> AFTERNOON_WIND_METRES_PER_SECOND = new Setting<>(
            "turf.afternoonWindMetresPerSecond", number(1, 30), "m/s", 8.0, SourceKind.OURS, "a fresh breeze all day");

    /** The ground holds no more than this: the deficit grows no further. */
    public static final Setting<Double> DEFICIT_CAP_MILLIMETRES = new Setting<>(
            "turf.deficitCapMillimetres",
            number(5, 150),
            "mm",
            25.0,
            SourceKind.OURS,
            "a sandy root zone of some 250 mm");

    public static final Setting<Double> ALTITUDE_METRES = new Setting<>(
            "turf.altitudeMetres", number(-400, 5000), "m", 100.0, SourceKind.OURS, "set it: 100 m change little");

    /** Height at which the weather station measures wind. */
    public static final Setting<Double> WIND_HEIGHT_METRES = new Setting<>(
            "turf.windHeightMetres",
            number(1, 100),
            "m",
            10.0,
            SourceKind.COMMON_PRACTICE,
            "common practice, no source");

    /** After so many greens a cutter's blade is due. */
    public static final Setting<Integer> GREENS_PER_SHARPENING = new Setting<>(
            "turf.greensPerSharpening",
            wholeNumber(1, 2000),
            "greens",
            126,
            SourceKind.OURS,
            "a week of eighteen greens");

    /** So many greens running high, or low, from one cutter ask for a look at its stop. */
    public static final Setting<Integer> SAME_WAY_GREENS = new Setting<>(
            "turf.sameWayGreens",
            wholeNumber(2, 18),
            "greens",
            3,
            SourceKind.OURS,
            "one in eight by chance, were it a coin");

    /** A cutter's stop that is set so far from how it was on an earlier day is asked about. */
    public static final Setting<Double> STOP_DIFFERS_MILLIMETRES = new Setting<>(
            "turf.stopDiffersMillimetres", number(0.5, 25), "mm", 1.0, SourceKind.OURS, "nearer than a ruler is read");

    private TurfPolicy() {}

    /** All of them, in the order in which they are shown. */
    public static List<Setting<?>> settings() {
        return List.of(
                GRASS,
                WEAR_REST_DAYS,
                WEAR_REST_SLOW_DAYS,
                WEAR_REST_CAP_DAYS,
                PLUG_DAYS,
                PLUG_SLOW_DAYS,
                PLUG_LOOK_AGAIN_DAYS,
                PLUG_ASK_DAYS,
                WATERING_DAYS,
                WETTING_RAIN_MILLIMETRES,
                CROP_COEFFICIENT,
                AFTERNOON_LOSS_MILLIMETRES,
                AFTERNOON_WIND_METRES_PER_SECOND,
                DEFICIT_CAP_MILLIMETRES,
                ALTITUDE_METRES,
                WIND_HEIGHT_METRES,
                GREENS_PER_SHARPENING,
                SAME_WAY_GREENS,
                STOP_DIFFERS_MILLIMETRES);
    }
}
