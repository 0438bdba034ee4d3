package org.cupwright.app.cli.command;

import java.io.ByteArrayOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Lets text through without control characters, but for ends of lines and tabs. What files and people wrote is printed,
 * and must not move about on a terminal, hide lines or change its settings.
 */
final class WithoutControls extends FilterOutputStream {
    private static final int DELETE = 0x7F;

    /** In UTF-8 the controls from U+0080 to U+009F are this and a byte from 0x80 to 0x9F. */
    private static final int LEADS = 0xC2;

    private static final int FIRST_OF_C1 = 0x80;
    private static final int LAST_OF_C1 = 0x9F;

    private boolean led;

    private WithoutControls(OutputStream out) {
        super(out);
    }

    static PrintStream of(PrintStream out) {
        return new PrintStream(new WithoutControls(out), true, StandardCharsets.UTF_8);
    }

    @Override
    public void write(int value) throws IOException {
        write(new byte[] {(byte) value}, 0, 1);
    }

    /** In one piece: each piece is a call of the system's. */
    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        ByteArrayOutputStream seen = new ByteArrayOutputStream(count + 1);
        for (int i = from; i < from + count; i++) {
            take(bytes[i] & 0xFF, seen);
        }
        seen.writeTo(out);
    }

    private void take(int sign, ByteArrayOutputStream seen) {
        if (led) {
            led = false;
            if (sign >= FIRST_OF_C1 && sign <= LAST_OF_C1) {
                return;
            }
            seen.write(LEADS);
        }
        if (sign == LEADS) {
            led = true;
        } else if (sign == '\n' || sign == '\r' || sign == '\t' || sign >= ' ' && sign != DELETE) {
            seen.write(sign);
        }
    }
}
