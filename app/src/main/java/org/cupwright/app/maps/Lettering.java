package org.cupwright.app.maps;

/**
 * How a text is written on a drawing.
 *
 * @param letters regular or semibold
 * @param size in drawing units
 * @param anchor which part of it stands at its place
 */
record Lettering(OpenSans letters, double size, Anchor anchor) {
    /** The part of a text that stands at its place. */
    enum Anchor {
        START,
        MIDDLE,
        END
    }

    static Lettering small(double size) {
        return new Lettering(OpenSans.REGULAR, size, Anchor.START);
    }

    Lettering anchored(Anchor other) {
        return new Lettering(letters, size, other);
    }

    Lettering semibold() {
        return new Lettering(OpenSans.SEMIBOLD, size, anchor);
    }

    double width(String text) {
        return letters.width(text, size);
    }
}
