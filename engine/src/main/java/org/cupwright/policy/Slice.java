package org.cupwright.policy;

import java.util.ArrayList;
import java.util.List;

/**
 * The settings that one class declares, in the order in which it does: a slice of the policy. Each is declared in two
 * steps, what it is and where its default comes from.
 */
public final class Slice {
    private final String name;
    private final List<Setting<?>> settings = new ArrayList<>();

    /** @param name with which the keys of its settings begin */
    public Slice(String name) {
        this.name = name;
    }

    /** What was declared so far. */
    public List<Setting<?>> settings() {
        return List.copyOf(settings);
    }

    /**
     * A setting to be, until it is said where its default comes from.
     *
     * @param key the last parts of its key
     */
    public <T> Unsourced<T> setting(String key, SettingType<T> type, String unit, T defaultValue) {
        return (kind, source) -> {
            Setting<T> setting = new Setting<>(name + "." + key, type, unit, defaultValue, kind, source);
            settings.add(setting);
            return setting;
        };
    }

    /** A setting without its source. */
    @FunctionalInterface
    public interface Unsourced<T> {
        Setting<T> from(SourceKind kind, String source);

        default Setting<T> published(String source) {
            return from(SourceKind.PUBLISHED, source);
        }

        default Setting<T> commonPractice(String source) {
            return from(SourceKind.COMMON_PRACTICE, source);
        }

        default Setting<T> ours(String source) {
            return from(SourceKind.OURS, source);
        }
    }
}
