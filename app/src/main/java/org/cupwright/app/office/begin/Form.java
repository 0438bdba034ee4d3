package org.cupwright.app.office.begin;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Problem;

/**
 * A form as it stands: with what was typed, and beside each field what is wrong with it.
 *
 * @param texts the words
 * @param values by the names of the fields
 * @param wrong what is wrong, by the names of the fields
 */
record Form(Texts texts, Map<String, String> values, Map<String, Problem> wrong) {
    static Form of(Texts texts, Map<String, String> values) {
        return new Form(texts, values, Map.of());
    }

    /**
     * A field.
     *
     * @param name its name
     * @param label its word
     * @param hint what helps to fill it in; may be empty
     * @param value what stands in it
     * @param problem what is wrong with that; empty where nothing is
     */
    record Field(String name, String label, String hint, String value, String problem) {}

    /** The field of a name; its word is that of its kind, the name without numbers. */
    public Field field(String name) {
        String kind = name.replaceAll("[-.0-9]+$", "");
        String hint = "begin.hint." + kind;
        return new Field(
                name,
                texts.say("begin.field." + kind),
                texts.knows(hint) ? texts.say(hint) : "",
                value(name),
                problem(name));
    }

    public String value(String name) {
        return Optional.ofNullable(values.get(name)).orElse("");
    }

    /** What is wrong with what stands in a field, the value, and what to try. */
    public String problem(String name) {
        return Optional.ofNullable(wrong.get(name)).map(this::said).orElse("");
    }

    /** The same after the word of the field, where it has one of these forms. */
    public String told(String name) {
        Field field = field(name);
        boolean worded = !field.label().startsWith("begin.field.");
        return (worded ? field.label() + ": " : "") + field.problem();
    }

    private String said(Problem problem) {
        String value = texts.show(problem.value());
        String what = texts.say(problem.what());
        String told = value.isBlank() || what.contains(value) ? what : what + " " + texts.say("begin.value", value);
        return told + " " + texts.say(problem.tryThis());
    }

    /** The names of the fields that are wrong, to lead there: in the order of the form, as it was sent. */
    public List<String> wrongFields() {
        Stream<String> sent = values.keySet().stream().filter(wrong::containsKey);
        Stream<String> others = wrong.keySet().stream()
                .filter(name -> !values.containsKey(name))
                .sorted();
        return Stream.concat(sent, others).toList();
    }
}
