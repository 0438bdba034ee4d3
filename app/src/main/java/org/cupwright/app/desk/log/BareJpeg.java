package org.cupwright.app.desk.log;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.Optional;

/**
 * The picture of a JPEG file and nothing besides. Its segments (ITU-T T.81, table B.1) are written anew: those that a
 * picture is drawn from as they are, how the camera was held as the one note, all others (Exif, XMP, comments, colour
 * profiles, small and further pictures) not at all. What follows the picture's end is left off.
 */
final class BareJpeg {
    private static final int MARK = 0xff;
    private static final int END = 0xd9;
    private static final int SCAN = 0xda;
    private static final int TABLES_OF_CODES = 0xc4;
    private static final int TABLES_OF_STEPS = 0xdb;
    private static final int RESTARTS = 0xdd;
    private static final int JFIF = 0xe0;
    private static final int EXIF = 0xe1;
    private static final int ADOBE = 0xee;
    private static final byte[] START = {(byte) MARK, (byte) 0xd8};
    private static final byte[] EXIF_NAME = {'E', 'x', 'i', 'f', 0, 0};
    private static final byte[] JFIF_NAME = {'J', 'F', 'I', 'F', 0};
    private static final byte[] ADOBE_NAME = {'A', 'd', 'o', 'b', 'e'};
    /** What stands before a small picture, and two zeros in the place of its width and height. */
    private static final int JFIF_BYTES = 14;

    private static final int JFIF_SAYS = 12;
    private static final int ADOBE_BYTES = 12;

    private final byte[] bytes;
    private final ByteArrayOutputStream picture = new ByteArrayOutputStream();
    private byte[] jfif = new byte[0];
    private int orientation = Orientation.UPRIGHT;
    private boolean framed;
    private boolean drawn;
    private int at = START.length;

    private BareJpeg(byte[] bytes) {
        this.bytes = bytes;
    }

    static boolean begins(byte[] bytes) {
        return bytes.length > START.length
                && Arrays.equals(bytes, 0, START.length, START, 0, START.length)
                && bytes[START.length] == (byte) MARK;
    }

    /** The picture; nothing where there is none that browsers show. A picture that breaks off ends there. */
    static Optional<byte[]> of(byte[] bytes) {
        BareJpeg jpeg = new BareJpeg(bytes);
        int marker = jpeg.marker();
        while (marker != END && jpeg.segment(marker)) {
            marker = jpeg.marker();
        }
        return jpeg.framed && jpeg.drawn ? Optional.of(jpeg.put()) : Optional.empty();
    }

    /** The next marker; the end where none follows. */
    private int marker() {
        while (at < bytes.length && (bytes[at] & MARK) != MARK) {
            at++;
        }
        while (at < bytes.length && (bytes[at] & MARK) == MARK) {
            at++;
        }
        return at < bytes.length ? bytes[at++] & MARK : END;
    }

    /** Takes the segment over or leaves it off; whether anything can follow. */
    private boolean segment(int marker) {
        if (marker <= 1 || marker >= 0xd0 && marker <= 0xd8) {
            return true; // stands alone
        }
        int length = at + 1 < bytes.length ? (bytes[at] & MARK) << Byte.SIZE | bytes[at + 1] & MARK : 0;
        if (length < Short.BYTES || at + length > bytes.length) {
            return false;
        }
        byte[] said = Arrays.copyOfRange(bytes, at + Short.BYTES, at + length);
        at += length;
        return taken(marker, said);
    }

    private boolean taken(int marker, byte[] said) {
        switch (marker) {
            case TABLES_OF_CODES, TABLES_OF_STEPS, RESTARTS -> write(picture, marker, said);
            case 0xc0, 0xc1, 0xc2 -> { // what browsers draw: baseline, extended, progressive
                framed = true;
                write(picture, marker, said);
            }
            case SCAN -> {
                drawn = true;
                write(picture, marker, said);
                scan();
            }
            case JFIF -> jfif(said);
            case EXIF -> exif(said);
            case ADOBE -> adobe(said);
            default -> {
                return marker > 0xcf; // other frames are drawn nowhere, and are no notes either
            }
        }
        return true;
    }

    private void jfif(byte[] said) {
        if (begins(said, JFIF_NAME) && said.length >= JFIF_BYTES) {
            jfif = Arrays.copyOf(Arrays.copyOf(said, JFIF_SAYS), JFIF_BYTES);
        }
    }

    private void exif(byte[] said) {
        if (begins(said, EXIF_NAME)) {
            orientation = Orientation.in(Arrays.copyOfRange(said, EXIF_NAME.length, said.length));
        }
    }

    /** Says how the colours are written. */
    private void adobe(byte[] said) {
        if (begins(said, ADOBE_NAME) && said.length >= ADOBE_BYTES) {
            write(picture, ADOBE, Arrays.copyOf(said, ADOBE_BYTES));
        }
    }

    /** What is drawn, up to the next marker that stands for something else. */
    private void scan() {
        int from = at;
        while (at < bytes.length && !(isMark(at) && at + 1 < bytes.length && isOther(bytes[at + 1] & MARK))) {
            at++;
        }
        picture.write(bytes, from, at - from);
    }

    private boolean isMark(int place) {
        return (bytes[place] & MARK) == MARK;
    }

    /** Neither a byte of the picture, nor a restart. */
    private static boolean isOther(int after) {
        return after != 0 && !(after >= 0xd0 && after <= 0xd7);
    }

    private byte[] put() {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(START);
        if (jfif.length > 0) {
            write(all, JFIF, jfif);
        }
        if (orientation != Orientation.UPRIGHT) {
            byte[] alone = Orientation.alone(orientation);
            byte[] said = Arrays.copyOf(EXIF_NAME, EXIF_NAME.length + alone.length);
            System.arraycopy(alone, 0, said, EXIF_NAME.length, alone.length);
            write(all, EXIF, said);
        }
        all.writeBytes(picture.toByteArray());
        all.writeBytes(new byte[] {(byte) MARK, (byte) END});
        return all.toByteArray();
    }

    private static void write(ByteArrayOutputStream out, int marker, byte[] said) {
        int length = said.length + Short.BYTES;
        out.writeBytes(new byte[] {(byte) MARK, (byte) marker, (byte) (length >> Byte.SIZE), (byte) length});
        out.writeBytes(said);
    }

    private static boolean begins(byte[] said, byte[] name) {
        return said.length >= name.length && Arrays.equals(said, 0, name.length, name, 0, name.length);
    }
}
