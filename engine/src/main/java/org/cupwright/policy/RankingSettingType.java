package org.cupwright.policy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

record RankingSettingType<E extends Enum<E>>(Class<E> choices) implements SettingType<List<E>> {
    @Override
    public Optional<List<E>> read(String text) {
        List<E> ranked = new ArrayList<>();
        for (String name : text.strip().split("\\s+", -1)) {
            Optional<E> found = EnumNames.find(choices, name);
            if (found.isEmpty() || ranked.contains(found.get())) {
                return text.isBlank() ? Optional.of(List.of()) : Optional.empty();
            }
            ranked.add(found.get());
        }
        return Optional.of(List.copyOf(ranked));
    }

    @Override
    public String write(List<E> value) {
        return value.stream().map(EnumNames::lowerCamel).collect(Collectors.joining(" "));
    }

    @Override
    public String accepts() {
        return "any of " + EnumNames.list(choices, ", ") + " in order, separated by spaces";
    }
}
