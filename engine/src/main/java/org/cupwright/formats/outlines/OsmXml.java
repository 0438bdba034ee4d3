package org.cupwright.formats.outlines;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.formats.BoundedInput;
import org.cupwright.formats.Excerpt;
import org.cupwright.formats.FileBounds;
import org.cupwright.formats.Separator;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;

/**
 * Reads OpenStreetMap XML: nodes, ways and relations with their tags. Elements an editor has marked as deleted are left
 * out.
 *
 * <p>The text is UTF-8, as all of OpenStreetMap is; what is none is read as a replacement sign. The parser knows no
 * document types and no external entities, so a file can reach no other file and no network.
 */
final class OsmXml {
    /** A whole county's map is some hundred megabytes of XML; a course one. Our choice. */
    static final long MAX_BYTES = 256L << 20;

    /** {@code osm}, an element, its parts: three deep. */
    private static final int MAX_DEPTH = 16;

    private final Map<Long, Coordinate> nodes = new HashMap<>();
    private final Map<Long, OsmElement> ways = new LinkedHashMap<>();
    private final List<OsmElement> relations = new ArrayList<>();
    private OsmElement element = new OsmElement("", 0);
    private boolean deleted;
    private int depth;
    private int elements;

    /**
     * @throws org.cupwright.finding.UnreadableFile if it is empty, no OpenStreetMap XML, or beyond the bounds
     */
    static OsmXml read(InputStream in) throws IOException {
        OsmXml reader = new OsmXml();
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(BoundedInput.text(in, MAX_BYTES));
            refuseOtherThanUtf8(xml.getCharacterEncodingScheme());
            reader.readAll(xml);
            xml.close();
        } catch (XMLStreamException e) {
            Message where = e.getLocation() == null ? Where.file() : where(e.getLocation());
            throw Finding.of(FindingKind.NOT_READABLE, where, Excerpt.of(String.valueOf(e.getMessage())))
                    .failure(e);
        }
        return reader;
    }

    /** Longitude and latitude by id. */
    Map<Long, Coordinate> nodes() {
        return nodes;
    }

    Map<Long, OsmElement> ways() {
        return ways;
    }

    List<OsmElement> relations() {
        return relations;
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLReporter(
                (message, kind, about, at) -> {}); // what ends the reading is thrown, the rest is not told
        return factory;
    }

    /** OpenStreetMap's files are UTF-8, and so are they read; of one that says otherwise names would come out wrong. */
    private static void refuseOtherThanUtf8(String declared) {
        if (declared != null && !declared.equalsIgnoreCase("UTF-8")) {
            throw Finding.of(FindingKind.NOT_READABLE, Where.file(), Excerpt.of("encoding " + declared))
                    .failure();
        }
    }

    private void readAll(XMLStreamReader xml) throws XMLStreamException {
        while (xml.hasNext()) {
            int event = next(xml);
            if (event == XMLStreamConstants.START_ELEMENT) {
                start(xml);
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
                end(xml.getLocalName());
            }
        }
    }

    /** The parser fails on some broken files with errors of its own that say nothing: they are told as all others. */
    private static int next(XMLStreamReader xml) throws XMLStreamException {
        try {
            return xml.next();
        } catch (UnreadableFile bounds) {
            throw bounds;
        } catch (RuntimeException defect) {
            throw Finding.of(FindingKind.NOT_READABLE, where(xml.getLocation()), "XML")
                    .failure(defect);
        }
    }

    private void start(XMLStreamReader xml) {
        String name = xml.getLocalName();
        depth++;
        if (++elements > FileBounds.MOST_XML_PARTS) {
            throw Finding.of(FindingKind.TOO_MANY_PARTS, Where.file(), FileBounds.MOST_XML_PARTS)
                    .failure();
        }
        if (depth > MAX_DEPTH) {
            throw Finding.of(FindingKind.NESTED_TOO_DEEPLY, where(xml.getLocation()), MAX_DEPTH)
                    .failure();
        }
        boolean wrongRoot = depth == 1 && !name.equals("osm");
        if (wrongRoot) {
            throw Finding.of(FindingKind.NOT_READABLE, where(xml.getLocation()), Excerpt.of(name))
                    .failure();
        }
        switch (name) {
            case "node", "way", "relation" -> begin(xml);
            case "tag" -> element.tags().put(text(xml, "k"), text(xml, "v"));
            case "nd" -> element.parts().add(new OsmElement.Part(whole(xml, "ref"), ""));
            case "member" -> member(xml);
            default -> {
                // bounds, notes and change data say nothing of the course
            }
        }
    }

    private void begin(XMLStreamReader xml) {
        element = new OsmElement(xml.getLocalName(), whole(xml, "id"));
        deleted = text(xml, "visible").equals("false") || text(xml, "action").equals("delete");
        if (element.name().equals("node") && !deleted) {
            nodes.put(element.id(), new Coordinate(number(xml, "lon"), number(xml, "lat")));
        }
    }

    private void member(XMLStreamReader xml) {
        if (text(xml, "type").equals("way")) {
            element.parts().add(new OsmElement.Part(whole(xml, "ref"), text(xml, "role")));
        }
    }

    private void end(String name) {
        if (!deleted && name.equals("way")) {
            ways.put(element.id(), element);
        } else if (!deleted && name.equals("relation")) {
            relations.add(element);
        }
    }

    private static Message where(Location at) {
        return Where.lineAndColumn(Math.max(1, at.getLineNumber()), Math.max(1, at.getColumnNumber()));
    }

    private static String text(XMLStreamReader xml, String attribute) {
        String value = xml.getAttributeValue(null, attribute);
        return value == null ? "" : value;
    }

    private static long whole(XMLStreamReader xml, String attribute) {
        return (long) number(xml, attribute);
    }

    private static double number(XMLStreamReader xml, String attribute) {
        String text = text(xml, attribute);
        double value = Separator.COMMA.number(text);
        if (Double.isNaN(value)) {
            String found = xml.getLocalName() + " " + attribute + "=\"" + Excerpt.of(text) + "\"";
            throw Finding.of(FindingKind.NOT_A_NUMBER, where(xml.getLocation()), found)
                    .failure();
        }
        return value;
    }
}
