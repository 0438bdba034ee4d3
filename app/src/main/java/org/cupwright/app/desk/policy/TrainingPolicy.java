package org.cupwright.app.desk.policy;

import static org.cupwright.policy.SettingType.wholeNumber;
import static org.cupwright.policy.SettingType.yesNo;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** What the course decides about training. */
public final class TrainingPolicy {
    private static final Slice SLICE = new Slice("training");
    private static final int LONGEST_MONTHS = 120;

    /** After so many months what was signed off is to be looked at again. */
    public static final Setting<Integer> REFRESHER_MONTHS = SLICE.setting(
                    "refresherMonths", wholeNumber(1, LONGEST_MONTHS), "months", 12)
            .ours("once a year, before the season");

    /** Whether holes of an event are cut: set for the event's days. */
    public static final Setting<Boolean> EVENT_HOLES =
            SLICE.setting("eventHoles", yesNo(), "", false).ours("no event, until the course says so for a day");

    private TrainingPolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
