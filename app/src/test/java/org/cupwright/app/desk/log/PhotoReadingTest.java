package org.cupwright.app.desk.log;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageInputStream;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.Photo;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is left of a photo that is handed in: the picture, and which way up it is. */
class PhotoReadingTest {
    /** "Turned by a quarter" as TIFF 6.0 has it, written out by hand: one entry, tag 274, a short, the value 6. */
    private static final String TURNED =
            "4d4d002a00000008" + "0001" + "0112" + "0003" + "00000001" + "00060000" + "00000000";

    private static byte[] read(byte[] bytes) {
        return PhotoReading.read(new SourceFile("a photo", () -> new ByteArrayInputStream(bytes)))
                .bytes();
    }

    private static String refused(byte[] bytes) {
        return catchThrowableOfType(Problem.class, () -> read(bytes)).what().key();
    }

    private static void nothingIsTold(byte[] before, byte[] after) {
        for (String told : MadePhoto.TOLD) {
            assertThat(MadePhoto.holds(after, told.getBytes(StandardCharsets.US_ASCII)))
                    .as(told)
                    .isFalse();
        }
        assertThat(MadePhoto.holds(before, MadePhoto.LATITUDE)).isTrue();
        assertThat(MadePhoto.holds(after, MadePhoto.LATITUDE)).isFalse();
        assertThat(MadePhoto.holds(after, HexFormat.of().parseHex(TURNED))).isTrue();
    }

    private static void samePicture(byte[] one, byte[] other) throws IOException {
        BufferedImage a = ImageIO.read(new ByteArrayInputStream(one));
        BufferedImage b = ImageIO.read(new ByteArrayInputStream(other));
        assertThat(pixels(b)).isEqualTo(pixels(a));
    }

    private static int[] pixels(BufferedImage picture) {
        return picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void ofAJpegThePictureIsLeft(boolean progressive) throws IOException {
        byte[] bare = MadePhoto.bareJpeg(progressive);
        byte[] before = MadePhoto.withNotes(bare);
        byte[] after = read(before);
        nothingIsTold(before, after);
        samePicture(bare, after);
        assertThat(after.length).as("one note more").isEqualTo(bare.length + 36);
        assertThat(read(after)).as("again").isEqualTo(after);
        assertThat(read(bare)).as("nothing to leave off").isEqualTo(bare);
        IIOMetadataNode list = (IIOMetadataNode) tree(after, "jpeg", "javax_imageio_jpeg_image_1.0")
                .getElementsByTagName("markerSequence")
                .item(0);
        assertThat(list.getElementsByTagName("com").getLength()).isZero();
        assertThat(tags(list))
                .as("segments that a reader of another make does not know")
                .containsExactly("225");
    }

    private static List<String> tags(IIOMetadataNode list) {
        var unknown = list.getElementsByTagName("unknown");
        return IntStream.range(0, unknown.getLength())
                .mapToObj(i -> ((IIOMetadataNode) unknown.item(i)).getAttribute("MarkerTag"))
                .toList();
    }

    @Test
    void ofAPngThePictureIsLeft() throws IOException {
        byte[] before = MadePhoto.png();
        byte[] after = read(before);
        nothingIsTold(before, after);
        samePicture(MadePhoto.barePng(), after);
        assertThat(read(after)).as("again").isEqualTo(after);
        assertThat(read(MadePhoto.barePng())).as("nothing to leave off").isEqualTo(MadePhoto.barePng());
        IIOMetadataNode root = tree(after, "png", "javax_imageio_png_1.0");
        for (String kind : List.of("tEXt", "iTXt", "zTXt", "tIME")) {
            assertThat(root.getElementsByTagName(kind).getLength()).as(kind).isZero();
        }
    }

    private static IIOMetadataNode tree(byte[] bytes, String format, String as) throws IOException {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in);
            IIOMetadata known = reader.getImageMetadata(0);
            return (IIOMetadataNode) known.getAsTree(as);
        } finally {
            reader.dispose();
        }
    }

    /** What an earlier program kept as it came is given out so. */
    @Test
    void whatWasKeptWholeIsGivenOutBare() throws IOException {
        Photo kept = Photo.kept(MadePhoto.jpeg());
        assertThat(PhotoReading.bare(kept)).hasValueSatisfying(bare -> {
            assertThat(bare.bytes()).isEqualTo(read(kept.bytes()));
            assertThat(bare.hash()).isNotEqualTo(kept.hash());
        });
        assertThat(PhotoReading.bare(Photo.kept(new byte[] {1, 2, 3}))).isEmpty();
    }

    /** Wherever it breaks off, there is a picture without notes, or none. */
    @Test
    void aPhotoThatBreaksOffTellsNothingEither() throws IOException {
        for (byte[] whole : List.of(MadePhoto.jpeg(), MadePhoto.png())) {
            int pictures = 0;
            for (int length = 0; length < whole.length; length++) {
                var bare = PhotoReading.bare(Photo.kept(Arrays.copyOf(whole, length)));
                pictures += bare.isPresent() ? 1 : 0;
                bare.ifPresent(photo -> assertThat(MadePhoto.holds(photo.bytes(), MadePhoto.LATITUDE))
                        .isFalse());
            }
            assertThat(pictures).isBetween(1, whole.length - 1);
        }
    }

    @Test
    void whatIsNoPictureIsRefused() throws IOException {
        assertThat(refused(new byte[0])).isEqualTo("problem.photo.noPhoto");
        assertThat(refused("<svg/>".getBytes(StandardCharsets.UTF_8))).isEqualTo("problem.photo.noPhoto");
        assertThat(refused(Arrays.copyOf(MadePhoto.jpeg(), 300))).isEqualTo("problem.photo.noPhoto");
        assertThat(refused(new byte[PhotoReading.MOST_BYTES + 1])).isEqualTo("problem.photo.tooBig");
    }

    /** A few bytes can say that they are very many pixels. */
    @Test
    void aPictureHasBounds() throws IOException {
        assertThat(refused(sized(10_001, 10_000))).isEqualTo("problem.photo.tooManyPixels");
        assertThat(refused(sized(Integer.MAX_VALUE, Integer.MAX_VALUE))).isEqualTo("problem.photo.tooManyPixels");
        assertThat(read(sized(10_000, 10_000))).isNotEmpty();
    }

    /** A PNG that says it is so wide and high. */
    private static byte[] sized(int wide, int high) throws IOException {
        byte[] png = MadePhoto.barePng();
        byte[] head = Arrays.copyOfRange(png, 16, 16 + 13);
        ByteBuffer.wrap(head).putInt(wide).putInt(high);
        byte[] chunk = MadePhoto.chunk("IHDR", head);
        System.arraycopy(chunk, 0, png, 8, chunk.length);
        return png;
    }
}
