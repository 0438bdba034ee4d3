package org.cupwright.app.office.today;

/** A paper of the day. */
enum PaperKind {
    CARD("changers-card"),
    SHEET("hole-locations");

    private final String file;

    PaperKind(String file) {
        this.file = file;
    }

    String file() {
        return file;
    }
}
