package org.cupwright.app.desk.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** The first sign of a file that is not blank, by which its kind is told. */
public final class FirstSign {
    /** How far into a file it is looked for: our choice. */
    private static final int LOOK_BYTES = 2048;

    private FirstSign() {}

    /** Whether it is one of some signs; the stream stands at its beginning afterwards. */
    public static boolean isOneOf(String signs, InputStream in) throws IOException {
        in.mark(2 * LOOK_BYTES);
        String start = new String(in.readNBytes(LOOK_BYTES), StandardCharsets.UTF_8);
        in.reset();
        String first = start.replace("\uFEFF", "").stripLeading();
        return !first.isEmpty() && signs.indexOf(first.charAt(0)) >= 0;
    }
}
