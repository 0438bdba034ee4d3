package org.cupwright.policy;

import java.util.Optional;

record TextSettingType(int mostCharacters) implements SettingType<String> {
    @Override
    public Optional<String> read(String text) {
        boolean oneLine = text.chars().noneMatch(Character::isISOControl);
        return oneLine && text.length() <= mostCharacters ? Optional.of(text.strip()) : Optional.empty();
    }

    @Override
    public String write(String value) {
        return value;
    }

    @Override
    public String accepts() {
        return "one line of at most " + mostCharacters + " characters";
    }
}
