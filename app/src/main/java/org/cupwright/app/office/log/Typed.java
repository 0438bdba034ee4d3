package org.cupwright.app.office.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.desk.entry.typed.PacedText;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.entry.typed.PartText;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.app.storage.Photo;

/**
 * What somebody typed into a form of the logbook.
 *
 * @param fields by their names
 */
record Typed(Map<String, String> fields) {
    static final Typed NOTHING = new Typed(Map.of());

    static final String HOLE = "hole";
    static final String WHEN = "when";
    static final String ON = "on";
    static final String SIDE = "side";
    static final String RADIUS = "radius";
    static final String AT = "at";

    Typed {
        fields = Map.copyOf(fields);
    }

    String text(String name) {
        return fields.getOrDefault(name, "").strip();
    }

    Optional<String> find(String name) {
        return Optional.of(text(name)).filter(text -> !text.isEmpty());
    }

    /** Whether somebody who was asked says so all the same. */
    boolean sure() {
        return fields.containsKey("sure");
    }

    Optional<String> hole() {
        return find(HOLE);
    }

    /** What was typed of the parts; a photo comes as a file. */
    Map<String, String> parts(EntryForm form) {
        Map<String, String> parts = new LinkedHashMap<>();
        named(form).forEach(part -> find(Field.PART + part).ifPresent(text -> parts.put(part, text)));
        return parts;
    }

    /** The parts that no longer stand as they did when the form was made; an empty text where one was taken out. */
    Map<String, String> changed(EntryForm form) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (String part : named(form)) {
            String now = text(Field.PART + part);
            boolean unticked = now.isEmpty() && form.find(part).orElseThrow().type() == boolean.class;
            String said = unticked ? "no" : now;
            if (!said.equals(text(Field.WAS + Field.PART + part))) {
                parts.put(part, said);
            }
        }
        return parts;
    }

    private static List<String> named(EntryForm form) {
        List<String> names =
                new ArrayList<>(form.parts().stream().map(Part::name).toList());
        names.remove(Photo.PART);
        return names;
    }

    boolean saysPlace() {
        return find(ON).or(() -> find(SIDE)).or(() -> find(AT)).isPresent();
    }

    /** @throws org.cupwright.message.Problem where it cannot be read */
    Optional<Spot> spot() {
        if (find(AT).isPresent()) {
            return Optional.of(EntryPlace.spot(text(AT).replace(" ", "")));
        }
        return saysPlace() ? Optional.of(PacedText.read(text(ON), text(SIDE))) : Optional.empty();
    }

    /** @throws org.cupwright.message.Problem where it cannot be read */
    OptionalDouble radiusMetres() {
        return find(RADIUS)
                .map(text -> OptionalDouble.of(PartText.number(RADIUS, text, false)))
                .orElseGet(OptionalDouble::empty);
    }

    /** What a new entry says. */
    TypedEntry says(Chosen chosen, Optional<Photo> photo) {
        return new TypedEntry(
                Optional.of(chosen.form()),
                parts(chosen.form()),
                chosen.asPlanned() ? Optional.empty() : spot(),
                radiusMetres(),
                find(WHEN),
                chosen.asPlanned(),
                photo.map(Photo::hash));
    }
}
