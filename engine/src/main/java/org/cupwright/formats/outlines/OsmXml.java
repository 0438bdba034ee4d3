package org.cupwright.formats.outlines;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.BoundedInput;
import org.cupwright.formats.Excerpt;
import org.cupwright.message.Message;
import org.locationtech.jts.geom.Coordinate;

/**
 * Reads OpenStreetMap XML: nodes, ways and relations with their tags. Elements an editor has marked as deleted are left out.
 *
 * <p>The parser knows no document types and no external entities, so a file can reach no other file and no network.
 */
final class OsmXml {
    /** A whole county's map is some hundred megabytes of XML; a course one. Our choice. */
    static final long MAX_BYTES = 256L << 20;

    /** {@code osm}, an element, its parts: three deep. */
    private static final int MAX_DEPTH = 16;

    private final Map<Long, Coordinate> nodes = new HashMap<>();
    private final Map<Long, OsmData.Way> ways = new LinkedHashMap<>();
    private final List<OsmData.Relation> relations = new ArrayList<>();

    private Map<String, String> tags = new LinkedHashMap<>();
    private List<Long> wayNodes = new ArrayList<>();
    private List<OsmData.Member> members = new ArrayList<>();
    private long id;
    private boolean deleted;
    private int depth;

    /**
     * @throws org.cupwright.finding.UnreadableFile if it is empty, no OpenStreetMap XML, or beyond the bounds
     */
    static OsmData read(InputStream in) throws IOException {
        InputStream bounded = BoundedInput.withoutMark(in, MAX_BYTES);
        OsmXml reader = new OsmXml();
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(bounded);
            reader.readAll(xml);
            xml.close();
        } catch (XMLStreamException e) {
            Message where = e.getLocation() == null
                    ? Where.file()
                    : Where.lineAndColumn(
                            Math.max(1, e.getLocation().getLineNumber()),
                            Math.max(1, e.getLocation().getColumnNumber()));
            Message.Argument said = new Message.Name(Excerpt.of(String.valueOf(e.getMessage())));
            throw Finding.of(FindingKind.NOT_READABLE, where, said).failure(e);
        }
        return new OsmData(reader.nodes, reader.ways, reader.relations);
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    private void readAll(XMLStreamReader xml) throws XMLStreamException {
        while (xml.hasNext()) {
            int event = xml.next();
            if (event == XMLStreamConstants.START_ELEMENT) {
                start(xml);
            } else if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
                end(xml.getLocalName());
            }
        }
    }

    private void start(XMLStreamReader xml) {
        String name = xml.getLocalName();
        depth++;
        boolean wrongRoot = depth == 1 && !name.equals("osm");
        if (wrongRoot || depth > MAX_DEPTH) {
            Message where = Where.lineAndColumn(
                    xml.getLocation().getLineNumber(), xml.getLocation().getColumnNumber());
            throw Finding.of(FindingKind.NOT_READABLE, where, new Message.Name(name))
                    .failure();
        }
        switch (name) {
            case "node", "way", "relation" -> begin(xml);
            case "tag" -> tags.put(text(xml, "k"), text(xml, "v"));
            case "nd" -> wayNodes.add(whole(xml, "ref"));
            case "member" -> member(xml);
            default -> {
                // bounds, notes and change data say nothing of the course
            }
        }
    }

    private void begin(XMLStreamReader xml) {
        tags = new LinkedHashMap<>();
        wayNodes = new ArrayList<>();
        members = new ArrayList<>();
        id = whole(xml, "id");
        deleted = text(xml, "visible").equals("false") || text(xml, "action").equals("delete");
        if (xml.getLocalName().equals("node") && !deleted) {
            nodes.put(id, new Coordinate(number(xml, "lon"), number(xml, "lat")));
        }
    }

    private void member(XMLStreamReader xml) {
        if (text(xml, "type").equals("way")) {
            members.add(new OsmData.Member(whole(xml, "ref"), text(xml, "role")));
        }
    }

    private void end(String name) {
        if (deleted) {
            return;
        }
        if (name.equals("way")) {
            ways.put(id, new OsmData.Way(id, wayNodes, tags));
        } else if (name.equals("relation")) {
            relations.add(new OsmData.Relation(id, members, tags));
        }
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
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw notANumber(xml, attribute, text).failure(e);
        }
        throw notANumber(xml, attribute, text).failure();
    }

    private static Finding notANumber(XMLStreamReader xml, String attribute, String text) {
        Message where = Where.lineAndColumn(
                xml.getLocation().getLineNumber(), xml.getLocation().getColumnNumber());
        Message.Argument found =
                new Message.Name(xml.getLocalName() + " " + attribute + "=\"" + Excerpt.of(text) + "\"");
        return Finding.of(FindingKind.NOT_A_NUMBER, where, found);
    }
}
