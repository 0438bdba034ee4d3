package org.cupwright.app.desk.begin;

import java.util.Map;
import java.util.TreeMap;
import org.cupwright.message.Problem;

/** What is wrong with what was typed into a form, field by field. Nothing of it was kept. */
public final class WrongFields extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient Map<String, Problem> byField;

    WrongFields(Map<String, Problem> byField) {
        super(String.join(", ", byField.keySet()), null, false, false);
        this.byField = new TreeMap<>(byField);
    }

    /** By the names of the fields. */
    public Map<String, Problem> byField() {
        return byField;
    }
}
