package org.cupwright.app.desk.log;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Invented photos with all that a telephone writes into them: where it stood, when, and whose it is. */
public final class MadePhoto {
    /** Each stands in the notes of the photos here; none may be left of them. */
    public static final List<String> TOLD =
            List.of("Invented Maker", "52,12.34N", "Invented Person", "2026:06:20 05:00:00", "GPSLatitude", "xmp");

    /** 52 degrees as Exif has it: a fraction of two numbers. */
    public static final byte[] LATITUDE = {0, 0, 0, 52, 0, 0, 0, 1};

    private static final int SEED = 11;
    private static final int WIDE = 40;
    private static final int HIGH = 30;

    private MadePhoto() {}

    private static BufferedImage picture() {
        BufferedImage picture = new BufferedImage(WIDE, HIGH, BufferedImage.TYPE_INT_RGB);
        java.util.Random random = new java.util.Random(SEED);
        for (int i = 0; i < WIDE * HIGH; i++) {
            picture.setRGB(i % WIDE, i / WIDE, random.nextInt(1 << 24));
        }
        return picture;
    }

    /** @param progressive drawn in several scans */
    static byte[] bareJpeg(boolean progressive) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream to = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(to);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setProgressiveMode(progressive ? ImageWriteParam.MODE_DEFAULT : ImageWriteParam.MODE_DISABLED);
            writer.write(null, new IIOImage(picture(), null, null), how);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    static byte[] barePng() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(picture(), "png", out);
        return out.toByteArray();
    }

    /** A JPEG with notes before the picture, within it and after it. */
    public static byte[] jpeg() throws IOException {
        return withNotes(bareJpeg(false));
    }

    static byte[] withNotes(byte[] jpeg) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        out.writeBytes(segment(0xe1, join(ascii("Exif\0\0"), exif())));
        out.writeBytes(segment(0xe1, ascii("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta exif:GPSLatitude='52,12.34N'/>")));
        out.writeBytes(segment(0xe2, ascii("ICC_PROFILE\0\1\1of the Invented Person")));
        out.writeBytes(segment(0xed, ascii("Photoshop 3.0\0by the Invented Person")));
        out.writeBytes(segment(0xfe, ascii("taken at 52,12.34N by the Invented Person")));
        int scan = last(jpeg, 0xda);
        out.write(jpeg, 2, scan - 2);
        out.writeBytes(segment(0xfe, ascii("52,12.34N again")));
        out.write(jpeg, scan, jpeg.length - scan);
        out.writeBytes(segment(0xe1, join(ascii("Exif\0\0"), exif())));
        out.writeBytes(ascii("and a film of the Invented Person"));
        return out.toByteArray();
    }

    /** A PNG with texts, Exif and a time. */
    public static byte[] png() throws IOException {
        byte[] bare = barePng();
        int data = 8 + 12 + 13;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bare, 0, data);
        out.writeBytes(chunk("eXIf", exif()));
        out.writeBytes(chunk("tEXt", ascii("Author\0Invented Person")));
        out.writeBytes(chunk("iTXt", ascii("XML:com.adobe.xmp\0\0\0\0\0<x:xmpmeta exif:GPSLatitude='52,12.34N'/>")));
        out.writeBytes(chunk("zTXt", ascii("Comment\0\0not packed, GPSLatitude 52,12.34N")));
        out.writeBytes(chunk("tIME", new byte[] {7, (byte) 0xea, 6, 20, 5, 0, 0}));
        out.writeBytes(chunk("prVt", ascii("of the Invented Maker")));
        out.write(bare, data, bare.length - data);
        out.writeBytes(ascii("and more of the Invented Person at 52,12.34N"));
        return out.toByteArray();
    }

    /** Turned by a quarter, by whom, when, and where, as TIFF 6.0 and Exif 2.3 (CIPA DC-008) have it; recalled. */
    private static byte[] exif() {
        ByteBuffer tiff = ByteBuffer.allocate(256).put(ascii("MM\0*")).putInt(8).putShort((short) 4);
        entry(tiff, 0x010f, 2, 15, 100);
        entry(tiff, 0x0112, 3, 1, 6 << 16);
        entry(tiff, 0x0132, 2, 20, 120);
        entry(tiff, 0x8825, 4, 1, 150);
        tiff.putInt(0).position(100);
        tiff.put(ascii("Invented Maker\0")).position(120);
        tiff.put(ascii("2026:06:20 05:00:00\0")).position(150);
        tiff.putShort((short) 2);
        entry(tiff, 1, 2, 2, 'N' << 24);
        entry(tiff, 2, 5, 3, 200);
        tiff.putInt(0).position(200);
        tiff.put(LATITUDE).putInt(12).putInt(1).putInt(34).putInt(1);
        return tiff.array();
    }

    private static void entry(ByteBuffer tiff, int tag, int type, int count, int value) {
        tiff.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    private static byte[] segment(int marker, byte[] said) {
        int length = said.length + 2;
        return join(new byte[] {(byte) 0xff, (byte) marker, (byte) (length >> 8), (byte) length}, said);
    }

    static byte[] chunk(String name, byte[] said) {
        byte[] named = join(ascii(name), said);
        CRC32 sum = new CRC32();
        sum.update(named);
        byte[] length = ByteBuffer.allocate(4).putInt(said.length).array();
        return join(
                join(length, named),
                ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
    }

    private static int last(byte[] bytes, int marker) {
        for (int at = bytes.length - 2; at > 0; at--) {
            if (bytes[at] == (byte) 0xff && bytes[at + 1] == (byte) marker) {
                return at;
            }
        }
        throw new IllegalStateException("no such marker");
    }

    private static byte[] join(byte[] first, byte[] second) {
        byte[] both = Arrays.copyOf(first, first.length + second.length);
        System.arraycopy(second, 0, both, first.length, second.length);
        return both;
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Whether bytes have others among them. */
    public static boolean holds(byte[] bytes, byte[] others) {
        return new String(bytes, StandardCharsets.ISO_8859_1).contains(new String(others, StandardCharsets.ISO_8859_1));
    }
}
