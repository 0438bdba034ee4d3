package org.cupwright.app.desk.entry.carried;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.Entry;
import org.cupwright.app.desk.entry.Says;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.log.PhoneClock;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.NameKey;
import org.cupwright.app.storage.Photo;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * An entry as a phone kept it until it could be sent. What happened is not asked about any more when it arrives, hours
 * later: it is kept as it was said, beside whatever others said of the same hole.
 *
 * @param by who wrote it down; empty where the phone did not keep that yet
 * @param form what kind of entry it is
 * @param hole the hole; empty for the whole course
 * @param day the day whose plan was carried
 * @param at when it was written down, by the phone's clock
 * @param behind how far that clock was behind the office's when the two were last in touch
 * @param asPlanned whether the hole was cut where the plan had it
 * @param where the place, where it was another
 * @param parts what else was said, by the names of the logbook
 */
public record CarriedEntry(
        Optional<String> by,
        EntryForm form,
        Optional<String> hole,
        LocalDate day,
        Instant at,
        Duration behind,
        boolean asPlanned,
        Optional<Spot> where,
        Map<String, String> parts) {
    private static final Duration AS_GOOD_AS_RIGHT = PhoneClock.AS_GOOD_AS_RIGHT;

    private static final int MOST_QUOTED = 80;

    /** @throws Problem when it is none */
    public static CarriedEntry read(String json) {
        try {
            return read(JsonMapper.shared().readTree(json), json);
        } catch (JacksonException | DateTimeParseException unreadable) {
            throw unreadable(json);
        }
    }

    private static CarriedEntry read(JsonNode node, String json) {
        return new CarriedEntry(
                text(node, "by"),
                EntryForm.of(text(node, "kind").orElseThrow(() -> unreadable(json))),
                text(node, "hole"),
                LocalDate.parse(text(node, "day").orElseThrow(() -> unreadable(json))),
                Instant.parse(text(node, "at").orElseThrow(() -> unreadable(json))),
                Duration.ofMillis(node.path("clockBehind").asLong(0)),
                node.path("asPlanned").asBoolean(false),
                text(node, "place").map(place -> EntryPlace.spot(place.replace(" ", ""))),
                parts(node.path("parts")));
    }

    /**
     * An entry stands under the name of whoever wrote it, never under that of who happens to be signed in.
     *
     * @throws Problem when that is somebody else
     */
    public void checkWrittenBy(Person sender) {
        checkWrittenBy(by, sender);
    }

    static void checkWrittenBy(Optional<String> by, Person sender) {
        by.filter(name -> !NameKey.of(name).equals(NameKey.of(sender.name()))).ifPresent(other -> {
            throw Problem.of("round.byAnother", "by", other, new Name(other), new Name(sender.name()));
        });
    }

    static Problem unreadable(String json) {
        String begins = json.substring(0, Math.min(json.length(), MOST_QUOTED));
        return Problem.of("round.entry", "entry", begins, new Name(begins));
    }

    static Optional<String> text(JsonNode node, String name) {
        return Optional.of(node.path(name))
                .filter(JsonNode::isString)
                .map(JsonNode::asString)
                .filter(text -> !text.isBlank());
    }

    private static Map<String, String> parts(JsonNode node) {
        Map<String, String> parts = new HashMap<>();
        node.properties()
                .forEach(part -> parts.put(part.getKey(), part.getValue().asString()));
        return parts;
    }

    /** A photo that comes with it. */
    public Photo photo(SourceFile file) {
        return TypedEntry.photo(form, file);
    }

    /** The entry for the logbook. */
    public Entry entry(Optional<Photo> photo) {
        TypedEntry typed = new TypedEntry(
                Optional.of(form),
                parts,
                where,
                OptionalDouble.empty(),
                Optional.empty(),
                asPlanned,
                photo.map(Photo::hash));
        Says says = occasion -> {
            Says.Said said = typed.on(occasion);
            return new Says.Said(said.payload(), said.when().or(() -> Optional.of(happened())), said.remarks());
        };
        return new Entry(hole.stream().toList(), asPlanned, Optional.of(day), says, photo, true, true);
    }

    /** When it happened: by the phone's clock, put right where that is known to be wrong. */
    Instant happened() {
        return happened(at, behind);
    }

    static Instant happened(Instant at, Duration behind) {
        return behind.abs().compareTo(AS_GOOD_AS_RIGHT) < 0 ? at : at.plus(behind);
    }

    /** Whoever sent it, at the moment when it was written down by the clock it was written down by. */
    public Session recordedBy(Session sender) {
        return sender.at(Clock.fixed(at, ZoneOffset.UTC));
    }
}
