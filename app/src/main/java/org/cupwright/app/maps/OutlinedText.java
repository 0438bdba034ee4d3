package org.cupwright.app.maps;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Arrays;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** The same drawing with its texts as outlines of the letters: what draws it needs no fonts of its own. */
public final class OutlinedText {
    private OutlinedText() {}

    /** A drawing of {@link GreenMap} with outlines for texts; everything else stays as it is. */
    public static String of(String svg) {
        try {
            Document drawing = DocumentBuilderFactory.newDefaultNSInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(svg)));
            NodeList texts = drawing.getElementsByTagNameNS("*", "text");
            while (texts.getLength() > 0) {
                Element text = (Element) texts.item(0);
                text.getParentNode().replaceChild(outline(text), text);
            }
            return written(drawing);
        } catch (ParserConfigurationException | SAXException | TransformerException | IOException broken) {
            throw new UncheckedIOException(new IOException("a drawing of ours does not read", broken));
        }
    }

    private static Element outline(Element text) {
        OpenSans letters = text.getAttribute("font-weight").isEmpty() ? OpenSans.REGULAR : OpenSans.SEMIBOLD;
        double size = Double.parseDouble(text.getAttribute("font-size"));
        double width = letters.width(text.getTextContent(), size);
        double before = switch (text.getAttribute("text-anchor")) {
            case "middle" -> width / 2;
            case "end" -> width;
            default -> 0;
        };
        double x = Double.parseDouble(text.getAttribute("x")) - before;
        double y = Double.parseDouble(text.getAttribute("y"));
        Element path = text.getOwnerDocument().createElementNS(text.getNamespaceURI(), "path");
        path.setAttribute("class", "letters");
        path.setAttribute("d", data(letters.outline(text.getTextContent(), x, y, size)));
        return path;
    }

    private static String data(Path2D outline) {
        StringBuilder data = new StringBuilder();
        double[] at = new double[6];
        for (PathIterator pieces = outline.getPathIterator(null); !pieces.isDone(); pieces.next()) {
            int kind = pieces.currentSegment(at);
            int numbers = new int[] {2, 2, 4, 6, 0}[kind];
            data.append("MLQCZ".charAt(kind));
            data.append(Svg.data(Arrays.stream(at, 0, numbers).boxed().toArray()));
        }
        return data.toString();
    }

    private static String written(Document drawing) throws TransformerException {
        TransformerFactory factory = TransformerFactory.newDefaultInstance();
        factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
        Transformer writer = factory.newTransformer();
        writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
        StringWriter out = new StringWriter();
        writer.transform(new DOMSource(drawing), new StreamResult(out));
        return out.toString();
    }
}
