package org.cupwright.holelocation;

import static org.cupwright.policy.SettingType.number;
import static org.cupwright.policy.SettingType.ranking;

import java.util.List;
import java.util.stream.Stream;
import org.cupwright.policy.Setting;
import org.cupwright.policy.Slice;

/** The settings by which positions are judged: those of the rules, and what is done with the answers. */
public final class HoleLocationPolicy {
    private static final Slice SLICE = new Slice("holelocation");

    /** What is conceded first where nothing passes; a concession left out is never made. */
    public static final Setting<List<Concession>> CONCESSIONS = SLICE.setting(
                    "concessions", ranking(Concession.class), "", List.of(Concession.values()))
            .ours("what troubles play least goes first, the rest of old holes last");

    public static final Setting<Double> BEST_APART_METRES = SLICE.setting("bestApartMetres", number(0, 20), "m", 3.0)
            .ours("nearer spots are the same choice to whoever cuts the hole");

    private HoleLocationPolicy() {}

    /** All settings of this package. */
    public static List<Setting<?>> settings() {
        return Stream.of(
                        DistancePolicy.settings(),
                        SlopePolicy.settings(),
                        HoldPolicy.settings(),
                        SpeedPolicy.settings(),
                        DrawnPolicy.settings(),
                        SLICE.settings())
                .<Setting<?>>flatMap(List::stream)
                .toList();
    }
}
