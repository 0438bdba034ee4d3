package org.cupwright.app.sheets;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/**
 * An address as a code that telephones read: dark squares on white, one path, with the white that has to stand about it
 * (a QR code of ISO/IEC 18004, <em>recalled</em>: four squares wide).
 *
 * @param squares with that white
 */
record QrCode(BitMatrix squares) {
    /** How wide a square is printed; a telephone at arm's length reads 0.4 mm. Both our choice. */
    static final double SQUARE_MILLIMETRES = 0.5;

    private static final int WHITE_ABOUT_IT = 4;

    static QrCode of(String address) {
        try {
            return new QrCode(new QRCodeWriter()
                    .encode(
                            address,
                            BarcodeFormat.QR_CODE,
                            0, // as small as it goes: a square each
                            0,
                            Map.of(
                                    EncodeHintType.ERROR_CORRECTION,
                                    ErrorCorrectionLevel.M, // paper that was folded and wet
                                    EncodeHintType.MARGIN,
                                    WHITE_ABOUT_IT)));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no code holds " + address, tooLong);
        }
    }

    /** How wide and high it is printed. */
    double sideMillimetres() {
        return squares.getWidth() * SQUARE_MILLIMETRES;
    }

    /** An SVG document that is so wide and high on paper. */
    String svg() {
        int side = squares.getWidth();
        String size = Page.millimetres(sideMillimetres());
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + side + "\" height=\"" + side
                + "\" viewBox=\"0 0 " + side + " " + side + "\" style=\"display: block; width: " + size + "; height: "
                + size + ";\"><path fill=\"#000000\" d=\"" + path() + "\"/></svg>";
    }

    /** Row by row, a rectangle for each run of dark squares. */
    private String path() {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < squares.getHeight(); y++) {
            int from = -1;
            for (int x = 0; x < squares.getWidth(); x++) { // the last column is white
                if (squares.get(x, y) && from < 0) {
                    from = x;
                } else if (!squares.get(x, y) && from >= 0) {
                    path.append("M" + from + " " + y + "H" + x + "v1H" + from + "z");
                    from = -1;
                }
            }
        }
        return path.toString();
    }
}
