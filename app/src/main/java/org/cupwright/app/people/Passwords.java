package org.cupwright.app.people;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.SecureRandom;
import java.text.Normalizer;
import java.util.Base64;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import org.springframework.security.crypto.bcrypt.BCrypt;

/**
 * What is kept of passwords: bcrypt of them.
 *
 * <p>Bcrypt reads 72 bytes and passes over the rest. So that every character of a long password counts, what it gets is
 * HMAC-SHA-256 of the password in base 64, 44 bytes without a zero among them. The key of the HMAC is no secret: it
 * keeps sums of other programs' leaks from being tried as they are.
 */
public final class Passwords {
    /** Rounds as a power of two: a third of a second or so of a processor (our choice; 10 is the least, recalled). */
    static final int COST = 12;

    private static final String KIND = "bcrypt1:";
    private static final byte[] KEY = "cupwright password 1".getBytes(StandardCharsets.UTF_8);
    private static final String HMAC = "HmacSHA256";
    private static final int BYTES_OF_NOBODYS = 32;

    private final SecureRandom random;
    private final int cost;
    private final String nobodys;

    public Passwords(SecureRandom random) {
        this(random, COST);
    }

    /** @param cost rounds as a power of two, 4 to 31 */
    public Passwords(SecureRandom random, int cost) {
        this.random = random;
        this.cost = cost;
        byte[] unknown = new byte[BYTES_OF_NOBODYS];
        random.nextBytes(unknown);
        this.nobodys = hash(Base64.getEncoder().encodeToString(unknown));
    }

    /** What is kept of a password. */
    String hash(String password) {
        return KIND + BCrypt.hashpw(digest(password), BCrypt.gensalt("$2b", cost, random));
    }

    /** Whether a password is the one of which something is kept. Takes as long where nothing is: empty. */
    boolean matches(String password, String kept) {
        boolean known = kept.startsWith(KIND);
        boolean same = BCrypt.checkpw(digest(password), (known ? kept : nobodys).substring(KIND.length()));
        return known && same;
    }

    /** Letters that look the same are the same, however a keyboard makes them. */
    private static String digest(String password) {
        try {
            Mac mac = Mac.getInstance(HMAC);
            mac.init(new SecretKeySpec(KEY, HMAC));
            byte[] bytes = Normalizer.normalize(password, Normalizer.Form.NFKC).getBytes(StandardCharsets.UTF_8);
            return Base64.getEncoder().encodeToString(mac.doFinal(bytes));
        } catch (GeneralSecurityException missing) {
            throw new IllegalStateException("every Java platform has " + HMAC, missing);
        }
    }
}
