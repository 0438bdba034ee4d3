package org.cupwright.app.texts;

import java.text.MessageFormat;
import java.text.Normalizer;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.cupwright.message.Message;
import org.cupwright.units.UnitSystem;

/**
 * Renders keys and typed arguments as sentences in one language and one choice of units, for those who come through one
 * door.
 *
 * <p>Sentences are {@link MessageFormat} patterns: placeholders count from 0, an apostrophe is written twice. A key
 * without a sentence is shown as it is, so that a missing translation never hides a finding; a test sees to it that
 * English lacks none.
 */
public final class Texts {
    private static final String LAST_RESORT = "en";

    /** Clockwise from the back, eighths of a turn. */
    private static final List<String> WAYS =
            List.of("back", "backRight", "right", "frontRight", "front", "frontLeft", "left", "backLeft");

    private static final double EIGHTH_DEGREES = 45;

    /** Down to a tenth of a millimetre at least; nobody asks for more (our choice). */
    private static final int MOST_DIGITS_MORE = 3;

    /** Where the last of those digits would not show it. */
    private static final double NO_DIFFERENCE_METRES = 1e-4;

    private final Locale locale;
    private final Door door;
    private final List<Map<String, String>> sentences;
    private final Map<String, String> retired;
    private final Quantities quantities;

    private Texts(
            Locale locale,
            Door door,
            List<Map<String, String>> sentences,
            Map<String, String> retired,
            UnitSystem units,
            double paceMetres) {
        this.locale = locale;
        this.door = door;
        this.sentences = sentences;
        this.retired = retired;
        this.quantities = new Quantities(units, locale, paceMetres, say("unit.pace"), say("unit.paces"));
    }

    /**
     * The words of a language.
     *
     * @param language two or three letters
     * @param door through which it is spoken; its own wordings go before those for every door
     * @param units how lengths are shown
     * @param paceMetres how long a pace is
     * @return empty when there is no message file for the language
     */
    public static Optional<Texts> find(String language, Door door, UnitSystem units, double paceMetres) {
        return find(MessageFiles.SHIPPED, language, door, units, paceMetres);
    }

    static Optional<Texts> find(MessageFiles files, String language, Door door, UnitSystem units, double paceMetres) {
        Map<String, String> english =
                files.of(LAST_RESORT).orElseThrow(() -> new IllegalStateException("the English words are missing"));
        return files.of(language)
                .map(words -> List.of(files.of(language, door), words, files.of(LAST_RESORT, door), english))
                .map(all -> new Texts(Locale.forLanguageTag(language), door, all, files.retired(), units, paceMetres));
    }

    /** The language, as in {@code en}. */
    public String language() {
        return locale.getLanguage();
    }

    /** The sentence of a message. */
    public String say(Message message) {
        return format(message.key(), distinct(message.arguments()));
    }

    /**
     * The arguments as they stand in a sentence. Lengths that differ look different, with more digits where they have
     * to: 4.9 m nearer than 4.9 m says nothing.
     */
    private Object[] distinct(List<Message.Argument> arguments) {
        int more = 0;
        while (more < MOST_DIGITS_MORE && lookAlike(arguments, more)) {
            more++;
        }
        int digits = more;
        return arguments.stream()
                .map(argument -> argument instanceof Message.Length length && digits > 0
                        ? quantities.length(length.metres(), digits)
                        : shown(argument))
                .toArray();
    }

    private boolean lookAlike(List<Message.Argument> arguments, int more) {
        Map<String, Double> seen = new HashMap<>();
        for (Message.Argument argument : arguments) {
            if (argument instanceof Message.Length length) {
                Double before = seen.put(quantities.length(length.metres(), more), length.metres());
                if (before != null && Math.abs(before - length.metres()) > NO_DIFFERENCE_METRES) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The sentence or word of a key that takes no arguments, or plain ones that are shown as they are. */
    public String say(String key, Object... plain) {
        return format(key, plain);
    }

    /** Whether what somebody typed is one of the language's words for yes. */
    public boolean isYes(String typed) {
        String plain = Normalizer.normalize(typed, Normalizer.Form.NFC).strip().toLowerCase(Locale.ROOT);
        return List.of(say("answer.yes").split(" ")).contains(plain);
    }

    /** The keys that begin so, for whoever passes on all words of one kind. */
    public Set<String> keys(String beginning) {
        return sentences.stream()
                .flatMap(file -> file.keySet().stream())
                .filter(key -> key.startsWith(beginning))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whether there is a sentence for a key. */
    public boolean knows(String key) {
        return pattern(key).isPresent();
    }

    /** A length in the reader's units. */
    public String length(double metres) {
        return quantities.length(metres);
    }

    /** About five metres in the reader's units, for the bar of a map: 5 m, 15 ft or 5 paces. */
    public RoundLength roundLength() {
        return quantities.roundLength();
    }

    /** An area in the reader's units. */
    public String area(double squareMetres) {
        return quantities.area(squareMetres);
    }

    public String slope(double percent) {
        return quantities.slope(percent);
    }

    /** A number of paces in halves: {@code 4½}. */
    public String halves(double paces) {
        return quantities.halves(paces);
    }

    /** A number with so many decimals, as the language writes it. */
    public String number(double value, int decimals) {
        return quantities.number(value, decimals);
    }

    /** A number with a decimal only where it has one. */
    public String number(double value) {
        return number(value, value == Math.rint(value) ? 0 : 1);
    }

    /** A coordinate to a tenth of a metre, its thousands not grouped: it is typed in again. */
    public String coordinate(double metres) {
        return String.format(Locale.ROOT, "%.1f", metres);
    }

    /** A number of paces in halves with its word: {@code 1 pace}, {@code 2½ paces}. */
    public String paces(double paces) {
        return quantities.withPaces(paces);
    }

    /** A calendar day with its weekday. */
    public String day(LocalDate date) {
        return DateTimeFormatter.ofPattern("EEE d MMM yyyy", locale).format(date);
    }

    /** A calendar day of these weeks, which needs no year. */
    public String weekday(LocalDate date) {
        return DateTimeFormatter.ofPattern("EEE d MMM", locale).format(date);
    }

    /** {@code Sat}. */
    public String dayOfWeek(LocalDate date) {
        return DateTimeFormatter.ofPattern("EEE", locale).format(date);
    }

    /** {@code 20 Jun}. */
    public String dayOfMonth(LocalDate date) {
        return DateTimeFormatter.ofPattern("d MMM", locale).format(date);
    }

    /** A moment by a zone's clock: day and time. */
    public String moment(Instant moment, ZoneId zone) {
        return DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", locale)
                .withZone(zone)
                .format(moment);
    }

    /**
     * A direction as people on the green say it: one of eight ways as seen from the fairway; degrees without a line of
     * play.
     */
    public String way(Message.Direction direction) {
        return direction
                .play()
                .map(play -> direction.heading().turnedClockwise(-play.degrees()))
                .map(turn -> say("way." + WAYS.get((int) Math.round(turn.degrees() / EIGHTH_DEGREES) % WAYS.size())))
                .orElseGet(
                        () -> say("way.degrees", Math.round(direction.heading().degrees())));
    }

    private String format(String key, Object... shown) {
        return pattern(key)
                .map(pattern -> new MessageFormat(pattern, locale).format(shown))
                .orElse(key);
    }

    private Optional<String> pattern(String key) {
        return sentence(key).or(() -> Optional.ofNullable(retired.get(key)).flatMap(this::sentence));
    }

    private Optional<String> sentence(String key) {
        return sentences.stream()
                .filter(file -> file.containsKey(key))
                .findFirst()
                .map(file -> file.get(key));
    }

    /** An argument as it stands in a sentence. */
    public String show(Message.Argument argument) {
        return shown(argument) instanceof Number number ? quantities.plain(number) : (String) shown(argument);
    }

    private Object shown(Message.Argument argument) {
        if (argument instanceof Message.Length length) {
            return length(length.metres());
        }
        if (argument instanceof Message.Area area) {
            return area(area.squareMetres());
        }
        if (argument instanceof Message.Slope slope) {
            return slope(slope.percent());
        }
        if (argument instanceof Message.SlopePoints points) {
            return quantities.points(points.points());
        }
        if (argument instanceof Message.Direction direction) {
            return way(direction);
        }
        if (argument instanceof Message.Measure measure) {
            String blank = measure.unit().equals("°") ? "" : " ";
            return number(measure.value(), measure.decimals()) + blank + measure.unit();
        }
        if (argument instanceof Message.Count count) {
            return count.number();
        }
        if (argument instanceof Message.PlainNumber number) {
            return number.value();
        }
        if (argument instanceof Message.Day day) {
            return day(day.date());
        }
        if (argument instanceof Message.Moment moment) {
            return moment(moment.at(), moment.zone());
        }
        if (argument instanceof Message.Said said) {
            return said.all().stream().map(this::say).collect(Collectors.joining(" "));
        }
        if (argument instanceof Message.Translated word) {
            return say(word.key());
        }
        if (argument instanceof Message.Field field) {
            return door == Door.API ? "/" + field.name() : say("field." + field.name());
        }
        return ((Message.Name) argument).text();
    }
}
