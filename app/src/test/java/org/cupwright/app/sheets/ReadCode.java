package org.cupwright.app.sheets;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DecoderResult;
import com.google.zxing.common.DetectorResult;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.decoder.Decoder;
import com.google.zxing.qrcode.decoder.QRCodeDecoderMetaData;
import com.google.zxing.qrcode.detector.Detector;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * The code that a telephone would find on a page.
 *
 * @param text what it says
 * @param squares how many stand beside each other, without the white about them
 */
record ReadCode(String text, int squares) {
    /** Of the first page of paper, as it is printed. */
    static Optional<ReadCode> on(byte[] pdf, int dotsAnInch) throws IOException {
        return in(picture(pdf, dotsAnInch));
    }

    static BufferedImage picture(byte[] pdf, int dotsAnInch) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, dotsAnInch);
        }
    }

    /** Of a picture; one that stands the wrong way round is none, though this reader could make it out. */
    static Optional<ReadCode> in(BufferedImage picture) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        int[] colours = picture.getRGB(0, 0, width, height, null, 0, width);
        try {
            BitMatrix dots = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, colours)))
                    .getBlackMatrix();
            DetectorResult found = new Detector(dots).detect();
            DecoderResult read = new Decoder().decode(found.getBits());
            boolean mirrored = read.getOther() instanceof QRCodeDecoderMetaData other && other.isMirrored();
            return mirrored
                    ? Optional.empty()
                    : Optional.of(new ReadCode(read.getText(), found.getBits().getWidth()));
        } catch (NotFoundException | FormatException | ChecksumException none) {
            return Optional.empty();
        }
    }
}
