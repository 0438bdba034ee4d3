package org.cupwright.app.sheets;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder.PdfAConformance;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.cupwright.app.maps.OpenSans;

/**
 * Turns XHTML into a PDF with embedded fonts.
 *
 * <p>The same markup gives the same bytes: the dates inside are the sheet's day, and the document's id follows from the
 * markup.
 */
final class Pdf {
    static {
        // its remarks are about markup, which is ours; standard error belongs to the command
        XRLog.setLoggingEnabled(false);
    }

    private Pdf() {}

    static byte[] of(String xhtml, String title, LocalDate day) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        // or it looks for the machine's fonts, to have some to fall back on
        builder.usePdfAConformance(PdfAConformance.PDFA_2_U);
        builder.useSVGDrawer(new BatikSVGDrawer());
        for (OpenSans font : OpenSans.values()) {
            builder.useFont(font::stream, OpenSans.FAMILY, font.weight(), FontStyle.NORMAL, true);
        }
        builder.withHtmlContent(xhtml, null);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            renderer.createPDFWithoutClosing();
            PDDocument document = renderer.getPdfDocument();
            document.setDocumentInformation(information(title, day));
            // holds the time of now, and a claim to a standard that nobody checks
            document.getDocumentCatalog().setMetadata(null);
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
}
