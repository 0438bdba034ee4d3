package org.cupwright.app.people;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import java.util.List;
import org.cupwright.app.session.PersonName;
import org.junit.jupiter.api.Test;

class PasswordsTest {
    private final Passwords passwords = new Passwords(new SecureRandom(), 4);

    @Test
    void theSamePasswordMatchesAndNoOther() {
        String kept = passwords.hash("three invented words");
        assertThat(kept).startsWith("bcrypt1:$2b$04$").doesNotContain("invented");
        assertThat(passwords.matches("three invented words", kept)).isTrue();
        assertThat(passwords.matches("three invented word", kept)).isFalse();
        assertThat(passwords.hash("three invented words")).isNotEqualTo(kept);
    }

    /** Bcrypt alone would pass over everything after the 72nd byte. */
    @Test
    void everyCharacterOfALongPasswordCounts() {
        String begin = "á".repeat(127);
        String kept = passwords.hash(begin + "b");
        assertThat(passwords.matches(begin + "b", kept)).isTrue();
        assertThat(passwords.matches(begin + "c", kept)).isFalse();
        assertThat(passwords.matches(begin, kept)).isFalse();
    }

    @Test
    void howAKeyboardMakesALetterDoesNotMatter() {
        assertThat(passwords.matches("cafe\u0301 invented", passwords.hash("caf\u00e9 invented")))
                .isTrue();
    }

    @Test
    void ofNobodyNothingMatches() {
        assertThat(passwords.matches("", "")).isFalse();
        assertThat(passwords.matches("three invented words", "")).isFalse();
    }

    @Test
    void shortLongCommonAndOnesOwnNameAreRefused() {
        CodesTest.refused("passwordShort", () -> PasswordRule.check("123456789", "Ida"));
        CodesTest.refused("passwordLong", () -> PasswordRule.check("ab cd".repeat(26), "Ida"));
        CodesTest.refused("passwordIsName", () -> PasswordRule.check("ida invented", "Ida Invented"));
        for (String common : List.of("PASSWORD123", "aaaaaaaaaaaa", "abababababab", " qwertyuiop ")) {
            CodesTest.refused("passwordCommon", () -> PasswordRule.check(common, "Ida"));
        }
        PasswordRule.check("four words and 7", "Ida");
        PasswordRule.check("x".repeat(60) + "abc" + "y".repeat(65), "Ida");
    }

    /** Characters are counted as people count them, not as a machine keeps them. */
    @Test
    void charactersBeyondTheFirstPlaneCountOnce() {
        CodesTest.refused("passwordShort", () -> PasswordRule.check("\uD83D\uDE00abcdefgh", "Ida"));
        PasswordRule.check("\uD83D\uDE00abcdefghi", "Ida");
    }

    @Test
    void namesAreSeen() {
        assertThat(PersonName.of("  José\u00a0 Ñandú-O’Brien 2 ")).isEqualTo("José Ñandú-O’Brien 2");
        assertThat(PersonName.of("ن\u200cا")).isEqualTo("ن\u200cا");
        for (String unseen : List.of("Ida\u202e", "I\nda", "Ida\u200b", "\ud800Ida", "Ida\ue000", "I\u2066da")) {
            CodesTest.refused("nameUnseen", () -> PersonName.of(unseen));
        }
        for (String empty : List.of("", "   ", "–", "\u200d")) {
            CodesTest.refused("nameEmpty", () -> PersonName.of(empty));
        }
        assertThat(PersonName.of("a".repeat(60))).hasSize(60);
        CodesTest.refused("nameLong", () -> PersonName.of("a".repeat(61)));
    }
}
