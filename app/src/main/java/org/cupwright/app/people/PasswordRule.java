package org.cupwright.app.people;

import java.util.Locale;
import java.util.Set;
import org.cupwright.app.storage.NameKey;
import org.cupwright.message.Message.Count;

/**
 * Which passwords are taken: long ones that are not the first to be tried. Nothing is asked of their characters (NIST
 * SP 800-63B advises against it, recalled).
 */
final class PasswordRule {
    /** Our choice. */
    static final int SHORTEST = 10;
    /** Our choice; enough for a sentence. */
    static final int LONGEST = 128;

    private static final int FEWEST_DIFFERENT = 4;

    /** The commonest of ten characters and more, as in lists of leaked ones (recalled), and the trade's (ours). */
    private static final Set<String> COMMONEST = Set.of(
            "1234567890",
            "0123456789",
            "12345678910",
            "123456789a",
            "a123456789",
            "0987654321",
            "1q2w3e4r5t",
            "1qaz2wsx3edc",
            "qwertyuiop",
            "qwerty12345",
            "qwerty123456",
            "qwerty1234",
            "qwertyuiop123",
            "q1w2e3r4t5",
            "q1w2e3r4t5y6",
            "asdfghjkl1",
            "asdfghjkl123",
            "zaq12wsxcde3",
            "password12",
            "password123",
            "password1234",
            "password12345",
            "passw0rd123",
            "p@ssw0rd123",
            "p@ssword123",
            "mypassword",
            "mypassword1",
            "changeme123",
            "letmein123",
            "letmein1234",
            "welcome123",
            "welcome1234",
            "administrator",
            "admin12345",
            "admin123456",
            "iloveyou123",
            "iloveyou12",
            "sunshine123",
            "princess123",
            "football123",
            "baseball123",
            "superman123",
            "basketball",
            "unbelievable",
            "contraseña",
            "contrasena",
            "contraseña1",
            "contrasena1",
            "contraseña123",
            "contrasena123",
            "passwort123",
            "motdepasse",
            "abcdefghij",
            "abcdefghijk",
            "abcd123456",
            "abc1234567",
            "abc123456789",
            "superintendent",
            "greenkeeper",
            "greenkeeper1",
            "headgreenkeeper",
            "golfcourse",
            "golfcourse1",
            "golfclub123",
            "holechanger",
            "holelocation",
            "cupwright1",
            "cupwright12",
            "cupwright123");

    private PasswordRule() {}

    /** @throws org.cupwright.message.Problem if the password is none for somebody of that name */
    static void check(String password, String name) {
        int characters = password.codePointCount(0, password.length());
        if (characters < SHORTEST) {
            throw PeopleProblems.of("passwordShort", "password", new Count(SHORTEST));
        }
        if (characters > LONGEST) {
            throw PeopleProblems.of("passwordLong", "password", new Count(LONGEST));
        }
        if (NameKey.of(password.strip()).equals(NameKey.of(name))) {
            throw PeopleProblems.of("passwordIsName", "password");
        }
        boolean monotonous = password.codePoints().distinct().count() < FEWEST_DIFFERENT;
        if (monotonous || COMMONEST.contains(password.strip().toLowerCase(Locale.ROOT))) {
            throw PeopleProblems.of("passwordCommon", "password");
        }
    }
}
