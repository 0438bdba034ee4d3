package org.cupwright.app.storage;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/** By what names of people are compared, and whether all of them is to be seen. */
public final class NameKey {
    private static final int NON_JOINER = 0x200C;
    private static final int JOINER = 0x200D;
    private static final Set<Byte> UNSEEN = Set.of(
            Character.CONTROL,
            Character.FORMAT,
            Character.LINE_SEPARATOR,
            Character.PARAGRAPH_SEPARATOR,
            Character.PRIVATE_USE,
            Character.SURROGATE,
            Character.UNASSIGNED);

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

    /** Whether no character of a name is hidden or turns round what stands beside it. */
    public static boolean isSeen(String name) {
        return name.codePoints().allMatch(NameKey::seen);
    }

    /** Letters of some languages are joined and parted by characters that are not seen themselves. */
    private static boolean seen(int character) {
        return character == JOINER || character == NON_JOINER || !UNSEEN.contains((byte) Character.getType(character));
    }
}
