package org.cupwright.policy;

import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * All settings there are, gathered from the packages' slices; the only way a value gets from outside into a history.
 */
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

    /** Up to three keys that look most like one that does not exist, for the "what to try" of a message. */
    public List<String> namesLike(String key) {
        String wanted = key.toLowerCase(Locale.ROOT);
        String last = wanted.substring(wanted.lastIndexOf('.') + 1);
        List<String> holding = byKey.keySet().stream()
                .filter(known ->
                        !last.isBlank() && known.toLowerCase(Locale.ROOT).contains(last))
                .limit(3)
                .toList();
        return holding.isEmpty() ? startingLike(wanted) : holding;
    }

    /** Those that begin as it does, at least the slice's name, the longest common beginning first. */
    private List<String> startingLike(String wanted) {
        int slice = wanted.indexOf('.') + 1;
        return byKey.keySet().stream()
                .filter(known -> slice > 0 && common(known, wanted) > slice)
                .sorted(Comparator.comparing((String known) -> -common(known, wanted)))
                .limit(3)
                .toList();
    }

    private static int common(String known, String wanted) {
        String lower = known.toLowerCase(Locale.ROOT);
        int length = 0;
        while (length < Math.min(lower.length(), wanted.length()) && lower.charAt(length) == wanted.charAt(length)) {
            length++;
        }
        return length;
    }
}
