package org.cupwright.app.people;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Locale;
import org.cupwright.app.storage.Sha256;

/**
 * A code to be read and typed by people: four groups of four, of letters and digits none of which is taken for another.
 * Sixteen of 31 characters are 79 bits: there is nothing to be gained from trying, with the sum or without.
 */
final class OneTimeCode {
    /** So long a code counts (our choice). */
    static final Duration VALID = Duration.ofHours(24);

    /** Without 0 and O, 1, I and L. */
    private static final String ALPHABET = "23456789ABCDEFGHJKMNPQRSTUVWXYZ";

    private static final int GROUP = 4;
    private static final int GROUPS = 4;

    private OneTimeCode() {}

    static String make(SecureRandom random) {
        StringBuilder code = new StringBuilder();
        for (int i = 0; i < GROUP * GROUPS; i++) {
            code.append(i > 0 && i % GROUP == 0 ? "-" : "");
            code.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return code.toString();
    }

    /** What is kept of a code, however it is typed: small letters, other signs between the groups or none. */
    static String hash(String typed) {
        String plain = typed.toUpperCase(Locale.ROOT).replaceAll("[^0-9A-Z]", "");
        byte[] sum = Sha256.digest().digest(("cupwright code 1 " + plain).getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(sum);
    }
}
