package org.cupwright.app.storage;

import java.text.Normalizer;
import java.util.Locale;

/** By what names of people are compared. */
public final class NameKey {
    private NameKey() {}

    /** A name without capitals, joiners and further spaces, in one spelling of its letters. */
    public static String of(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC)
                .replaceAll("[\\u200C\\u200D]", "")
                .replaceAll("\\p{Zs}+", " ")
                .strip()
                .toUpperCase(Locale.ROOT)
                .toLowerCase(Locale.ROOT);
    }
}
