package org.cupwright.app.desk.policy;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cupwright.app.session.Session;
import org.cupwright.policy.Policy;
import org.cupwright.policy.PolicyCatalogue;
import org.cupwright.policy.PolicyChange;

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

    /** What a course decides first, and nothing else. */
    public List<PolicyEntry> decidedFirst(LocalDate day) {
        Policy policy = inForce(day);
        return Settings.FIRST.stream()
                .map(setting -> PolicyEntry.of(setting, policy))
                .toList();
    }

    /** The setting of a key. */
    public PolicyEntry one(LocalDate day, String key) {
        return PolicyEntry.of(PolicyKeys.setting(catalogue, key), inForce(day));
    }

    /** Since which day each setting has its value of a day; those that were never set are missing. */
    public Map<String, LocalDate> since(LocalDate day) {
        return session.read(
                stores -> PolicyKeys.history(stores, session.course()).since(day));
    }

    /** Every value a setting was ever given, in the order in which that was done. */
    public List<PolicyChange> changes(String key) {
        return session.read(stores -> PolicyKeys.history(stores, session.course()).changes().stream()
                .filter(change -> change.key().equals(key))
                .toList());
    }

    /** The policy in force on a day; without any course the one for every course. */
    public Policy inForce(LocalDate day) {
        return session.read(
                stores -> PolicyKeys.history(stores, session.course()).at(day));
    }
}
