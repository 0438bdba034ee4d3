package org.cupwright.policy;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All settings there are, gathered from the packages' slices; the only way a value gets from outside into a history. */
public final class PolicyCatalogue {
    private final Map<String, Setting<?>> byKey = new LinkedHashMap<>();

    public PolicyCatalogue(Collection<? extends Setting<?>> settings) {
        for (Setting<?> setting : settings) {
            if (byKey.put(setting.key(), setting) != null) {
                throw new IllegalArgumentException("two settings share the key " + setting.key());
            }
        }
    }

    /** In the order of the slices. */
    public List<Setting<?>> settings() {
        return List.copyOf(byKey.values());
    }

    public Optional<Setting<?>> find(String key) {
        return Optional.ofNullable(byKey.get(key));
    }

    /** The keys that look most like one that does not exist, for the "what to try" of a message. */
    public List<String> namesLike(String key) {
        String wanted = key.toLowerCase(java.util.Locale.ROOT);
        String last = wanted.substring(wanted.lastIndexOf('.') + 1);
        return byKey.keySet().stream()
                .filter(known -> known.toLowerCase(java.util.Locale.ROOT).contains(last))
                .limit(3)
                .toList();
    }
}
