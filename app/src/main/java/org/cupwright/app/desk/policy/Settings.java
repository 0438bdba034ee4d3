package org.cupwright.app.desk.policy;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.SharingPolicy;
import org.cupwright.holelocation.DistancePolicy;
import org.cupwright.holelocation.HoldPolicy;
import org.cupwright.holelocation.HoleLocationPolicy;
import org.cupwright.holelocation.SlopePolicy;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.policy.Setting;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.SchemePolicy;
import org.cupwright.rotation.weeks.WeeksPolicy;
import org.cupwright.round.RoundPolicy;
import org.cupwright.turf.TurfPolicy;

/** Every setting there is: the slices of the engine's packages and the desk's own. */
public final class Settings {
    /** What a course decides first, in the order in which it is asked: our choice. */
    static final List<Setting<?>> FIRST = List.of(
            HoldPolicy.SEASON_SPEED_FEET,
            DistancePolicy.EDGE_PACES,
            DistancePolicy.HAZARD_PACES,
            SlopePolicy.LEVEL_CAP_PERCENT,
            DistancePolicy.OLD_HOLE_METRES,
            RotationPolicy.SCHEME,
            RotationPolicy.YESTERDAY_LEAST_METRES,
            TurfPolicy.GRASS,
            TurfPolicy.WEAR_REST_DAYS,
            PlacePolicy.PACE_METRES,
            PaperPolicy.PAPER,
            PaperPolicy.RING);

    private Settings() {}

    public static PolicyCatalogue catalogue() {
        List<Setting<?>> all = new ArrayList<>();
        all.addAll(DeskPolicy.settings());
        all.addAll(PaperPolicy.settings());
        all.addAll(RoundPolicy.settings());
        all.addAll(TrainingPolicy.settings());
        all.addAll(PlacePolicy.settings());
        all.addAll(GroundPolicy.settings());
        all.addAll(SharingPolicy.settings());
        all.addAll(HoleLocationPolicy.settings());
        all.addAll(RotationPolicy.settings());
        all.addAll(SchemePolicy.settings());
        all.addAll(WeeksPolicy.settings());
        all.addAll(TurfPolicy.settings());
        return new PolicyCatalogue(all);
    }
}
