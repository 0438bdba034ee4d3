package org.cupwright.app.desk.entry.typed;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.cupwright.message.Message;
import org.cupwright.message.Message.PlainNumber;
import org.cupwright.message.Message.Said;
import org.cupwright.message.Problem;

/** Which parts of an entry what was typed is wrong with, all of them at once: for forms, which show it where it is. */
public final class PartProblems {
    private PartProblems() {}

    /**
     * What does not read.
     *
     * @param typed texts by the name of the part
     * @return problems by the name of the part; days and places may still be refused for the day or the hole they are
     *     of
     */
    public static Map<String, Problem> of(EntryForm form, Map<String, String> typed) {
        Map<String, Problem> problems = new LinkedHashMap<>();
        typed.forEach((name, text) -> form.find(name).ifPresent(part -> {
            try {
                PartText.typed(part, text);
            } catch (Problem wrong) {
                problems.put(name, wrong);
            }
        }));
        return problems;
    }

    /** The part that holds the number for which an entry as a whole is refused. */
    public static Optional<String> blamed(EntryForm form, Map<String, String> typed, Problem refused) {
        return number(refused)
                .flatMap(number -> form.parts().stream()
                        .filter(part -> part.type() == double.class || part.type() == int.class)
                        .filter(part -> typed.containsKey(part.name()))
                        .filter(part -> PartText.number(part.name(), typed.get(part.name()), part.type() == int.class)
                                == number)
                        .map(Part::name)
                        .findFirst());
    }

    /** The number that lies outside its bounds: the first that is named. */
    private static Optional<Double> number(Problem refused) {
        return refused.what().arguments().stream()
                .filter(argument -> argument instanceof Said)
                .flatMap(argument -> ((Said) argument).all().stream())
                .map(Message::arguments)
                .flatMap(arguments -> arguments.stream().filter(argument -> argument instanceof PlainNumber))
                .map(argument -> ((PlainNumber) argument).value())
                .findFirst();
    }
}
