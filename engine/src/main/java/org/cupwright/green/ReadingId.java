package org.cupwright.green;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;

/**
 * What a level reading is called: eight hex letters that follow from its hole, place, falls, person and day.
 *
 * <p>It is not kept with the reading, so readings of any age have one, and it stays theirs whatever comes and goes
 * around them.
 */
public final class ReadingId {
    private static final int BYTES = 4;

    private ReadingId() {}

    public static String of(String hole, LevelReading reading) {
        String canonical = String.join(
                "\n",
                hole,
                exact(reading.place().east()),
                exact(reading.place().north()),
                exact(reading.gradientEast()),
                exact(reading.gradientNorth()),
                reading.person().orElse(""),
                reading.readOn().map(LocalDate::toString).orElse(""));
        return HexFormat.of().formatHex(sha256(canonical), 0, BYTES);
    }

    /** Every bit of a number in a form that no version of Java writes otherwise. */
    private static String exact(double number) {
        return Double.toHexString(number);
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
