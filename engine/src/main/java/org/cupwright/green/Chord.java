package org.cupwright.green;

/**
 * A straight piece of ground across a green from edge to edge, on an axis of the green's own frame.
 *
 * @param start the axis' value where the piece begins, m
 * @param end the axis' value where it ends, m; not less than {@code start}
 */
record Chord(double start, double end) {
    double length() {
        return end - start;
    }

    /** Distance from the start, kept within the piece: rounding must not put a point of the edge in front of it. */
    double fromStart(double at) {
        return Math.min(length(), Math.max(0, at - start));
    }

    /** How far a value lies outside the piece; 0 within. */
    double outside(double at) {
        return Math.max(0, Math.max(start - at, at - end));
    }

    /** In which third of the piece a value lies: 0, 1 or 2; the middle third owns both its borders. */
    int third(double at) {
        if (3 * (at - start) < length()) {
            return 0;
        }
        return 3 * (end - at) < length() ? 2 : 1;
    }
}
