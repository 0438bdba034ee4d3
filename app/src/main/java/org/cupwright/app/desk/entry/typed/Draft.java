package org.cupwright.app.desk.entry.typed;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.cupchange.CrewNote.Severity;
import org.cupwright.cupchange.CupWork.CutWay;
import org.cupwright.cupchange.CupWork.FoundBy;
import org.cupwright.cupchange.CupWork.Soil;
import org.cupwright.cupchange.ImpossibleFact;
import org.cupwright.cupchange.Payload;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Said;

/** What an entry is going to say, part by part. */
public final class Draft {
    /** What is meant where nothing is said: our choice, the commonest; else that it is not so. */
    private static final Map<String, Object> USUAL = Map.of(
            "foundBy",
            FoundBy.PACES,
            "way",
            CutWay.ONE_PIECE,
            "soil",
            Soil.NONE,
            "severity",
            Severity.NOTE,
            "rimWhited",
            false,
            "edgeRagged",
            false,
            "watered",
            false,
            "rainTrace",
            false);

    private final EntryForm form;
    private final Map<String, Object> said = new HashMap<>();

    public Draft(EntryForm form) {
        this.form = form;
    }

    /** A draft that says what an entry says already. */
    static Draft of(Payload payload) {
        Draft draft = new Draft(EntryForm.ofKind(payload.kind()));
        draft.form.parts().forEach(part -> part.of(payload).ifPresent(value -> draft.set(part.name(), value)));
        return draft;
    }

    EntryForm form() {
        return form;
    }

    public boolean says(String part) {
        return said.containsKey(part);
    }

    /** @param value of the part's type, or a {@link Supplier} of one where making it may fail */
    public void set(String part, Object value) {
        said.put(part, value);
    }

    /** Whether a part has a value where nobody gives one. */
    public static boolean goesWithoutSaying(Part part) {
        boolean today = part.type() == LocalDate.class && !part.name().equals("forDay");
        return today || part.type() == List.class || USUAL.containsKey(part.name());
    }

    /** What a part is taken to say where nobody says it; empty where that is a day, a list, or nothing at all. */
    public static Optional<Object> usual(Part part) {
        return Optional.ofNullable(USUAL.get(part.name()));
    }

    /** Fills in what goes without saying. */
    public void fillIn(LocalDate day) {
        for (Part part : form.parts()) {
            if (part.type() == List.class) {
                said.putIfAbsent(part.name(), List.of());
            } else if (!part.optional() && goesWithoutSaying(part)) {
                said.putIfAbsent(part.name(), USUAL.getOrDefault(part.name(), day));
            }
        }
    }

    /** The parts that must be said and are not. */
    public List<Part> missing() {
        return form.parts().stream()
                .filter(part -> !part.optional() && !says(part.name()))
                .toList();
    }

    public Payload finished() {
        List<Part> missing = missing();
        String kind = LogProblems.typed(form.kind());
        if (!missing.isEmpty()) {
            throw LogProblems.missing(
                    kind,
                    missing.stream().map(Part::name).toList(),
                    missing.stream().map(Part::example).toList());
        }
        try {
            return form.payload(name -> said.get(name) instanceof Supplier<?> made ? made.get() : said.get(name));
        } catch (ImpossibleFact impossible) {
            throw LogProblems.impossible(kind, new Said(impossible.why()));
        } catch (IllegalArgumentException impossible) {
            throw LogProblems.impossible(kind, new Said(Message.of("impossible.part")));
        }
    }
}
