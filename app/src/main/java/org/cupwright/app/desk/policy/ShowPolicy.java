package org.cupwright.app.desk.policy;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.cupwright.app.session.Session;
import org.cupwright.policy.Policy;
import org.cupwright.policy.PolicyCatalogue;

/** The settings in force on a day, with where their defaults come from. */
public record ShowPolicy(Session session, PolicyCatalogue catalogue) {
    /** Every setting. */
    public List<PolicyEntry> all(LocalDate day) {
        Policy policy = inForce(day);
        return catalogue.settings().stream()
                .map(setting -> PolicyEntry.of(setting, policy))
                .toList();
    }

    /** What a course decides first, and whatever else it has decided. */
    public List<PolicyEntry> first(LocalDate day) {
        Policy policy = inForce(day);
        return Stream.concat(
                        Settings.FIRST.stream(),
                        catalogue.settings().stream()
                                .filter(setting -> !Settings.FIRST.contains(setting) && !policy.isDefault(setting)))
                .map(setting -> PolicyEntry.of(setting, policy))
                .toList();
    }

    /** The setting of a key. */
    public PolicyEntry one(LocalDate day, String key) {
        return PolicyEntry.of(PolicyKeys.setting(catalogue, key), inForce(day));
    }

    /** The policy in force on a day; without any course the one for every course. */
    public Policy inForce(LocalDate day) {
        return session.read(
                stores -> PolicyKeys.history(stores, session.course()).at(day));
    }
}
