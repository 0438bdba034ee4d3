package org.cupwright.message;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.units.Heading;

/**
 * Something to say, without the words: a key and typed arguments, which app.texts turns into a sentence in the reader's
 * language and units.
 *
 * @param key key of the sentence
 * @param arguments what it speaks of, in the order the sentence's placeholders count them
 */
public record Message(String key, List<Argument> arguments) {
    public Message {
        arguments = List.copyOf(arguments);
    }

    public static Message of(String key, Argument... arguments) {
        return new Message(key, List.of(arguments));
    }

    /** A typed argument of a sentence. */
    public sealed interface Argument {}

    /** A length, m. */
    public record Length(double metres) implements Argument {}

    /** An area, m². */
    public record Area(double squareMetres) implements Argument {}

    /** A slope, percent. */
    public record Slope(double percent) implements Argument {}

    /** A difference of slopes, percentage points. */
    public record SlopePoints(double points) implements Argument {}

    /**
     * A direction on the ground.
     *
     * @param heading on the map
     * @param play the line of play at the green, when known: people say "back left" rather than degrees
     */
    public record Direction(Heading heading, Optional<Heading> play) implements Argument {}

    /** Something measured, in the unit in which it is spoken of whatever the reader's units are. */
    public record Measure(double value, int decimals, String unit) implements Argument {
        /** With a decimal only where it has one. */
        public static Measure of(double value, String unit) {
            return new Measure(value, value == Math.rint(value) ? 0 : 1, unit);
        }
    }

    /** A plain number. */
    public record Count(long number) implements Argument {}

    /** A number in the unit that the sentence or another argument names, with no more decimals than it needs. */
    public record PlainNumber(double value) implements Argument {}

    /** A calendar day. */
    public record Day(LocalDate date) implements Argument {}

    /** A moment, shown by a zone's clock. */
    public record Moment(Instant at, ZoneId zone) implements Argument {}

    /** The name of something, to be translated by its own key. */
    public record Translated(String key) implements Argument {}

    /**
     * A field of what was asked for, by a plain name of its own: {@code date}. Each door calls it what it is called
     * there, as the option {@code --date} or the label beside it.
     */
    public record Field(String name) implements Argument {}

    /** What is said within another sentence, such as its cause or its examples, one after the other. */
    public record Said(List<Message> all) implements Argument {
        public Said {
            all = List.copyOf(all);
        }

        public Said(Message message) {
            this(List.of(message));
        }
    }

    /** A name a person gave or words found in a file, shown as they are. */
    public record Name(String text) implements Argument {}
}
