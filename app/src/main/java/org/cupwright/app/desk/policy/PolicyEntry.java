package org.cupwright.app.desk.policy;

import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;

/**
 * One setting with the value in force.
 *
 * @param setting the setting
 * @param value the value in force, as text
 * @param isDefault whether the course has left it as it came
 */
public record PolicyEntry(Setting<?> setting, String value, boolean isDefault) {
    static PolicyEntry of(Setting<?> setting, Policy policy) {
        return new PolicyEntry(setting, written(setting, policy), policy.isDefault(setting));
    }

    /** The default, as text. */
    public String defaultText() {
        return written(setting, Policy.defaults());
    }

    private static <T> String written(Setting<T> setting, Policy policy) {
        return setting.type().write(policy.get(setting));
    }
}
