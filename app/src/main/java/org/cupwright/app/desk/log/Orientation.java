package org.cupwright.app.desk.log;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held, which is all of its notes that is needed to show a photo upright: tag 274 of TIFF 6.0, in
 * which Exif writes them.
 */
final class Orientation {
    static final int UPRIGHT = 1;
    private static final int LAST = 8;
    private static final int TAG = 274;
    private static final int SHORT = 3;
    private static final int FORTY_TWO = 42;
    private static final int HEADER = 8;
    private static final int ENTRY = 12;

    private Orientation() {}

    /** 1 to 8 as TIFF counts them; upright where the notes do not say, or cannot be read. */
    static int in(byte[] notes) {
        if (notes.length < HEADER) {
            return UPRIGHT;
        }
        ByteBuffer tiff = ByteBuffer.wrap(notes);
        tiff.order(notes[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        long directory = Integer.toUnsignedLong(tiff.getInt(Integer.BYTES));
        if (tiff.getShort(Short.BYTES) != FORTY_TWO || directory + Short.BYTES > notes.length) {
            return UPRIGHT;
        }
        int first = (int) directory + Short.BYTES;
        int entries = Short.toUnsignedInt(tiff.getShort((int) directory));
        for (int at = first; at + ENTRY <= notes.length && at < first + entries * ENTRY; at += ENTRY) {
            if (Short.toUnsignedInt(tiff.getShort(at)) == TAG && tiff.getShort(at + Short.BYTES) == SHORT) {
                return known(Short.toUnsignedInt(tiff.getShort(at + HEADER)));
            }
        }
        return UPRIGHT;
    }

    private static int known(int said) {
        return said > UPRIGHT && said <= LAST ? said : UPRIGHT;
    }

    /** Notes that say this alone. */
    static byte[] alone(int orientation) {
        return ByteBuffer.allocate(HEADER + Short.BYTES + ENTRY + Integer.BYTES)
                .put(new byte[] {'M', 'M'})
                .putShort((short) FORTY_TWO)
                .putInt(HEADER)
                .putShort((short) 1)
                .putShort((short) TAG)
                .putShort((short) SHORT)
                .putInt(1)
                .putShort((short) orientation)
                .array(); // padding of the value, and that no directory follows: zeros
    }
}
