package org.cupwright.policy;

import java.util.Optional;

record YesNoSettingType() implements SettingType<Boolean> {
    @Override
    public Optional<Boolean> read(String text) {
        return switch (text.strip()) {
            case "true", "yes" -> Optional.of(true);
            case "false", "no" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    @Override
    public String write(Boolean value) {
        return value ? "yes" : "no";
    }

    @Override
    public String accepts() {
        return "yes or no";
    }
}
