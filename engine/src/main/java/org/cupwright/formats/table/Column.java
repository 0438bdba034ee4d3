package org.cupwright.formats.table;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;

/**
 * A column of a kind of table, declared once: what it is called, what stands in it and in which units, between which bounds, and
 * what is said of a cell that is none of it.
 *
 * @param name the name by which a person means it
 * @param otherNames more names that it has in first lines; signs and capitals do not matter
 * @param isNeeded whether a table must have it
 * @param units those it may be written in, the program's own first; none for what has no unit
 * @param nothing what stands in a cell for "not known", beside nothing at all; in small letters
 * @param type how a cell becomes a value
 * @param checks what a value must hold beside being one
 * @param otherwise what is said of a cell that is no value
 */
public record Column<T>(
        String name,
        List<String> otherNames,
        boolean isNeeded,
        List<Unit> units,
        Collection<String> nothing,
        Type<T> type,
        List<Check<T>> checks,
        Function<String, NotRead> otherwise) {
    private static final Unit AS_IT_IS = new Unit("", 0, 1);

    /** How a cell becomes a value; empty where it is none. */
    public interface Type<T> {
        Optional<T> read(String text, Layout.Writing writing);
    }

    /** What a value must hold, and what is said of a cell whose value does not. */
    public record Check<T>(Predicate<T> holds, Function<String, NotRead> otherwise) {}

    /** A column of any type. */
    public static <T> Column<T> of(String name, Type<T> type, Function<String, NotRead> otherwise) {
        return new Column<>(name, List.of(), false, List.of(), List.of(), type, List.of(), otherwise);
    }

    public static Column<String> text(String name) {
        return of(name, (text, writing) -> Optional.of(text), text -> {
            throw new IllegalStateException("every text is one");
        });
    }

    /** A number, with a decimal comma where the comma does not separate, in the program's unit. */
    public static Column<Double> number(String name) {
        return of(name, (text, writing) -> writing.number(text), text -> notOne(name, text, "try.log.number"));
    }

    /** A day as {@link WrittenDay} reads it. */
    public static Column<LocalDate> day(String name) {
        return of(name, (text, writing) -> WrittenDay.find(text), WrittenDay::notOne);
    }

    /** One of some words, which stand in the table in small letters; capitals do not matter. */
    public static <T> Column<T> choice(String name, Map<String, T> words) {
        Name all = new Name(words.keySet().stream().sorted().collect(Collectors.joining(", ")));
        return of(
                name,
                (text, writing) -> Optional.ofNullable(words.get(text.toLowerCase(Locale.ROOT))),
                text -> notOne(name, text, "try.log.choice", all));
    }

    private static NotRead notOne(String name, String text, String tryThis, Message.Argument... arguments) {
        return new NotRead(
                Message.of("problem.log.value", new Name(name), new Name(text)), Message.of(tryThis, arguments));
    }

    /** The same under other names besides. */
    public Column<T> called(String... names) {
        return new Column<>(name, List.of(names), isNeeded, units, nothing, type, checks, otherwise);
    }

    /** The same as one that a table must have. */
    public Column<T> needed() {
        return new Column<>(name, otherNames, true, units, nothing, type, checks, otherwise);
    }

    /** The same in one of some units, the program's own first. */
    public Column<T> in(List<Unit> some) {
        return new Column<>(name, otherNames, isNeeded, some, nothing, type, checks, otherwise);
    }

    /** The same, with words that stand for "not known". */
    public Column<T> without(Collection<String> words) {
        return new Column<>(name, otherNames, isNeeded, units, words, type, checks, otherwise);
    }

    /** The same with its own words for cells that are no value. */
    public Column<T> otherwise(Function<String, NotRead> other) {
        return new Column<>(name, otherNames, isNeeded, units, nothing, type, checks, other);
    }

    /** The same with one more check of its values. */
    public Column<T> only(Predicate<T> holds, Function<String, NotRead> ifNot) {
        List<Check<T>> all = new ArrayList<>(checks);
        all.add(new Check<>(holds, ifNot));
        return new Column<>(name, otherNames, isNeeded, units, nothing, type, all, otherwise);
    }

    /** A unit by its name. */
    public Optional<Unit> unit(String written) {
        return units.stream()
                .filter(unit -> unit.name().equalsIgnoreCase(written))
                .findFirst();
    }

    Unit firstUnit() {
        return units.isEmpty() ? AS_IT_IS : units.get(0);
    }

    boolean isCalled(String written) {
        String plain = plain(written);
        return plain.equals(plain(name)) || otherNames.contains(plain);
    }

    private static String plain(String written) {
        return written.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    }

    Optional<T> read(String text, Layout.Writing writing) throws NotRead {
        if (text.isEmpty() || nothing.contains(text.toLowerCase(Locale.ROOT))) {
            return Optional.empty();
        }
        T value = type.read(text, writing).orElseThrow(() -> otherwise.apply(text));
        for (Check<T> check : checks) {
            if (!check.holds().test(value)) {
                throw check.otherwise().apply(text);
            }
        }
        return Optional.of(value);
    }
}
