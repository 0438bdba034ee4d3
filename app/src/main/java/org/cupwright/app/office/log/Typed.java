package org.cupwright.app.office.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.desk.entry.typed.PacedText;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.entry.typed.PartText;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.texts.Texts;

/**
 * What somebody typed into a form of the logbook.
 *
 * @param fields by their names
 * @param sides the language's letters for left and right, which are taken beside L and R
 */
record Typed(Map<String, String> fields, String sides) {
    private static final String SIDES = "LR";
    private static final Pattern ONE_LETTER = Pattern.compile("(\\P{L}*)(\\p{L})(\\P{L}*)");

    static final Typed NOTHING = new Typed(Map.of(), SIDES);

    static final String HOLE = "hole";
    static final String WHEN = "when";
    static final String ON = "on";
    static final String SIDE = "side";
    static final String RADIUS = "radius";
    static final String AT = "at";

    Typed {
        fields = Map.copyOf(fields);
    }

    /** As it is typed in a language. */
    static Typed of(Map<String, String> fields, Texts texts) {
        return new Typed(fields, texts.say("log.page.letters"));
    }

    /** A place with L or R, whichever letter it was typed with; what has no letter or several stands as it is. */
    private String place(String typed) {
        Matcher form = ONE_LETTER.matcher(typed);
        int side = form.matches() ? sides.indexOf(form.group(2).toUpperCase(Locale.ROOT)) : -1;
        return side < 0 ? typed : form.group(1) + SIDES.charAt(side) + form.group(3);
    }

    private String part(EntryForm form, String name, String typed) {
        return form.find(name).filter(Part::isPlace).isPresent() ? place(typed) : typed;
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
        named(form).forEach(part -> find(Field.PART + part).ifPresent(text -> parts.put(part, part(form, part, text))));
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
                parts.put(part, part(form, part, said));
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
            return Optional.of(EntryPlace.spot(place(text(AT).replace(" ", ""))));
        }
        return saysPlace() ? Optional.of(PacedText.read(text(ON), place(text(SIDE)))) : Optional.empty();
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
