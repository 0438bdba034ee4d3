package org.cupwright.app.desk.entry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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

    /** All kinds that can be entered. */
    static List<String> kinds() {
        return PayloadKinds.all().keySet().stream()
                .filter(kind -> !NOT_TYPED.contains(kind))
                .toList();
    }

    Part part(String given) {
        List<String> names = parts.stream().map(Part::name).toList();
        List<String> found = fitting(given, names);
        if (found.size() != 1) {
            throw found.isEmpty() ? LogProblems.part(typed(kind), given, names) : LogProblems.partUnclear(given, found);
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
        List<String> words = Arrays.stream(typed(given).split("-"))
                .filter(word -> word.length() > 2)
                .toList();
        return typed(names).stream()
                .filter(name -> words.stream().anyMatch(name::contains))
                .toList();
    }

    private static String plain(String name) {
        return name.replace("-", "").replace("_", "").toLowerCase(Locale.ROOT);
    }

    /** A name as it is easiest to type: {@code cup-changed}. */
    public static String typed(String name) {
        return name.replaceAll("([a-z0-9])([A-Z])", "$1-$2").toLowerCase(Locale.ROOT);
    }

    private static List<String> typed(List<String> names) {
        return names.stream().map(EntryForm::typed).toList();
    }
}
