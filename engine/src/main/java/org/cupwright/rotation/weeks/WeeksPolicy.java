package org.cupwright.rotation.weeks;

import static org.cupwright.policy.SettingType.number;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** What the course may decide about weeks of plans, beside what it decides about one day's. */
public final class WeeksPolicy {
    private static final Slice SLICE = new Slice("rotation");

    public static final Setting<Double> WEIGHT_RESTING = weight(
            "resting",
            "points/hole",
            1300,
            "more than a day's whole balance, and than moving two holes that are planned; somewhat less for each "
                    + "easing that goes before the rest of old holes; one and a half to two and a half times as much "
                    + "on ground that rests, the oldest ground first");

    public static final Setting<Double> WEIGHT_SOON_AFTER_REST = weight(
            "soonAfterRest",
            "points/hole",
            30,
            "as much as little room: a cold week moves the end of many rests by a day or two; the whole of it on the "
                    + "day after the rest is foreseen to end, a third less on each further day");

    public static final Setting<Double> WEIGHT_THIRDS = weight(
            "thirds", "points/hole", 300, "even thirds come before every wish of a day, but not before rested ground");

    public static final Setting<Double> WEIGHT_SHARED_GREEN =
            weight("sharedGreen", "points/m", 20, "as much as nearness to yesterday's hole");

    public static final Setting<Double> WEIGHT_EVEN_DAYS = weight(
            "evenDays",
            "points/%",
            200,
            "so much that days differ by less than three in a thousand, which is easily had");

    public static final Setting<Double> WEIGHT_CHANGE = weight(
            "change",
            "points/hole",
            400,
            "a hole that is planned is not moved for a third that comes out uneven, but for ground that " + "rests");

    private WeeksPolicy() {}

    private static Setting<Double> weight(String term, String unit, double points, String source) {
        return SLICE.setting("weight." + term, number(0, 10_000), unit, points).ours(source);
    }

    /** All of them, for the catalogue. */
    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
