package org.cupwright.app.desk.paper;

import java.util.Optional;
import org.cupwright.policy.SettingType;

/** When the soil between the surface and the cup is painted white. */
public enum RimWhited {
    NEVER,
    ALWAYS,
    EVENTS;

    /** One of them; a course that once said no more than yes or no is still understood. */
    static SettingType<RimWhited> type() {
        SettingType<RimWhited> plain = SettingType.oneOf(RimWhited.class);
        return new SettingType<>(
                text -> switch (text.strip()) {
                    case "yes", "true" -> Optional.of(ALWAYS);
                    case "no", "false" -> Optional.of(NEVER);
                    default -> plain.read(text);
                },
                plain.writer(),
                plain.accepts());
    }
}
