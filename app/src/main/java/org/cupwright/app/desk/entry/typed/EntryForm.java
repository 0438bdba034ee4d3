package org.cupwright.app.desk.entry.typed;

import java.lang.reflect.InvocationTargetException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PayloadKinds;

/**
 * What a kind of entry asks for: its parts in order. Names are taken as people type them: {@code cup-changed},
 * {@code CupChanged} and {@code cupChanged} are one, and a beginning that fits one name only will do.
 *
 * @param kind the kind's name
 * @param parts its parts
 */
public record EntryForm(String kind, List<Part> parts) {
    /** These have commands of their own. */
    private static final Set<String> NOT_TYPED = Set.of("correction", "oddSeen");

    public static EntryForm of(String given) {
        List<String> kinds = kinds();
        List<String> found = fitting(given, kinds);
        if (found.size() != 1) {
            throw LogProblems.kind(given, found.isEmpty() ? alike(given, kinds) : typed(found), typed(kinds));
        }
        return ofKind(found.get(0));
    }

    public static EntryForm ofKind(String kind) {
        Class<? extends Payload> type = PayloadKinds.all().get(kind);
        List<Part> parts =
                Arrays.stream(type.getRecordComponents()).map(Part::of).toList();
        return new EntryForm(kind, parts);
    }

    /** All that can be entered. */
    public static List<EntryForm> all() {
        return kinds().stream().map(EntryForm::ofKind).toList();
    }

    private static List<String> kinds() {
        return PayloadKinds.all().keySet().stream()
                .filter(kind -> !NOT_TYPED.contains(kind))
                .toList();
    }

    /**
     * An entry of this kind.
     *
     * @param values a part's value by its name; null for what is left out
     * @throws IllegalArgumentException where there can be no such entry
     */
    Payload payload(Function<String, Object> values) {
        Class<?>[] types =
                parts.stream().map(part -> part.component().getType()).toArray(Class<?>[]::new);
        Object[] taken = parts.stream()
                .map(part -> part.taken(values.apply(part.name())))
                .toArray();
        try {
            return PayloadKinds.all().get(kind).getDeclaredConstructor(types).newInstance(taken);
        } catch (InvocationTargetException refused) {
            throw refused.getCause() instanceof IllegalArgumentException impossible
                    ? impossible
                    : new IllegalStateException("a record refused its parts", refused);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException("a record can be made of its parts", impossible);
        }
    }

    Part part(String given) {
        List<String> names = parts.stream().map(Part::name).toList();
        List<String> found = fitting(given, names);
        if (found.size() != 1) {
            throw found.isEmpty()
                    ? LogProblems.part(LogProblems.typed(kind), given, names)
                    : LogProblems.partUnclear(given, found);
        }
        return find(found.get(0)).orElseThrow();
    }

    public Optional<Part> find(String name) {
        return parts.stream().filter(part -> part.name().equals(name)).findFirst();
    }

    /** The part that says where: the first that must be a place, else the first that may be. */
    public Optional<Part> place() {
        List<Part> places = parts.stream().filter(Part::isPlace).toList();
        return places.stream()
                .filter(part -> !part.optional())
                .findFirst()
                .or(() -> places.stream().findFirst());
    }

    /** The names that are meant by what was typed: the one it is, else those it begins. */
    public static List<String> fitting(String given, List<String> names) {
        String plain = plain(given);
        List<String> begun = new ArrayList<>();
        for (String name : names) {
            if (plain(name).equals(plain)) {
                return List.of(name);
            }
            if (!plain.isEmpty() && plain(name).startsWith(plain)) {
                begun.add(name);
            }
        }
        return begun;
    }

    private static List<String> alike(String given, List<String> names) {
        List<String> words = Arrays.stream(LogProblems.typed(given).split("-"))
                .filter(word -> word.length() > 2)
                .toList();
        return typed(names).stream()
                .filter(name -> words.stream().anyMatch(name::contains))
                .toList();
    }

    private static String plain(String name) {
        return name.replace("-", "").replace("_", "").toLowerCase(Locale.ROOT);
    }

    private static List<String> typed(List<String> names) {
        return names.stream().map(LogProblems::typed).toList();
    }
}
