package org.cupwright.app.desk.log;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.Photo;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;

/** Reads photos that people hand in. */
public final class PhotoReading {
    /** A phone's photo has 2 to 12 MB (our choice of bound). */
    static final int MOST_BYTES = 20_000_000;

    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};

    private PhotoReading() {}

    /**
     * Reads a photo that a person hands in.
     *
     * @throws Problem when it is neither JPEG nor PNG by its content, whatever its name says, or too big
     */
    public static Photo read(SourceFile file) {
        byte[] bytes = FileReading.read(file, in -> in.readNBytes(MOST_BYTES + 1));
        if (bytes.length > MOST_BYTES) {
            throw problem("tooBig", file, new Count(MOST_BYTES / 1_000_000));
        }
        if (format(bytes).filter(format -> hasSize(bytes, format)).isEmpty()) {
            throw problem("noPhoto", file, new Count(MOST_BYTES / 1_000_000));
        }
        return Photo.kept(bytes);
    }

    private static Optional<String> format(byte[] bytes) {
        if (begins(bytes, JPEG)) {
            return Optional.of("jpeg");
        }
        return begins(bytes, PNG) ? Optional.of("png") : Optional.empty();
    }

    private static boolean begins(byte[] bytes, byte[] with) {
        return bytes.length > with.length && Arrays.equals(bytes, 0, with.length, with, 0, with.length);
    }

    /** Whether the picture can be opened so far that it says how wide and high it is. */
    private static boolean hasSize(byte[] bytes, String format) {
        Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format);
        ImageReader reader = readers.next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in);
            return reader.getWidth(0) > 0 && reader.getHeight(0) > 0;
        } catch (IOException | IllegalArgumentException broken) {
            return false; // a beginning without a picture behind it; the caller says so
        } finally {
            reader.dispose();
        }
    }

    private static Problem problem(String kind, SourceFile file, Message.Argument argument) {
        return Problem.of(
                Message.of("problem.photo." + kind, argument), "photo", file.name(), Message.of("try.photo." + kind));
    }
}
