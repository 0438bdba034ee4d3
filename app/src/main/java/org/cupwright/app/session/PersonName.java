package org.cupwright.app.session;

import java.text.Normalizer;
import org.cupwright.app.storage.NameKey;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Argument;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;

/** A name as it may stand beside entries and on paper. */
public final class PersonName {
    /** Our choice: what fits beside an entry. */
    public static final int LONGEST = 60;

    private PersonName() {}

    /**
     * The name without spaces around it and with single ones within.
     *
     * @throws org.cupwright.message.Problem if it is none: nothing to be seen, too long, or with characters that are
     *     not seen or turn round what stands beside them
     */
    public static String of(String said) {
        String name = Normalizer.normalize(said, Normalizer.Form.NFC)
                .replaceAll("\\p{Zs}+", " ")
                .strip();
        if (!NameKey.isSeen(name)) {
            throw none("nameUnseen");
        }
        if (name.codePoints().noneMatch(Character::isLetterOrDigit)) {
            throw none("nameEmpty");
        }
        if (name.codePointCount(0, name.length()) > LONGEST) {
            throw none("nameLong", new Count(LONGEST));
        }
        return name;
    }

    private static Problem none(String why, Argument... about) {
        return Problem.of(
                Message.of("people.problem." + why, about), "name", "", Message.of("people.try." + why, about));
    }
}
