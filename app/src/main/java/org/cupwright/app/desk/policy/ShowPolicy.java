package org.cupwright.app.desk.policy;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.DataFolder;
import org.cupwright.policy.Policy;
import org.cupwright.policy.PolicyCatalogue;

/** The settings in force on a day, with where their defaults come from. */
public final class ShowPolicy {
    private final DataFolder folder;
    private final PolicyCatalogue catalogue;

    public ShowPolicy(DataFolder folder, PolicyCatalogue catalogue) {
        this.folder = folder;
        this.catalogue = catalogue;
    }

    /** Every setting. */
    public List<PolicyEntry> all(Optional<String> course, LocalDate day) {
        Policy policy = inForce(course, day);
        return catalogue.settings().stream()
                .map(setting -> PolicyEntry.of(setting, policy))
                .toList();
    }

    /** The setting of a key. */
    public PolicyEntry one(Optional<String> course, LocalDate day, String key) {
        return PolicyEntry.of(PolicyKeys.setting(catalogue, key), inForce(course, day));
    }

    /** The policy in force on a day; without any course the one for every course. */
    public Policy inForce(Optional<String> course, LocalDate day) {
        return folder.read(stores ->
                stores.policies().history(PolicyKeys.owner(stores, course)).at(day));
    }
}
