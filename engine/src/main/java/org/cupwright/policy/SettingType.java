package org.cupwright.policy;

import java.util.List;
import java.util.Optional;

/**
 * How the value of a setting is read from text, checked and written.
 *
 * @param <T> the Java type of the value
 */
public interface SettingType<T> {
    /** Reads a value; empty when the text is not a value of this type or lies outside the range. */
    Optional<T> read(String text);

    /** Writes a value so that {@link #read} gives it back. */
    String write(T value);

    /** What {@link #read} accepts, for messages: {@code "0 to 20"}, {@code "true or false"}, {@code "a, b or c"}. */
    String accepts();

    /** A finite number between two bounds, both included. */
    static SettingType<Double> number(double least, double greatest) {
        return new NumberSettingType(least, greatest);
    }

    /** A whole number between two bounds, both included. */
    static SettingType<Integer> wholeNumber(int least, int greatest) {
        return new WholeNumberSettingType(least, greatest);
    }

    /** Yes or no. */
    static SettingType<Boolean> yesNo() {
        return new YesNoSettingType();
    }

    /** One of an enum's constants, written in lower camel case. */
    static <E extends Enum<E>> SettingType<E> oneOf(Class<E> choices) {
        return new ChoiceSettingType<>(choices);
    }

    /** Some of an enum's constants in an order that matters, each at most once, separated by spaces. */
    static <E extends Enum<E>> SettingType<List<E>> ranking(Class<E> choices) {
        return new RankingSettingType<>(choices);
    }

    /** Any text of at most so many characters, without line breaks. */
    static SettingType<String> text(int mostCharacters) {
        return new TextSettingType(mostCharacters);
    }
}
