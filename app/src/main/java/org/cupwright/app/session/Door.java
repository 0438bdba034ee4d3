package org.cupwright.app.session;

/** Through which door a request came in; each words what it says of a request's fields in its own way. */
public enum Door {
    /** The command line: fields are options. */
    COMMANDS,
    /** Pages in a browser: fields are labels. */
    PAGES,
    /** Programs: fields are JSON pointers. */
    API
}
