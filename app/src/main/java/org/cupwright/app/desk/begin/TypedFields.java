package org.cupwright.app.desk.begin;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.TypedHeading;
import org.cupwright.course.Hole;
import org.cupwright.message.Message;
import org.cupwright.message.Message.PlainNumber;
import org.cupwright.message.Problem;
import org.cupwright.units.Heading;
import org.cupwright.units.WrittenNumber;

/** What was typed into the fields of a form. All that is wrong with it is gathered, so that it is told at once. */
final class TypedFields {

    private final Map<String, String> typed;
    private final Map<String, Problem> wrong = new LinkedHashMap<>();

    TypedFields(Map<String, String> typed) {
        this.typed = typed;
    }

    /** Without blanks about it; nothing where the form had no such field. */
    String text(String field) {
        return Optional.ofNullable(typed.get(field)).orElse("").strip();
    }

    /** Whether the form had the field at all. */
    boolean has(String field) {
        return typed.containsKey(field);
    }

    boolean isBlank(String field) {
        return text(field).isEmpty();
    }

    /** The first that is said of a field counts. */
    void refuse(String field, Problem why) {
        wrong.putIfAbsent(field, why);
    }

    /** A number within bounds; empty where nothing or something wrong was typed, which is then told. */
    Optional<Double> number(String field, double least, double greatest) {
        String text = text(field);
        Optional<Double> number = WrittenNumber.find(text);
        if (text.isEmpty()) {
            refuse(field, Problem.of("begin.missing", field, text));
        } else if (number.isEmpty()) {
            refuse(field, Problem.of("begin.notANumber", field, text));
        } else if (number.get() < least || number.get() > greatest) {
            Message.Argument[] bounds = {new PlainNumber(least), new PlainNumber(greatest)};
            refuse(field, Problem.of("begin.outOfBounds", field, text, bounds));
            return Optional.empty();
        }
        return number;
    }

    /** The same of a field that may stay empty. */
    Optional<Double> numberIfAny(String field, double least, double greatest) {
        return isBlank(field) ? Optional.empty() : number(field, least, greatest);
    }

    /** A direction in degrees, if any. */
    Optional<Heading> heading(String field) {
        String text = text(field);
        try {
            return TypedHeading.read(field, text);
        } catch (Problem wrong) {
            refuse(field, wrong);
            return Optional.empty();
        }
    }

    /** The name of a hole, if any. */
    Optional<String> hole(String field) {
        String text = text(field);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (!text.matches(Hole.ID_PATTERN)) {
            refuse(field, Problem.of("begin.hole", field, text));
            return Optional.empty();
        }
        return Optional.of(text);
    }

    /** @throws WrongFields if anything was wrong */
    void check() {
        if (!wrong.isEmpty()) {
            throw new WrongFields(wrong);
        }
    }
}
