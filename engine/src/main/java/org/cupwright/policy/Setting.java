package org.cupwright.policy;

/**
 * One thing that depends on the course: its key, what values it takes, its default, and where the default comes from.
 *
 * <p>Each package declares the settings it reads as constants in one class of its own, its slice.
 *
 * @param key dotted, lower camel case: the slice's name, then the setting's ({@code holelocation.edgePaces})
 * @param type how a value is read and checked
 * @param unit the unit as it is shown ({@code "paces"}, {@code "%"}, {@code "ft"}), or {@code ""}
 * @param defaultValue what counts until the course says otherwise
 * @param sourceKind where the default comes from
 * @param source the publication, or a few words on why, never empty
 * @param <T> the Java type of the value
 */
public record Setting<T>(
        String key, SettingType<T> type, String unit, T defaultValue, SourceKind sourceKind, String source) {
    public Setting {
        if (!key.matches("[a-z][A-Za-z]*(\\.[a-z][A-Za-z0-9]*)+")) {
            throw new IllegalArgumentException("not a setting's key: " + key);
        }
        if (source.isBlank()) {
            throw new IllegalArgumentException(key + " names no source");
        }
        if (!type.read(type.write(defaultValue)).equals(java.util.Optional.of(defaultValue))) {
            throw new IllegalArgumentException(key + " has a default that its own type refuses: " + defaultValue);
        }
    }

    /** Key of the sentence that explains the setting in one line, for app.texts. */
    public String sentenceKey() {
        return "setting." + key;
    }

    /** Key of the word for the unit, for app.texts; there is none for a setting without a unit. */
    public String unitKey() {
        return "settingUnit." + unit.replace(" ", "");
    }
}
