package org.cupwright.app.people;

import java.text.Normalizer;
import org.cupwright.app.storage.NameKey;
import org.cupwright.message.Message.Count;

/** A name as it may stand beside entries and on paper. */
final class PersonName {
    /** Our choice: what fits beside an entry. */
    static final int LONGEST = 60;

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
        if (!NameKey.isSeen(name)) {
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
}
