package org.cupwright.app.office.log;

import java.util.List;

/**
 * A field of a form.
 *
 * @param name under which it is sent
 * @param label what it asks for, with its unit
 * @param hint how it is typed; empty where nothing needs saying
 * @param kind {@code text}, {@code number}, {@code date}, {@code choice}, {@code yes} or {@code file}
 * @param value what stands in it
 * @param choices of a choice
 * @param must whether it has to be filled in
 * @param problem what is wrong with what stands in it; empty where nothing is
 * @param was what stood in it when the form was made
 */
record Field(
        String name,
        String label,
        String hint,
        String kind,
        String value,
        List<Choice> choices,
        boolean must,
        String problem,
        String was) {
    /** Before a part's name, in the names of fields. */
    static final String PART = "part.";

    /** Before a field's name: what stood in it. */
    static final String WAS = "was.";

    /**
     * One of several values.
     *
     * @param value as it is sent
     * @param label as it is read
     */
    record Choice(String value, String label) {}

    /** The same with something else standing in it. */
    Field holding(String other) {
        return new Field(name, label, hint, kind, other, choices, must, problem, was);
    }
}
