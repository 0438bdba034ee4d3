package org.cupwright.app.store;

import java.util.List;

/** What databases say each in its own way. All else that the stores say is SQL that every one of them takes. */
public interface Dialect {
    /** Ends an insertion: a row is left out, and nothing is wrong, where the unique column has its value already. */
    String unlessThere(String uniqueColumn);

    /** The text at the end of a path of properties in a column of JSON; null where there is none. */
    String textIn(String column, String... path);

    /** A table of the texts of one argument, which is {@link #argument} of them; they are its column {@code value}. */
    String eachText(String tableName);

    /** Texts as one argument of {@link #eachText}. */
    Object argument(List<String> texts);

    /** Joins a table to the one before it, which is read first: it is the smaller one by far. */
    String joinAfter();

    /** A column, so that the database does not look for its value by an index: another one narrows it down more. */
    String passingIndex(String column);
}
