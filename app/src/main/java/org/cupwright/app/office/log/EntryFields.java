package org.cupwright.app.office.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.entry.typed.Draft;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.entry.typed.WrittenPart;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.office.log.Field.Choice;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.cupchange.Area;
import org.cupwright.policy.EnumNames;

/**
 * The fields of a kind of entry, which follow from its declared parts.
 *
 * @param texts the words
 * @param course whose holes may be chosen
 * @param form the kind of entry
 * @param typed what stands in the fields
 * @param wrong what is wrong with it
 */
record EntryFields(Texts texts, Course course, EntryForm form, Typed typed, Wrong wrong) {
    /** The plan says where a hole was to be; nobody types that. */
    private static final String PLANNED = "planned";

    /** Kinds of so few parts show all of them at once: our choice. */
    private static final int FEW = 3;

    /** The hole, from a list: of a new entry also every hole, one entry each. */
    Field hole(boolean every) {
        List<Choice> holes = new ArrayList<>(List.of(new Choice("", texts.say("log.page.noHole"))));
        if (every) {
            holes.add(new Choice("all", texts.say("log.page.everyHole")));
        }
        course.holes().forEach(hole -> holes.add(new Choice(hole.id(), texts.say("log.page.hole.one", hole.id()))));
        return field(Typed.HOLE, texts.say("log.page.hole"), "", "choice", holes, false);
    }

    /** When it happened; on another day than the clock's that is the morning where nobody says. */
    Field when(boolean now) {
        String hint = texts.say(now ? "log.page.when.now" : "log.page.when.morning");
        return field(Typed.WHEN, texts.say("log.page.when"), hint, "text", List.of(), false);
    }

    /** Paces on and from a side, and of a piece of ground how far about. */
    List<Field> paced() {
        if (form.place().isEmpty()) {
            return List.of();
        }
        List<Field> fields = new ArrayList<>();
        fields.add(field(Typed.ON, texts.say("log.page.on"), "", "number", List.of(), false));
        fields.add(field(
                Typed.SIDE, texts.say("log.page.side"), texts.say("log.page.side.hint"), "text", List.of(), false));
        if (isArea()) {
            fields.add(field(Typed.RADIUS, texts.say("log.page.radius"), "", "number", List.of(), false));
        }
        return fields;
    }

    /** The place by its coordinates, and of a piece of ground its corners. */
    List<Field> coordinates() {
        if (form.place().isEmpty()) {
            return List.of();
        }
        List<Field> fields = new ArrayList<>();
        fields.add(field(Typed.AT, texts.say("log.page.at"), texts.say("log.page.at.hint"), "text", List.of(), false));
        if (isArea()) {
            Part area = form.place().get();
            fields.add(field(Field.PART + area.name(), texts.say("log.page.corners"), "", "text", List.of(), false));
        }
        return fields;
    }

    private boolean isArea() {
        return form.place().filter(part -> part.type() == Area.class).isPresent();
    }

    /** The other parts, those that are told first or those that seldom matter. */
    List<Field> parts(boolean first, LocalDate day) {
        return form.parts().stream()
                .filter(part ->
                        !form.place().equals(Optional.of(part)) && !part.name().equals(PLANNED))
                .filter(part -> isFirst(part) == first)
                .map(part -> part(part, day))
                .toList();
    }

    private boolean isFirst(Part part) {
        boolean must = !part.optional() && !Draft.goesWithoutSaying(part);
        return must || form.parts().size() <= FEW || part.type() == LocalDate.class;
    }

    private Field part(Part part, LocalDate day) {
        String name = Field.PART + part.name();
        boolean must = !part.optional() && !Draft.goesWithoutSaying(part);
        String label = label(part);
        if (part.name().equals(Photo.PART)) {
            return field(name, label, texts.say("log.page.photo.hint"), "file", List.of(), false);
        }
        if (part.type() == boolean.class && !must) {
            return field(name, label, "", "yes", List.of(), false);
        }
        if (part.type() == boolean.class) {
            return field(name, label, "", "choice", yesOrNo(part), true);
        }
        if (part.type().isEnum()) {
            return usual(field(name, label, "", "choice", choices(part), must), part);
        }
        if (part.type() == LocalDate.class) {
            Field field = field(name, label, "", "date", List.of(), must);
            return Draft.goesWithoutSaying(part) && !part.optional() ? orElse(field, day.toString()) : field;
        }
        boolean number = part.type() == double.class || part.type() == int.class;
        return field(name, label, hint(part), number ? "number" : "text", List.of(), must);
    }

    /** The kind may have a word of its own for a part. */
    private String label(Part part) {
        String own = "log.page.part." + form.kind() + "." + part.name();
        return texts.say(texts.knows(own) ? own : "log.page.part." + part.name());
    }

    private String hint(Part part) {
        String key = "log.page.hint." + part.type().getSimpleName();
        return texts.knows(key) ? texts.say(key) : part.isPlace() ? texts.say("log.page.at.hint") : "";
    }

    private List<Choice> yesOrNo(Part part) {
        return List.of(
                new Choice("", texts.say("log.page.chooseOne")),
                new Choice("yes", texts.say("log.is." + part.name())),
                new Choice("no", texts.say("log.not." + part.name())));
    }

    private List<Choice> choices(Part part) {
        List<Choice> choices = new ArrayList<>();
        if (Draft.usual(part).isEmpty()) {
            choices.add(new Choice("", texts.say(part.optional() ? "log.page.unsaid" : "log.page.chooseOne")));
        }
        Arrays.stream(part.type().getEnumConstants())
                .map(choice -> EnumNames.lowerCamel((Enum<?>) choice))
                .map(choice ->
                        new Choice(LogProblems.typed(choice), texts.say("log.choice." + part.name() + "." + choice)))
                .forEach(choices::add);
        return choices;
    }

    private Field usual(Field field, Part part) {
        return Draft.usual(part)
                .map(value -> orElse(field, WrittenPart.of(value, course.frame().zone())))
                .orElse(field);
    }

    private static Field orElse(Field field, String value) {
        return field.value().isEmpty() ? field.holding(value) : field;
    }

    private Field field(String name, String label, String hint, String kind, List<Choice> choices, boolean must) {
        return new Field(
                name, label, hint, kind, typed.text(name), choices, must, wrong.at(name), typed.text(Field.WAS + name));
    }
}
