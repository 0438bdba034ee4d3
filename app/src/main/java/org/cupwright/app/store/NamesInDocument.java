package org.cupwright.app.store;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.app.storage.NameKey;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/**
 * Where documents name people, and one name in them replaced by another. Holes, settings and areas may be called as
 * people are: only what is known to be a person's name is looked at.
 */
final class NamesInDocument {
    /** Made when the first document is looked through. */
    private static final class Mapper {
        static final JsonMapper INSTANCE = JsonMapper.builder().build();
    }

    /** Properties that hold a person's name. */
    private static final Set<String> PERSONS = Set.of("person", "askedBy");

    /** Sentences that name a person, and at which place among their arguments. */
    private static final Map<String, Integer> SENTENCES = Map.of(
            "plan.reason.asked", 0,
            "plan.finding.askedAgainst", 1,
            "rule.drawnGround.bad", 1,
            "rule.drawnGround.good", 1,
            "rule.drawnGround.usual", 1);

    /** What lines of the audit trail tell of people, whether they have an account or none. */
    private static final Set<String> ABOUT_PERSONS = Stream.of(AuditKind.values())
            .filter(AuditKind::isAboutAPerson)
            .map(Enum::name)
            .collect(Collectors.toUnmodifiableSet());

    private final String key;
    private final String neutral;

    /** @param key the name as {@link NameKey} has it */
    NamesInDocument(String key, String neutral) {
        this.key = key;
        this.neutral = neutral;
    }

    /** The document with the name replaced; empty where it does not have it. */
    Optional<String> replacedIn(String document) {
        JsonNode root = Mapper.INSTANCE.readTree(document);
        boolean found = replace(root);
        return found ? Optional.of(Mapper.INSTANCE.writeValueAsString(root)) : Optional.empty();
    }

    private boolean replace(JsonNode node) {
        boolean found = false;
        if (node instanceof ObjectNode object) {
            found = inProperties(object) | inSentence(object) | inAudit(object) | inTraining(object);
        }
        for (JsonNode child : node) {
            found |= replace(child);
        }
        return found;
    }

    private boolean inProperties(ObjectNode object) {
        boolean found = false;
        for (String property : PERSONS) {
            found |= replace(object, property);
        }
        return found;
    }

    private boolean inSentence(ObjectNode message) {
        JsonNode sentence = message.get("key");
        Integer place = sentence == null ? null : SENTENCES.get(sentence.asString(""));
        return place != null
                && message.get("arguments") instanceof ArrayNode arguments
                && arguments.get(place) instanceof ObjectNode argument
                && replace(argument, "text");
    }

    /** Who did something, and to whom, in a line of the audit trail. */
    private boolean inAudit(ObjectNode line) {
        boolean by = line.get("by") instanceof ObjectNode who && replace(who, "name");
        boolean about = line.get("about") instanceof ObjectNode whom
                && (whom.get("person") instanceof StringNode || isAboutSomebody(line))
                && whom.get("thing") instanceof ObjectNode name
                && replace(name, "text");
        return by | about;
    }

    /** Whoever is invited has no account yet, and whoever learns may have none. */
    private static boolean isAboutSomebody(ObjectNode line) {
        return line.get("what") instanceof StringNode what && ABOUT_PERSONS.contains(what.asString());
    }

    /** Whom a record of training is about. */
    private boolean inTraining(ObjectNode record) {
        return record.get("person") instanceof ObjectNode whom && replace(whom, "name");
    }

    private boolean replace(ObjectNode object, String property) {
        boolean same = object.get(property) instanceof StringNode text
                && NameKey.of(text.asString()).equals(key);
        if (same) {
            object.put(property, neutral);
        }
        return same;
    }
}
