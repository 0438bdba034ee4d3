package org.cupwright.policy;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Message.PlainNumber;
import org.cupwright.units.WrittenNumber;

/**
 * How the value of a setting is read from text, checked and written.
 *
 * @param accepts what {@link #read} accepts: "0 to 20", "yes or no", "one of a, b, c"
 * @param <T> the Java type of the value
 */
public record SettingType<T>(Function<String, Optional<T>> reader, Function<T, String> writer, Message accepts) {
    private static final long MINUS_ZERO = Double.doubleToRawLongBits(-0.0);
    private static final Pattern WHOLE = Pattern.compile("[+]?[0-9]{1,9}|-0{0,8}[1-9][0-9]{0,8}");

    /** Reads a value; empty when the text is not a value of this type or lies outside the range. */
    public Optional<T> read(String text) {
        return reader.apply(text);
    }

    /** Writes a value so that {@link #read} gives it back. */
    public String write(T value) {
        return writer.apply(value);
    }

    /** A finite number between two bounds, both included. */
    public static SettingType<Double> number(double least, double greatest) {
        return new SettingType<>(
                text -> WrittenNumber.find(text).filter(value -> within(value, least, greatest)),
                SettingType::plain,
                accepts("number", new PlainNumber(least), new PlainNumber(greatest)));
    }

    /** A whole number between two bounds, both included. */
    public static SettingType<Integer> wholeNumber(int least, int greatest) {
        return new SettingType<>(
                text -> whole(text).filter(value -> value >= least && value <= greatest),
                Object::toString,
                accepts("wholeNumber", new PlainNumber(least), new PlainNumber(greatest)));
    }

    /** Yes or no. */
    public static SettingType<Boolean> yesNo() {
        return new SettingType<>(SettingType::yesOrNo, value -> value ? "yes" : "no", accepts("yesNo"));
    }

    /** One of an enum's constants, written in lower camel case. */
    public static <E extends Enum<E>> SettingType<E> oneOf(Class<E> choices) {
        return new SettingType<>(
                text -> EnumNames.find(choices, text.strip()), EnumNames::lowerCamel, accepts("oneOf", names(choices)));
    }

    /** Some of an enum's constants in an order that matters, each at most once, separated by spaces. */
    public static <E extends Enum<E>> SettingType<List<E>> ranking(Class<E> choices) {
        return new SettingType<>(
                text -> ranked(choices, text),
                value -> value.stream().map(EnumNames::lowerCamel).collect(Collectors.joining(" ")),
                accepts("ranking", names(choices)));
    }

    /** Days of the week, at least one, each at most once, as {@code mon wed fri}; longer names are taken too. */
    public static SettingType<Set<DayOfWeek>> weekdays() {
        return new SettingType<>(
                WeekdayNames::read,
                WeekdayNames::write,
                accepts("weekdays", new Name(WeekdayNames.write(EnumSet.allOf(DayOfWeek.class)))));
    }

    /**
     * A value for each of some holes, as {@code 7=mon fri; 12=tue}: those that are not named have none.
     *
     * @param each what one hole may have; its text has no semicolon and no equals sign
     */
    public static <T> SettingType<SortedMap<String, T>> byHole(SettingType<T> each) {
        return new SettingType<>(
                text -> ByHole.read(text, each),
                value -> ByHole.write(value, each),
                accepts("byHole", new Message.Said(List.of(each.accepts()))));
    }

    /**
     * Words in an order that matters, parted by spaces, the same one more than once if need be.
     *
     * @param pattern of each
     * @param kind what they are, for the key {@code accepts.…}
     */
    public static SettingType<List<String>> words(String pattern, String kind) {
        return new SettingType<>(
                text -> Optional.of(
                                text.isBlank()
                                        ? List.<String>of()
                                        : List.of(text.strip().split("\\s+", -1)))
                        .filter(words -> words.stream().allMatch(word -> word.matches(pattern))),
                words -> String.join(" ", words),
                accepts(kind));
    }

    /** A day, as 2026-05-31. */
    public static SettingType<LocalDate> date() {
        return new SettingType<>(SettingType::day, LocalDate::toString, accepts("date"));
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException notOne) {
            return Optional.empty();
        }
    }

    /** The same, of which nothing at all is no value. */
    public SettingType<T> notEmpty() {
        return new SettingType<>(text -> text.isBlank() ? Optional.empty() : reader.apply(text), writer, accepts);
    }

    /** Any text of at most so many characters, without line breaks. */
    public static SettingType<String> text(int mostCharacters) {
        return new SettingType<>(
                text -> text.length() <= mostCharacters && text.chars().noneMatch(Character::isISOControl)
                        ? Optional.of(text.strip())
                        : Optional.empty(),
                Function.identity(),
                accepts("text", new Count(mostCharacters)));
    }

    /** Nothing below nothing is within no bounds: a minus before 0 is a slip. */
    private static boolean within(double value, double least, double greatest) {
        return value >= least && value <= greatest && Double.doubleToRawLongBits(value) != MINUS_ZERO;
    }

    /** As {@link WrittenNumber} takes them, of which other scripts' digits are none. */
    private static Optional<Integer> whole(String text) {
        return WHOLE.matcher(text.strip()).matches() ? Optional.of(Integer.valueOf(text.strip())) : Optional.empty();
    }

    private static Optional<Boolean> yesOrNo(String text) {
        return switch (text.strip()) {
            case "true", "yes" -> Optional.of(true);
            case "false", "no" -> Optional.of(false);
            default -> Optional.empty();
        };
    }

    private static <E extends Enum<E>> Optional<List<E>> ranked(Class<E> choices, String text) {
        if (text.isBlank()) {
            return Optional.of(List.of());
        }
        List<Optional<E>> named = Stream.of(text.strip().split("\\s+", -1))
                .map(name -> EnumNames.find(choices, name))
                .toList();
        boolean each = named.stream().allMatch(Optional::isPresent) && new HashSet<>(named).size() == named.size();
        return each ? Optional.of(named.stream().flatMap(Optional::stream).toList()) : Optional.empty();
    }

    private static Name names(Class<? extends Enum<?>> choices) {
        return new Name(
                Stream.of(choices.getEnumConstants()).map(EnumNames::lowerCamel).collect(Collectors.joining(", ")));
    }

    private static Message accepts(String kind, Message.Argument... arguments) {
        return Message.of("accepts." + kind, arguments);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
