package org.cupwright.formats;

/** A short, printable piece of what a file says, to show in a finding. */
public final class Excerpt {
    private static final int LONGEST = 60;

    private Excerpt() {}

    /** At most 60 characters, control characters shown as dots. */
    public static String of(String text) {
        String clean = text.strip().replaceAll("\\p{Cntrl}", "·");
        return clean.length() <= LONGEST ? clean : clean.substring(0, LONGEST - 1) + "…";
    }
}
