package org.cupwright.app.texts;

import java.util.Locale;

/** Which way people come in: the same is said to all of them, and each door has words of its own for how to ask. */
public enum Door {
    /** The command line: fields are options. */
    COMMANDS,
    /** Pages in a browser: fields stand on a form under plain words. */
    PAGES,
    /** Other programs: fields are places in a JSON document. */
    API;

    /** The file with this door's own wordings of a language, which need not exist. */
    String file(String language) {
        return "messages_" + language + "." + name().toLowerCase(Locale.ROOT) + ".properties";
    }
}
