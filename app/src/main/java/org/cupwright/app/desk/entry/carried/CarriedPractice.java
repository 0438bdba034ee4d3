package org.cupwright.app.desk.entry.carried;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.cupwright.app.desk.training.RecordPractice;
import org.cupwright.app.session.Person;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.training.Exercise;
import org.cupwright.app.storage.training.HowWell;
import org.cupwright.app.storage.training.Learnt;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.app.storage.training.TrainingRecord;
import org.cupwright.policy.EnumNames;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a phone kept of a learner's round, or of an exercise.
 *
 * @param by who wrote it down; empty where the phone did not keep that yet
 * @param learner whom it is about; empty: whoever sends it
 * @param learnt what it says
 * @param happened when it was written down, put right where the phone's clock is known to be wrong
 */
public record CarriedPractice(Optional<String> by, Optional<String> learner, Learnt learnt, Instant happened) {
    /** What tells it from entries of the logbook, in a file that a phone saved. */
    static final String TO = "training";

    /** @throws org.cupwright.message.Problem when it is none */
    public static CarriedPractice read(String json) {
        try {
            JsonNode node = JsonMapper.shared().readTree(json);
            Instant at = Instant.parse(needed(node, "at", json));
            Duration behind = Duration.ofMillis(node.path("clockBehind").asLong(0));
            return new CarriedPractice(
                    CarriedEntry.text(node, "by"),
                    CarriedEntry.text(node, "learner"),
                    learnt(node, json),
                    CarriedEntry.happened(at, behind));
        } catch (JacksonException | DateTimeParseException unreadable) {
            throw CarriedEntry.unreadable(json);
        }
    }

    private static Learnt learnt(JsonNode node, String json) {
        LocalDate day = LocalDate.parse(needed(node, "day", json));
        return switch (needed(node, "kind", json)) {
            case "done" ->
                new Learnt.Done(
                        choice(Skill.class, node, "skill", json),
                        choice(HowWell.class, node, "how", json),
                        day,
                        CarriedEntry.text(node, "hole"));
            case "practised" ->
                new Learnt.Practised(
                        choice(Exercise.class, node, "exercise", json),
                        day,
                        node.path("best").asInt(-1),
                        node.path("last").asInt(-1));
            default -> throw CarriedEntry.unreadable(json);
        };
    }

    private static String needed(JsonNode node, String name, String json) {
        return CarriedEntry.text(node, name).orElseThrow(() -> CarriedEntry.unreadable(json));
    }

    private static <E extends Enum<E>> E choice(Class<E> choices, JsonNode node, String name, String json) {
        return EnumNames.find(choices, needed(node, name, json)).orElseThrow(() -> CarriedEntry.unreadable(json));
    }

    /** @throws org.cupwright.message.Problem when somebody else wrote it than who is signed in */
    public void checkWrittenBy(Person sender) {
        CarriedEntry.checkWrittenBy(by, sender);
    }

    /** Keeps it, said by whoever sends it at the moment when it was written down. */
    public TrainingRecord keep(Session sender) {
        return new RecordPractice(sender.at(Clock.fixed(happened, ZoneOffset.UTC))).keep(learner, learnt);
    }
}
