package org.cupwright.app.office.log;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.desk.entry.typed.Draft;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.entry.typed.PartProblems;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.texts.Texts;
import org.cupwright.cupchange.Area;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * What is wrong with what was typed, in words.
 *
 * @param at by the name of the field
 * @param whole what is wrong with the entry as a whole; empty where nothing is
 * @param asks whether it is only asked, and may be right all the same
 */
record Wrong(Map<String, String> at, String whole, boolean asks) {
    static final Wrong NOTHING = new Wrong(Map.of(), "", false);

    /** What cannot be read as a place of any kind; paces are read from fields of their own. */
    private static final Name COORDINATES = new Name("place");

    boolean isNothing() {
        return at.isEmpty() && whole.isEmpty();
    }

    String at(String field) {
        return at.getOrDefault(field, "");
    }

    /** What is wrong with a new entry as it is typed, before anybody looks what it would mean. */
    static Wrong with(Chosen chosen, Typed typed, Texts texts) {
        EntryForm form = chosen.form();
        Map<String, String> at = new LinkedHashMap<>();
        for (Part part : form.parts()) {
            if (isMissing(part, chosen, typed)) {
                at.put(field(part, form), texts.say("log.page.needed"));
            }
        }
        Wrong wrong = unread(form, typed.parts(form), at, texts);
        return chosen.asPlanned() ? wrong : wrong.andPlace(form, typed, texts);
    }

    /** What is wrong with a correction as it is typed. */
    static Wrong with(EntryForm form, Typed typed, Texts texts) {
        Map<String, String> changed = typed.changed(form);
        Map<String, String> at = new LinkedHashMap<>();
        changed.forEach((part, text) -> {
            if (text.isEmpty()) {
                at.put(Field.PART + part, texts.say("log.page.emptied"));
            }
        });
        return unread(form, changed, at, texts).andPlace(form, typed, texts);
    }

    /** This, and what is wrong with the place: its own fields are read together. */
    private Wrong andPlace(EntryForm form, Typed typed, Texts texts) {
        Map<String, String> all = new LinkedHashMap<>(at);
        boolean area = form.place().filter(part -> part.type() == Area.class).isPresent();
        if (area && typed.saysPlace() && typed.find(Typed.RADIUS).isEmpty()) {
            all.put(Typed.RADIUS, texts.say("log.page.needed"));
        }
        for (Runnable reading : List.<Runnable>of(typed::spot, typed::radiusMetres)) {
            try {
                reading.run();
            } catch (Problem problem) {
                of(problem, form, Map.of(), texts).at().forEach(all::putIfAbsent);
            }
        }
        return new Wrong(all, whole, asks);
    }

    private static Wrong unread(EntryForm form, Map<String, String> parts, Map<String, String> at, Texts texts) {
        PartProblems.of(form, parts)
                .forEach((part, problem) -> at.putIfAbsent(Field.PART + part, words(problem, texts)));
        return new Wrong(at, "", false);
    }

    private static boolean isMissing(Part part, Chosen chosen, Typed typed) {
        boolean place = chosen.form().place().equals(Optional.of(part));
        boolean said =
                typed.find(Field.PART + part.name()).isPresent() || place && (chosen.asPlanned() || typed.saysPlace());
        return !said
                && !part.optional()
                && !Draft.goesWithoutSaying(part)
                && !part.name().equals(Photo.PART);
    }

    private static String field(Part part, EntryForm form) {
        return form.place().equals(Optional.of(part)) ? Typed.ON : Field.PART + part.name();
    }

    /**
     * What an entry was refused for, at its field if it is about one.
     *
     * @param parts what was typed of its parts
     */
    static Wrong of(Problem problem, EntryForm form, Map<String, String> parts, Texts texts) {
        String words = words(problem, texts);
        if (LogProblems.asks(problem)) {
            return new Wrong(Map.of(), words, true);
        }
        return PartProblems.blamed(form, parts, problem)
                .map(part -> Field.PART + part)
                .or(() -> problem.where().stream()
                        .flatMap(where -> named(where, form))
                        .findFirst())
                .map(field -> new Wrong(Map.of(field, words), "", false))
                .orElseGet(() -> new Wrong(Map.of(), words, false));
    }

    private static Stream<String> named(Message where, EntryForm form) {
        return where.arguments().stream().flatMap(argument -> {
            if (argument instanceof Message.Field field) {
                return field(field.name(), form).stream();
            }
            if (argument.equals(COORDINATES)) {
                return Stream.of(Typed.AT);
            }
            return argument instanceof Name part ? field(part.text(), form).stream() : Stream.empty();
        });
    }

    /** The field of a form for what a problem names. */
    private static Optional<String> field(String name, EntryForm form) {
        return switch (name) {
            case "hole", "when", "on", "side", "radius" -> Optional.of(name);
            case "place", "atOrOn" -> Optional.of(Typed.ON);
            default -> form.find(name).map(part -> field(part, form));
        };
    }

    private static String words(Problem problem, Texts texts) {
        return texts.say(problem.what()) + " " + texts.say(problem.tryThis());
    }
}
