package org.cupwright.formats.table;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * A column of a kind of table, declared once: what it is called, what stands in it and in which units, between which
 * bounds, and what is said of a cell that is none of it.
 *
 * @param name the name by which a person means it
 * @param otherNames more names that it has in first lines; signs and capitals do not matter
 * @param isNeeded whether a table must have it
 * @param units those it may be written in, the program's own first; none for what has no unit
 * @param nothing what stands in a cell for "not known", beside nothing at all; in small letters
 * @param type how a cell becomes a value
 * @param question what looks wrong of all that stands in the column, if anything does
 */
public record Column<T>(
        String name,
        List<String> otherNames,
        boolean isNeeded,
        List<Unit> units,
        List<String> nothing,
        Type<T> type,
        Function<List<T>, Optional<Question>> question) {
    /** How a cell becomes a value. */
    public interface Type<T> {
        /**
         * The value of a cell that says something.
         *
         * @throws Problem where it is none, with what is said of it
         */
        T read(String text, Layout.Writing writing);
    }

    /** A column of any type. */
    public static <T> Column<T> of(String name, Type<T> type) {
        return new Column<>(name, List.of(), false, List.of(), List.of(), type, values -> Optional.empty());
    }

    /** A text as {@link CellText} reads it. */
    public static Column<String> text(String name) {
        return of(name, (text, writing) -> CellText.plain(writing.field()));
    }

    /** A number, with a decimal comma where the comma does not separate, in the program's unit. */
    public static Column<Double> number(String name) {
        return of(
                name,
                (text, writing) -> writing.number(text)
                        .orElseThrow(() -> Problem.of(
                                Message.of("problem.log.value", new Name(name), new Name(text)),
                                Message.of("try.log.number"))));
    }

    /** A day as {@link WrittenDay} reads it. */
    public static Column<LocalDate> day(String name) {
        return of(name, (text, writing) -> WrittenDay.inTable(text));
    }

    /** The same under other names besides. */
    public Column<T> called(String... names) {
        return new Column<>(name, List.of(names), isNeeded, units, nothing, type, question);
    }

    /** The same as one that a table must have. */
    public Column<T> needed() {
        return new Column<>(name, otherNames, true, units, nothing, type, question);
    }

    /** The same in one of some units, the program's own first. */
    public Column<T> in(List<Unit> some) {
        return new Column<>(name, otherNames, isNeeded, some, nothing, type, question);
    }

    /** The same, with words that stand for "not known". */
    public Column<T> without(List<String> words) {
        return new Column<>(name, otherNames, isNeeded, units, words, type, question);
    }

    private Column<T> as(Type<T> other) {
        return new Column<>(name, otherNames, isNeeded, units, nothing, other, question);
    }

    /** The same with every value as something makes it. */
    public Column<T> made(UnaryOperator<T> made) {
        return as((text, writing) -> made.apply(type.read(text, writing)));
    }

    /** The same, with what may look wrong of all its values. */
    public Column<T> asking(Function<List<T>, Optional<Question>> asked) {
        return new Column<>(name, otherNames, isNeeded, units, nothing, type, asked);
    }

    /** The same with other words for cells that are no value. */
    public Column<T> otherwise(Function<String, Problem> words) {
        return as((text, writing) -> {
            try {
                return type.read(text, writing);
            } catch (Problem replaced) {
                throw words.apply(text);
            }
        });
    }

    /** The same of values that hold something besides, with what is said of those that do not. */
    public Column<T> only(Predicate<T> holds, Function<String, Problem> words) {
        return as((text, writing) -> {
            T value = type.read(text, writing);
            if (!holds.test(value)) {
                throw words.apply(text);
            }
            return value;
        });
    }

    /** A unit by its name. */
    public Optional<Unit> unit(String written) {
        return units.stream()
                .filter(unit -> unit.name().equalsIgnoreCase(written))
                .findFirst();
    }

    boolean isCalled(String written) {
        String plain = plain(written);
        return plain.equals(plain(name)) || otherNames.contains(plain);
    }

    private static String plain(String written) {
        return written.toLowerCase(Locale.ROOT).replaceAll("[^a-z]", "");
    }
}
