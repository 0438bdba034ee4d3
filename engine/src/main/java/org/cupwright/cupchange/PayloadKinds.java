package org.cupwright.cupchange;

import java.util.Arrays;
import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** All kinds of payload there are, by the name under which files and the store write them. */
public final class PayloadKinds {
    private static final Map<String, Class<? extends Payload>> BY_NAME = collect();

    private PayloadKinds() {}

    /** The records by their kind's name ({@link Payload#kind()}), in the order of the names. */
    public static Map<String, Class<? extends Payload>> all() {
        return BY_NAME;
    }

    /** The names of some kinds. */
    @SafeVarargs
    public static Set<String> names(Class<? extends Payload>... payloads) {
        return Arrays.stream(payloads).map(PayloadKinds::nameOf).collect(Collectors.toUnmodifiableSet());
    }

    static String nameOf(Class<?> payload) {
        String name = payload.getSimpleName();
        return Character.toLowerCase(name.charAt(0)) + name.substring(1);
    }

    private static Map<String, Class<? extends Payload>> collect() {
        Map<String, Class<? extends Payload>> found = new TreeMap<>();
        collect(Payload.class, found);
        return Collections.unmodifiableMap(found);
    }

    private static void collect(Class<? extends Payload> type, Map<String, Class<? extends Payload>> found) {
        if (!type.isSealed()) {
            found.put(nameOf(type), type);
            return;
        }
        for (Class<?> permitted : type.getPermittedSubclasses()) {
            collect(permitted.asSubclass(Payload.class), found);
        }
    }
}
