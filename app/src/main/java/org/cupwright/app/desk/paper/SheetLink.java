package org.cupwright.app.desk.paper;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.policy.SettingType;

/**
 * Under which address everybody finds a course's sheet of today: a link that nobody guesses, below the address under
 * which readers find the office.
 */
public final class SheetLink {
    /** Where all links lead; each has one part more. */
    public static final String BELOW = "/sheet/";

    /** Small letters and digits none of which is taken for another, since some type it from paper: our choice. */
    private static final String SIGNS = "23456789abcdefghjkmnpqrstuvwxyz";

    /** Of 31 signs, 99 bits: nobody comes upon it by trying. Our choice. */
    private static final int LENGTH = 20;

    private static final int LONGEST = 40;
    private static final Pattern LINK = Pattern.compile("[0-9A-Za-z_-]{" + LENGTH + "," + LONGEST + "}");

    /** So long that its code still fits on paper: our choice. */
    private static final int LONGEST_ADDRESS = 60;

    private static final Pattern ADDRESS = Pattern.compile("https?://[0-9A-Za-z.-]+(:[0-9]{1,5})?");

    private SheetLink() {}

    /** How a link is typed; nothing at all is none. */
    static SettingType<String> typed() {
        return type(LINK, LONGEST, "sheetLink");
    }

    /** How the office's address is typed, with a stroke at its end or without; nothing at all: nobody knows one. */
    static SettingType<String> typedAddress() {
        return type(ADDRESS, LONGEST_ADDRESS, "officeAddress");
    }

    private static SettingType<String> type(Pattern pattern, int longest, String kind) {
        return new SettingType<>(
                text -> Optional.of(text.strip().replaceFirst("/$", ""))
                        .filter(value -> value.isEmpty()
                                || value.length() <= longest
                                        && pattern.matcher(value).matches()),
                value -> value,
                Message.of("accepts." + kind));
    }

    /**
     * A new one.
     *
     * @param random 122 bits that nobody knows
     */
    public static String of(UUID random) {
        BigInteger left = new BigInteger(random.toString().replace("-", ""), 16);
        BigInteger signs = BigInteger.valueOf(SIGNS.length());
        StringBuilder link = new StringBuilder();
        for (int i = 0; i < LENGTH; i++) {
            link.append(SIGNS.charAt(left.mod(signs).intValue()));
            left = left.divide(signs);
        }
        return link.toString();
    }

    /** Where it is within the office; empty while the course gives nothing out, or has no link yet. */
    public static Optional<String> path(Policy policy) {
        return Optional.of(policy.get(PaperPolicy.SHEET_LINK))
                .filter(link -> !link.isEmpty() && policy.get(PaperPolicy.PUBLIC_SHEET))
                .map(link -> BELOW + link);
    }

    /** As it is printed; empty also where nobody has said under which address readers find the office. */
    public static Optional<String> address(Policy policy) {
        return Optional.of(policy.get(PaperPolicy.OFFICE_ADDRESS))
                .filter(office -> !office.isEmpty())
                .flatMap(office -> path(policy).map(path -> office + path));
    }

    /** Whether a link is this course's; how long it takes to tell says nothing of how much of it was right. */
    static boolean leads(String link, Policy policy) {
        byte[] asked = (BELOW + link).getBytes(StandardCharsets.UTF_8);
        return path(policy)
                .filter(path -> MessageDigest.isEqual(path.getBytes(StandardCharsets.UTF_8), asked))
                .isPresent();
    }
}
