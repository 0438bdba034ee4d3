package org.cupwright.app.people;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.app.storage.Sha256;

/**
 * What a phone shows to be known again: which one it is, and a secret of 256 bits, of which a sum is kept.
 *
 * @param phone which one
 * @param secret known to the phone alone
 */
record PhoneToken(UUID phone, String secret) {
    private static final int BYTES = 32;

    private static final Pattern SHOWN =
            Pattern.compile("([0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12})\\.([\\w-]{43})");

    static PhoneToken make(UUID phone, SecureRandom random) {
        byte[] secret = new byte[BYTES];
        random.nextBytes(secret);
        return new PhoneToken(phone, Base64.getUrlEncoder().withoutPadding().encodeToString(secret));
    }

    /** Empty where what is shown is none. */
    static Optional<PhoneToken> read(String shown) {
        Matcher parts = SHOWN.matcher(shown);
        return parts.matches()
                ? Optional.of(new PhoneToken(UUID.fromString(parts.group(1)), parts.group(2)))
                : Optional.empty();
    }

    String shown() {
        return phone + "." + secret;
    }

    String hash() {
        byte[] sum = Sha256.digest().digest(("cupwright phone 1 " + secret).getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().formatHex(sum);
    }

    /** Without the secret. */
    @Override
    public String toString() {
        return "PhoneToken[" + phone + "]";
    }
}
