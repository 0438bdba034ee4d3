package org.cupwright.app.people;

import java.text.Normalizer;
import java.util.Set;
import org.cupwright.message.Message.Count;

/** A name as it may stand beside entries and on paper. */
final class PersonName {
    /** Our choice: what fits beside an entry. */
    static final int LONGEST = 60;

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

    private PersonName() {}

    /**
     * The name without spaces around it and with single ones within.
     *
     * @throws org.cupwright.message.Problem if it is none: nothing to be seen, too long, or with characters that are
     *     not seen or turn round what stands beside them
     */
    static String of(String said) {
        String name = Normalizer.normalize(said, Normalizer.Form.NFC)
                .replaceAll("\\p{Zs}+", " ")
                .strip();
        if (!name.codePoints().allMatch(PersonName::isSeen)) {
            throw PeopleProblems.of("nameUnseen", "name");
        }
        if (name.codePoints().noneMatch(Character::isLetterOrDigit)) {
            throw PeopleProblems.of("nameEmpty", "name");
        }
        if (name.codePointCount(0, name.length()) > LONGEST) {
            throw PeopleProblems.of("nameLong", "name", new Count(LONGEST));
        }
        return name;
    }

    /** Letters of some languages are joined and parted by characters that are not seen themselves. */
    private static boolean isSeen(int character) {
        return character == JOINER || character == NON_JOINER || !UNSEEN.contains((byte) Character.getType(character));
    }
}
