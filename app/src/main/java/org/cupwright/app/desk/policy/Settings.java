package org.cupwright.app.desk.policy;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.HoleLocationPolicy;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.policy.Setting;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.turf.TurfPolicy;

/** Every setting there is: the slices of the engine's packages and the desk's own. */
public final class Settings {
    private Settings() {}

    public static PolicyCatalogue catalogue() {
        List<Setting<?>> all = new ArrayList<>();
        all.addAll(DeskPolicy.settings());
        all.addAll(PaperPolicy.settings());
        all.addAll(PlacePolicy.settings());
        all.addAll(GroundPolicy.settings());
        all.addAll(HoleLocationPolicy.settings());
        all.addAll(RotationPolicy.settings());
        all.addAll(TurfPolicy.settings());
        return new PolicyCatalogue(all);
    }
}
