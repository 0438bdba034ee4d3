package org.cupwright.app.desk.entry.carried;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.SentForm;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Photo;
import org.cupwright.formats.BoundedInput;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * What a telephone could not send, as the file that its page saved: each entry is kept once, whether it comes by this
 * way, by the line, or by both.
 */
public record TakeRound(Session session) {
    /** A round with a photo of every green has some 10 MB (our choice of bound). */
    private static final long MOST_BYTES = 32L << 20;

    private static final String STORE = "problem.store.";

    /**
     * What became of the file's entries.
     *
     * @param added those that are kept now
     * @param known those that were kept already
     * @param notTaken those that cannot be kept; they keep back no other
     */
    public record Taken(int added, int known, List<NotTaken> notTaken) {}

    /** An entry that cannot be kept, about which hole, why, and what to try. */
    public record NotTaken(String id, String hole, Message why, Message tryThis) {}

    private interface Keeping {
        /** Whether it was not there yet. */
        boolean in(Session session, UUID id);
    }

    private record Sent(UUID id, String course, Optional<String> by, Keeping keeping) {}

    /** @throws Problem when it is no such file; nothing of it is kept then */
    public Taken take(SourceFile file) {
        int added = 0;
        int known = 0;
        List<NotTaken> notTaken = new ArrayList<>();
        for (JsonNode node : FileReading.read(file, in -> entries(in, file))) {
            try {
                boolean now = keep(sent(node, file));
                added += now ? 1 : 0;
                known += now ? 0 : 1;
            } catch (Problem refused) {
                if (refused.what().key().startsWith(STORE)) {
                    throw refused; // the others would fare no better
                }
                notTaken.add(new NotTaken(
                        node.path("id").asString(""),
                        node.path("says").path("hole").asString("–"),
                        refused.what(),
                        refused.tryThis()));
            }
        }
        return new Taken(added, known, List.copyOf(notTaken));
    }

    private boolean keep(Sent sent) {
        Session handed = session.about(sent.course());
        return sent.keeping().in(sent.by().map(handed::by).orElse(handed), sent.id());
    }

    private static List<JsonNode> entries(InputStream in, SourceFile file) throws IOException {
        try {
            return entries(JsonMapper.shared().readTree(BoundedInput.text(in, MOST_BYTES)), file);
        } catch (JacksonException none) {
            throw noRound(file);
        }
    }

    private static List<JsonNode> entries(JsonNode root, SourceFile file) {
        JsonNode entries = root.path("entries");
        boolean named = entries.isArray()
                && entries.valueStream()
                        .allMatch(entry -> isId(entry.path("id").asString(""))
                                && entry.path("course").isString()
                                && entry.path("says").isObject());
        if (root.path("round").asInt(0) != 1 || !named) {
            throw noRound(file);
        }
        return entries.valueStream().toList();
    }

    private static boolean isId(String text) {
        try {
            return UUID.fromString(text).toString().equalsIgnoreCase(text);
        } catch (IllegalArgumentException other) {
            return false;
        }
    }

    private static Sent sent(JsonNode node, SourceFile file) {
        UUID id = UUID.fromString(node.path("id").asString());
        String course = node.path("course").asString();
        String says = node.path("says").toString();
        if (node.path("to").asString("").equals(CarriedPractice.TO)) {
            CarriedPractice practice = CarriedPractice.read(says);
            return new Sent(
                    id,
                    course,
                    practice.by(),
                    (session, own) ->
                            new SentForm(session, own).once(practice::keep).isPresent());
        }
        CarriedEntry entry = CarriedEntry.read(says);
        Optional<Photo> photo = Optional.of(node.path("photo").asString(""))
                .filter(text -> !text.isEmpty())
                .map(text -> entry.photo(photo(text, file)));
        return new Sent(
                id,
                course,
                entry.by(),
                (session, own) -> new SentForm(entry.recordedBy(session), own)
                        .once(once -> new RecordFact(once).record(entry.entry(photo)))
                        .isPresent());
    }

    private static SourceFile photo(String text, SourceFile file) {
        try {
            byte[] bytes = Base64.getDecoder().decode(text);
            return new SourceFile(file.name(), () -> new ByteArrayInputStream(bytes));
        } catch (IllegalArgumentException none) {
            throw noRound(file);
        }
    }

    private static Problem noRound(SourceFile file) {
        return Problem.of(
                Message.of("problem.log.noRound"),
                Message.of("where.place", new Name(file.name())),
                "",
                Message.of("try.log.noRound"));
    }
}
