package org.cupwright.app.desk.log;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.Photo;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Problem;

/** Reads photos that people hand in. What the camera wrote beside the picture, such as where it stood, is left off. */
public final class PhotoReading {
    /** A phone's photo has 2 to 12 MB (our choice of bound). */
    static final int MOST_BYTES = 20_000_000;

    /** A phone's photo has 12 to 50 million; few bytes can say very many, which is much work to show. Our choice. */
    static final int MOST_PIXELS = 100_000_000;

    private static final int MILLION = 1_000_000;

    private PhotoReading() {}

    /**
     * Reads a photo that a person hands in.
     *
     * @throws Problem when it is neither JPEG nor PNG by its content, whatever its name says, or too big
     */
    public static Photo read(SourceFile file) {
        byte[] bytes = FileReading.read(file, in -> in.readNBytes(MOST_BYTES + 1));
        if (bytes.length > MOST_BYTES) {
            throw problem("tooBig", file, MOST_BYTES);
        }
        byte[] bare = bare(bytes).orElseThrow(() -> problem("noPhoto", file, MOST_BYTES));
        long pixels = pixels(bare);
        if (pixels == 0) {
            throw problem("noPhoto", file, MOST_BYTES);
        }
        if (pixels > MOST_PIXELS) {
            throw problem("tooManyPixels", file, MOST_PIXELS);
        }
        return Photo.kept(bare);
    }

    /** A photo as it is given out: one that an earlier program kept as it came, without what is not the picture. */
    public static Optional<Photo> bare(Photo kept) {
        return bare(kept.bytes()).map(Photo::kept);
    }

    private static Optional<byte[]> bare(byte[] bytes) {
        if (BareJpeg.begins(bytes)) {
            return BareJpeg.of(bytes);
        }
        return BarePng.begins(bytes) ? BarePng.of(bytes) : Optional.empty();
    }

    /** Of a picture that can be opened so far that it says how wide and high it is; of others 0. */
    private static long pixels(byte[] bytes) {
        String format = BareJpeg.begins(bytes) ? "jpeg" : "png";
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in);
            return (long) reader.getWidth(0) * reader.getHeight(0);
        } catch (IOException | IllegalArgumentException broken) {
            return 0; // a beginning without a picture behind it; the caller says so
        } finally {
            reader.dispose();
        }
    }

    private static Problem problem(String kind, SourceFile file, int most) {
        return Problem.of(
                Message.of("problem.photo." + kind, new Count(most / MILLION)),
                "photo",
                file.name(),
                Message.of("try.photo." + kind));
    }
}
