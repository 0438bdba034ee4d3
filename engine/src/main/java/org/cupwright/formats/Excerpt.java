package org.cupwright.formats;

/** A short, printable piece of what a file says, to show in a finding. */
public final class Excerpt {
    private static final int LONGEST = 60;

    private Excerpt() {}

    /** At most 60 characters, control characters and those that turn the direction of writing shown as dots. */
    public static String of(String text) {
        String clean = text.strip().replaceAll("[\\p{Cc}\\p{Cf}]", "·");
        return clean.length() <= LONGEST ? clean : clean.substring(0, LONGEST - 1) + "…";
    }
}
