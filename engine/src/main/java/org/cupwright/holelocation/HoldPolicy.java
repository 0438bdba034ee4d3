package org.cupwright.holelocation;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.wholeNumber;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** How a ball is to come to rest by the hole, and how fast a green is taken to be. */
public final class HoldPolicy {
    private static final Slice SLICE = new Slice("holelocation");

    private static final String LEMONS = "Lemons, USGA Green Section Record, 2008";
    private static final String TRADE = "Golf Course Industry, June 2018 (trade press, chart after Lemons)";

    public static final Setting<Double> HOLD_METRES = SLICE.setting("holdMetres", number(0.1, 3), "m", 0.61)
            .published(LEMONS + ": a ball can be stopped within about 2 ft of the hole");

    public static final Setting<Double> HOLD_CAUTION_METRES = SLICE.setting(
                    "holdCautionMetres", number(0.1, 3), "m", 0.91)
            .published(TRADE + ": a fair downhill putt can finish within 3 ft");

    public static final Setting<Double> PAST_METRES = SLICE.setting("pastMetres", number(0.05, 1), "m", 0.30)
            .commonPractice("a putt that would run a foot past the hole on the level");

    public static final Setting<Integer> HEADINGS =
            SLICE.setting("headings", wholeNumber(8, 360), "", 36).ours("every ten degrees");

    public static final Setting<Double> START_METRES = SLICE.setting("startMetres", number(0.5, 12), "m", 3.0)
            .ours("a side from which no 3 m putt can start on the green does not count");

    public static final Setting<Double> SEASON_SPEED_FEET = SLICE.setting("seasonSpeedFeet", number(4, 16), "ft", 10.0)
            .ours("what counts where nobody has read the green speed; the course should set its own");

    public static final Setting<Double> DRYING_FEET = SLICE.setting("dryingFeet", number(0, 4), "ft", 0.5)
            .ours("greens dry and quicken after the morning reading");

    public static final Setting<Double> ROLLED_FEET =
            SLICE.setting("rolledFeet", number(0, 4), "ft", 0.5).ours("rolling quickens a green");

    public static final Setting<Double> DOUBLE_CUT_FEET =
            SLICE.setting("doubleCutFeet", number(0, 4), "ft", 0.5).ours("a second mowing quickens a green");

    private HoldPolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
