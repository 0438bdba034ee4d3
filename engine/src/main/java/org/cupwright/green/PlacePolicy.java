package org.cupwright.green;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.oneOf;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;
import org.cupwright.units.Paces;

/** How a course says where a place on a green is: from where it measures, and how long its pace is. */
public final class PlacePolicy {
    private static final Slice SLICE = new Slice("place");

    public static final Setting<OnConvention> ON_CONVENTION = SLICE.setting(
                    "onConvention", oneOf(OnConvention.class), "", OnConvention.ALONG_CHORD)
            .commonPractice("both ways of measuring are in use; along the chord a place and its third never contradict "
                    + "each other");

    public static final Setting<Double> PACE_METRES = SLICE.setting(
                    "paceMetres", number(0.5, 1.2), "m", Paces.STANDARD_METRES)
            .commonPractice("3 ft; whoever paces should walk a known distance once and set their own");

    private PlacePolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
