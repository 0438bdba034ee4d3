package org.cupwright.policy;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The settings in force on one day: what the course has set, and the default for everything else.
 *
 * <p>Values are kept as text, as they were set, and read by the setting that asks; {@link PolicyCatalogue} has checked
 * them before they come here.
 */
public final class Policy {
    private static final Policy DEFAULTS = new Policy(Map.of());

    private final Map<String, String> set;

    private Policy(Map<String, String> set) {
        this.set = Map.copyOf(set);
    }

    /** Nothing set: every setting has its default. */
    public static Policy defaults() {
        return DEFAULTS;
    }

    static Policy of(Map<String, String> set) {
        return new Policy(set);
    }

    public <T> T get(Setting<T> setting) {
        String text = set.get(setting.key());
        if (text == null) {
            return setting.defaultValue();
        }
        return setting.type()
                .read(plain(text))
                .orElseThrow(() -> new IllegalStateException(setting.key() + " holds " + text + ", not "
                        + setting.type().accepts()));
    }

    /** Small numbers were once kept as 5.0E-4, which nobody may type. */
    private static String plain(String text) {
        return text.matches("[0-9][.][0-9]{1,17}E-[0-9]{1,3}") ? new BigDecimal(text).toPlainString() : text;
    }

    /** What the course has set, as it was set, by the settings' names. */
    public SortedMap<String, String> set() {
        return Collections.unmodifiableSortedMap(new TreeMap<>(set));
    }

    public boolean isDefault(Setting<?> setting) {
        return !set.containsKey(setting.key());
    }

    /**
     * This policy with one value more, for a what-if or a test; the value is written and read back by the setting's
     * type.
     */
    public <T> Policy with(Setting<T> setting, T value) {
        Map<String, String> more = new java.util.HashMap<>(set);
        more.put(setting.key(), setting.type().write(value));
        Policy changed = new Policy(more);
        changed.get(setting);
        return changed;
    }
}
