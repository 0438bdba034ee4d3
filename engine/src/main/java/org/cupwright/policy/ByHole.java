package org.cupwright.policy;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Values for single holes, as they stand in settings: {@code 7=mon fri; 12=tue}. */
final class ByHole {
    private ByHole() {}

    /** Empty where a part does not read, or a hole stands twice. */
    static <T> Optional<SortedMap<String, T>> read(String text, SettingType<T> each) {
        SortedMap<String, T> values = new TreeMap<>();
        if (text.isBlank()) {
            return Optional.of(values);
        }
        for (String part : text.split(";", -1)) {
            String[] sides = part.split("=", -1);
            Optional<T> value = sides.length == 2 ? each.read(sides[1].strip()) : Optional.empty();
            if (value.isEmpty() || sides[0].isBlank() || values.put(sides[0].strip(), value.get()) != null) {
                return Optional.empty();
            }
        }
        return Optional.of(values);
    }

    static <T> String write(Map<String, T> values, SettingType<T> each) {
        return values.entrySet().stream()
                .map(one -> one.getKey() + "=" + each.write(one.getValue()))
                .collect(Collectors.joining("; "));
    }
}
