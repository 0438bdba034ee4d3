package org.cupwright.policy;

import java.util.Optional;

record ChoiceSettingType<E extends Enum<E>>(Class<E> choices) implements SettingType<E> {
    @Override
    public Optional<E> read(String text) {
        return EnumNames.find(choices, text.strip());
    }

    @Override
    public String write(E value) {
        return EnumNames.lowerCamel(value);
    }

    @Override
    public String accepts() {
        return "one of " + EnumNames.list(choices, ", ");
    }
}
