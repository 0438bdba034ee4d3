package org.cupwright.app.desk.entry;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.storage.json.UnreadableFact;
import org.cupwright.cupchange.Payload;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What an entry is going to say, part by part. */
public final class Draft {
    /** What is meant where nothing is said: our choice, the commonest. */
    private static final Map<String, String> USUAL = Map.of(
            "foundBy", "paces",
            "way", "onePiece",
            "soil", "none",
            "severity", "note");

    /** What is not so unless somebody says it is. */
    private static final List<String> NOT_SO = List.of("rimWhited", "edgeRagged", "watered", "rainTrace");

    private final EntryForm form;
    private final ObjectNode json;

    private Draft(EntryForm form, ObjectNode json) {
        this.form = form;
        this.json = json;
    }

    public static Draft empty(EntryForm form) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("kind", form.kind());
        return new Draft(form, json);
    }

    /** A draft that says what an entry says already. */
    static Draft of(Payload payload) {
        JsonNode json = JsonMapper.shared().readTree(FactJson.writePayload(payload));
        return new Draft(EntryForm.ofKind(payload.kind()), (ObjectNode) json);
    }

    EntryForm form() {
        return form;
    }

    public boolean says(String part) {
        return json.has(part);
    }

    public void set(String part, JsonNode value) {
        json.set(part, value);
    }

    /** Sets what lies at a path of names, as {@code area, centre, east}. */
    public void set(List<String> path, JsonNode value) {
        ObjectNode at = json;
        for (String name : path.subList(0, path.size() - 1)) {
            at = at.has(name) ? (ObjectNode) at.get(name) : at.putObject(name);
        }
        at.set(path.get(path.size() - 1), value);
    }

    public boolean says(List<String> path) {
        JsonNode at = json;
        for (String name : path) {
            at = at.path(name);
        }
        return !at.isMissingNode();
    }

    /** Whether a part has a value where nobody gives one. */
    public static boolean goesWithoutSaying(Part part) {
        boolean today = part.type() == LocalDate.class && !part.name().equals("forDay");
        boolean usual = part.type().isEnum() && USUAL.containsKey(part.name());
        return today || usual || NOT_SO.contains(part.name()) || part.type() == List.class;
    }

    /** Fills in what goes without saying. */
    public void fillIn(LocalDate day) {
        for (Part part : form.parts()) {
            boolean left = !says(part.name()) && goesWithoutSaying(part);
            if (left && (!part.optional() || part.type() == List.class)) {
                fillIn(part, day);
            }
        }
    }

    private void fillIn(Part part, LocalDate day) {
        String name = part.name();
        if (part.type().isEnum()) {
            json.put(name, USUAL.get(name));
        } else if (part.type() == List.class) {
            json.putArray(name);
        } else if (part.type() == LocalDate.class) {
            json.put(name, day.toString());
        } else {
            json.put(name, false);
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
        String kind = EntryForm.typed(form.kind());
        if (!missing.isEmpty()) {
            throw LogProblems.missing(
                    kind,
                    missing.stream().map(Part::name).toList(),
                    missing.stream().map(Part::example).toList());
        }
        try {
            return FactJson.readPayload(json.toString());
        } catch (UnreadableFact impossible) {
            throw LogProblems.impossible(kind, impossible.why());
        }
    }
}
