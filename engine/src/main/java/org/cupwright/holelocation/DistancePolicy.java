package org.cupwright.holelocation;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.wholeNumber;

import java.util.List;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** How far a hole keeps from edges, hazards, old holes and plugs. */
public final class DistancePolicy {
    private static final Slice SLICE = new Slice("holelocation");

    private static final String RANDA = "R&A, Guidance on Running a Competition, ch. 4 (superseded)";
    private static final String LEMONS = "Lemons, USGA Green Section Record, 2008";

    public static final Setting<Double> EDGE_PACES = SLICE.setting("edgePaces", number(0, 20), "paces", 4.0)
            .published(RANDA + ": generally at least four paces from any edge; later texts drop the number");

    public static final Setting<Double> EDGE_LEAST_PACES = SLICE.setting("edgeLeastPaces", number(0, 20), "paces", 2.0)
            .ours("where the edge rule has to be set aside, no hole comes nearer than this");

    public static final Setting<Double> HAZARD_PACES = SLICE.setting("hazardPaces", number(0, 30), "paces", 5.0)
            .ours(RANDA + " asks for more than the usual beside a bunker or a fall-off, without a number");

    public static final Setting<Double> HAZARD_REACH_PACES = SLICE.setting(
                    "hazardReachPaces", number(0, 30), "paces", 5.0)
            .ours("a bunker, water or a fall-off this near outside the edge makes it a hazardous one");

    public static final Setting<Double> CAUTION_PACES = SLICE.setting("cautionPaces", number(0, 5), "paces", 0.5)
            .ours("pacing and rounding move a person by about half a pace");

    public static final Setting<Double> OLD_HOLE_METRES = SLICE.setting("oldHoleMetres", number(0, 20), "m", 2.74)
            .published(RANDA + ": at least three paces from a recent hole");

    public static final Setting<Double> OLD_HOLE_CLOSER_METRES = SLICE.setting(
                    "oldHoleCloserMetres", number(0, 20), "m", 2.44)
            .published(LEMONS + ": areas of 8 ft radius about a hole");

    public static final Setting<Double> LAST_HOLES_METRES = SLICE.setting("lastHolesMetres", number(0, 30), "m", 4.88)
            .published(LEMONS + ": areas of 8 ft radius, so 16 ft between centres");

    public static final Setting<Integer> LAST_HOLES = SLICE.setting("lastHoles", wholeNumber(0, 50), "holes", 4)
            .ours("how many of the last holes the 16 ft are kept from");

    public static final Setting<Integer> LAST_HOLES_DAYS = SLICE.setting(
                    "lastHolesDays", wholeNumber(0, 365), "days", 28)
            .ours("as long as the longest rest; a hole older than that is none of the last, however few "
                    + "were cut since");

    public static final Setting<Double> PLUG_METRES =
            SLICE.setting("plugMetres", number(0, 10), "m", 0.91).commonPractice("3 ft from a plug that still shows");

    public static final Setting<Double> ON_PLUG_METRES = SLICE.setting("onPlugMetres", number(0, 1), "m", 0.15)
            .ours("nearer centres would cut into the old plug, 108 mm wide, or its edge");

    private DistancePolicy() {}

    public static List<Setting<?>> settings() {
        return SLICE.settings();
    }
}
