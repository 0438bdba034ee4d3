package org.cupwright.policy;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Every value the course ever set, in the order in which it set them; nothing is overwritten, so that a plan of an
 * earlier day can be explained by the policy of that day.
 *
 * @param changes oldest entry first; of two changes of one key with the same effective day the later entry counts
 */
public record PolicyHistory(List<PolicyChange> changes) {
    public PolicyHistory {
        changes = List.copyOf(changes);
    }

    /** Since which day each setting has the value that is in force on a day; those that were never set are missing. */
    public Map<String, LocalDate> since(LocalDate day) {
        Map<String, LocalDate> since = new HashMap<>();
        for (PolicyChange change : changes) {
            if (!change.effective().isAfter(day)) {
                since.merge(change.key(), change.effective(), (known, next) -> next.isBefore(known) ? known : next);
            }
        }
        return since;
    }

    /** The policy in force on a day. */
    public Policy at(LocalDate day) {
        Map<String, LocalDate> since = new HashMap<>();
        Map<String, String> set = new HashMap<>();
        for (PolicyChange change : changes) {
            boolean inForce = !change.effective().isAfter(day);
            LocalDate known = since.get(change.key());
            if (inForce && (known == null || !change.effective().isBefore(known))) {
                since.put(change.key(), change.effective());
                set.put(change.key(), change.value());
            }
        }
        return Policy.of(set);
    }
}
