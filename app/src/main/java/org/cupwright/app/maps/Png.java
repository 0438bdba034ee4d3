package org.cupwright.app.maps;

import java.awt.Color;
import java.io.ByteArrayOutputStream;
import java.io.StringReader;
import org.apache.batik.transcoder.TranscoderException;
import org.apache.batik.transcoder.TranscoderInput;
import org.apache.batik.transcoder.TranscoderOutput;
import org.apache.batik.transcoder.image.ImageTranscoder;
import org.apache.batik.transcoder.image.PNGTranscoder;

/** A drawing as a picture: the very same SVG, rasterised. The same drawing gives the same bytes. */
public final class Png {
    private Png() {}

    /** The picture of a drawing of {@link GreenMap}, so many pixels wide, on white. */
    public static byte[] of(String svg, int widthPixels) {
        PNGTranscoder transcoder = new PNGTranscoder();
        transcoder.addTranscodingHint(ImageTranscoder.KEY_WIDTH, (float) widthPixels);
        transcoder.addTranscodingHint(ImageTranscoder.KEY_BACKGROUND_COLOR, Color.WHITE);
        ByteArrayOutputStream picture = new ByteArrayOutputStream();
        try {
            transcoder.transcode(
                    new TranscoderInput(new StringReader(OutlinedText.of(svg))), new TranscoderOutput(picture));
        } catch (TranscoderException broken) {
            throw new IllegalStateException("a drawing of ours cannot be rasterised", broken);
        }
        return picture.toByteArray();
    }
}
