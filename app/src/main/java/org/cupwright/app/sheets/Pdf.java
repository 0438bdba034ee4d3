package org.cupwright.app.sheets;

import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * Turns XHTML into a PDF with embedded fonts.
 *
 * <p>The same markup gives the same bytes: the dates inside are the sheet's day, and the document's id follows from the markup.
 */
final class Pdf {
    private static final String FAMILY = "Open Sans";
    private static final int REGULAR = 400;
    private static final int SEMIBOLD = 600;
    private static final int BOLD = 700;

    private Pdf() {}

    static byte[] of(String xhtml, String title, LocalDate day) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useFastMode();
        builder.useSVGDrawer(new BatikSVGDrawer());
        font(builder, "OpenSans-Regular.ttf", REGULAR);
        font(builder, "OpenSans-Semibold.ttf", SEMIBOLD);
        font(builder, "OpenSans-Bold.ttf", BOLD);
        builder.withHtmlContent(xhtml, null);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            document.setDocumentInformation(information(title, day));
            document.setDocumentId((long) xhtml.hashCode());
            document.save(bytes);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        return bytes.toByteArray();
    }

    private static PDDocumentInformation information(String title, LocalDate day) {
        Calendar midnight = GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC));
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        information.setProducer("Cupwright");
        information.setCreationDate(midnight);
        information.setModificationDate(midnight);
        return information;
    }

    private static void font(PdfRendererBuilder builder, String file, int weight) {
        builder.useFont(() -> stream(file), FAMILY, weight, PdfRendererBuilder.FontStyle.NORMAL, true);
    }

    private static InputStream stream(String file) {
        InputStream font = Pdf.class.getResourceAsStream("fonts/" + file);
        if (font == null) {
            throw new IllegalStateException("the font " + file + " is missing from the program");
        }
        return font;
    }
}
