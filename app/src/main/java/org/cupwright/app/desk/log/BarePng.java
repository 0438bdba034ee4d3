package org.cupwright.app.desk.log;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * The picture of a PNG file and nothing besides. Its chunks (W3C, Portable Network Graphics) are written anew: those
 * that a picture is drawn from, and how the camera was held as the one note; texts, Exif, times, colour profiles and
 * what nobody knows are left off, and so is what follows the picture's end.
 */
final class BarePng {
    private static final byte[] START = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final String HEAD = "IHDR";
    private static final String DATA = "IDAT";
    private static final String END = "IEND";
    private static final String EXIF = "eXIf";
    private static final Set<String> DRAWN = Set.of("PLTE", "tRNS", "gAMA", "cHRM", "sRGB", DATA);
    /** Length and name before what a chunk says, a sum behind it. */
    private static final int BEFORE = 8;

    private static final int AROUND = 12;

    private final byte[] bytes;
    private final ByteArrayOutputStream picture = new ByteArrayOutputStream();
    private byte[] head = new byte[0];
    private int orientation = Orientation.UPRIGHT;
    private boolean drawn;

    private BarePng(byte[] bytes) {
        this.bytes = bytes;
    }

    static boolean begins(byte[] bytes) {
        return bytes.length > START.length && Arrays.equals(bytes, 0, START.length, START, 0, START.length);
    }

    /** The picture; nothing where there is none. A picture that breaks off ends there. */
    static Optional<byte[]> of(byte[] bytes) {
        BarePng png = new BarePng(bytes);
        png.read();
        return png.head.length > 0 && png.drawn ? Optional.of(png.put()) : Optional.empty();
    }

    private void read() {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        for (int at = START.length; at <= bytes.length - AROUND; ) {
            long length = Integer.toUnsignedLong(in.getInt(at));
            String name = new String(bytes, at + Integer.BYTES, Integer.BYTES, StandardCharsets.US_ASCII);
            if (length > bytes.length - AROUND - at || name.equals(END)) {
                return;
            }
            taken(name, Arrays.copyOfRange(bytes, at + BEFORE, at + BEFORE + (int) length));
            at += AROUND + (int) length;
        }
    }

    private void taken(String name, byte[] said) {
        if (name.equals(HEAD)) {
            head = said;
        } else if (name.equals(EXIF)) {
            orientation = Orientation.in(said);
        } else if (DRAWN.contains(name)) {
            drawn |= name.equals(DATA);
            write(picture, name, said);
        }
    }

    private byte[] put() {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(START);
        write(all, HEAD, head);
        if (orientation != Orientation.UPRIGHT) {
            write(all, EXIF, Orientation.alone(orientation));
        }
        all.writeBytes(picture.toByteArray());
        write(all, END, new byte[0]);
        return all.toByteArray();
    }

    private static void write(ByteArrayOutputStream out, String name, byte[] said) {
        byte[] named = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 sum = new CRC32();
        sum.update(named);
        sum.update(said);
        out.writeBytes(ByteBuffer.allocate(Integer.BYTES).putInt(said.length).array());
        out.writeBytes(named);
        out.writeBytes(said);
        out.writeBytes(
                ByteBuffer.allocate(Integer.BYTES).putInt((int) sum.getValue()).array());
    }
}
