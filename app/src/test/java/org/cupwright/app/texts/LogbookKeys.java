package org.cupwright.app.texts;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.cupwright.cupchange.PayloadKinds;
import org.cupwright.policy.EnumNames;

/** The words for everything an entry of the logbook can say, from the entries' records. */
final class LogbookKeys {
    /** Parts that are never shown by themselves. */
    private static final Set<String> UNSAID = Set.of("planned", "of", "replacement");

    private LogbookKeys() {}

    static Set<String> all() {
        Set<String> keys = new TreeSet<>();
        PayloadKinds.all().forEach((kind, type) -> {
            keys.add("log.kind." + kind);
            for (RecordComponent part : type.getRecordComponents()) {
                add(part, keys);
            }
        });
        return keys;
    }

    private static void add(RecordComponent part, Set<String> keys) {
        if (UNSAID.contains(part.getName())) {
            return;
        }
        if (part.getType() == boolean.class) {
            keys.add("log.is." + part.getName());
            return;
        }
        keys.add("log.part." + part.getName());
        Class<?> type = part.getType() == Optional.class
                ? (Class<?>) ((ParameterizedType) part.getGenericType()).getActualTypeArguments()[0]
                : part.getType();
        if (type.isEnum()) {
            for (Object choice : type.getEnumConstants()) {
                keys.add("log.choice." + part.getName() + "." + EnumNames.lowerCamel((Enum<?>) choice));
            }
        }
    }
}
