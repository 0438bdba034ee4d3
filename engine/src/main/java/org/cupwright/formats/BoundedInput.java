package org.cupwright.formats;

import java.io.BufferedReader;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PushbackInputStream;
import java.nio.charset.StandardCharsets;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;

/**
 * A stream that ends in a clear failure once it has given more bytes than a survey of this kind can have.
 *
 * <p>Files come from outside: the bound holds whatever the file says of its own size.
 */
public final class BoundedInput extends FilterInputStream {
    private static final int BYTE_ORDER_MARK_LENGTH = 3;

    private final long maxBytes;
    private long left;

    public BoundedInput(InputStream in, long maxBytes) {
        super(in);
        this.maxBytes = maxBytes;
        this.left = maxBytes;
    }

    /** A reader of UTF-8 text over at most so many bytes; a byte order mark is skipped. */
    public static BufferedReader text(InputStream in, long maxBytes) throws IOException {
        return new BufferedReader(new InputStreamReader(withoutMark(in, maxBytes), StandardCharsets.UTF_8));
    }

    /** The bounded stream without the byte order mark that some programs write first. */
    public static InputStream withoutMark(InputStream in, long maxBytes) throws IOException {
        PushbackInputStream start = new PushbackInputStream(new BoundedInput(in, maxBytes), BYTE_ORDER_MARK_LENGTH);
        byte[] first = start.readNBytes(BYTE_ORDER_MARK_LENGTH);
        boolean marked = first.length == BYTE_ORDER_MARK_LENGTH
                && (first[0] & 0xFF) == 0xEF
                && (first[1] & 0xFF) == 0xBB
                && (first[2] & 0xFF) == 0xBF;
        if (!marked) {
            start.unread(first);
        }
        return start;
    }

    @Override
    public int read() throws IOException {
        int value = super.read();
        if (value >= 0) {
            count(1);
        }
        return value;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int got = super.read(buffer, offset, length);
        if (got > 0) {
            count(got);
        }
        return got;
    }

    @Override
    public long skip(long bytes) throws IOException {
        long skipped = super.skip(bytes);
        count(skipped);
        return skipped;
    }

    /** Going back would undo the count. */
    @Override
    public boolean markSupported() {
        return false;
    }

    private void count(long bytes) {
        left -= bytes;
        if (left < 0) {
            throw Finding.of(FindingKind.FILE_TOO_LARGE, Where.file(), maxBytes).failure();
        }
    }
}
