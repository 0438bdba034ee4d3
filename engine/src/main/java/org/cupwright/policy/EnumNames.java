package org.cupwright.policy;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Enum constants as they stand in settings files and JSON: {@code SIX_SIX_SIX} is written {@code sixSixSix}. */
public final class EnumNames {
    private EnumNames() {}

    public static String lowerCamel(Enum<?> constant) {
        StringBuilder name = new StringBuilder();
        boolean upper = false;
        for (char letter : constant.name().toLowerCase(Locale.ROOT).toCharArray()) {
            if (letter == '_') {
                upper = true;
            } else {
                name.append(upper ? Character.toUpperCase(letter) : letter);
                upper = false;
            }
        }
        return name.toString();
    }

    public static <E extends Enum<E>> Optional<E> find(Class<E> choices, String name) {
        return Arrays.stream(choices.getEnumConstants())
                .filter(constant -> lowerCamel(constant).equals(name))
                .findFirst();
    }
}
