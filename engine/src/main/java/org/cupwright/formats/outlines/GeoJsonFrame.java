package org.cupwright.formats.outlines;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.message.Message;
import tools.jackson.databind.JsonNode;

/**
 * The frame of a GeoJSON file: WGS84 (RFC 7946, section 4), unless the {@code crs} member of GeoJSON 2008 names another.
 */
final class GeoJsonFrame {
    /** {@code EPSG:2154}, {@code urn:ogc:def:crs:EPSG::2154}, {@code urn:ogc:def:crs:EPSG:6.9:2154}. */
    private static final Pattern EPSG = Pattern.compile("(?:.*:)?EPSG:(?:[0-9.]*:)?([0-9]{4,6})");

    private GeoJsonFrame() {}

    /**
     * @throws org.cupwright.finding.UnreadableFile if the file names a frame that is not known
     */
    static CoordinateFrame of(JsonNode root) {
        JsonNode crs = root.path("crs");
        if (crs.isMissingNode() || crs.isNull()) {
            return CoordinateFrame.of(CoordinateFrame.WGS84);
        }
        String name = crs.path("properties").path("name").asString("");
        Matcher code = EPSG.matcher(name);
        if (code.matches()) {
            return CoordinateFrame.of(Integer.parseInt(code.group(1)));
        }
        if (name.endsWith("CRS84")) {
            return CoordinateFrame.of(CoordinateFrame.WGS84);
        }
        Message.Argument given = new Message.Name(name.isEmpty() ? crs.toString() : name);
        throw Finding.of(FindingKind.UNKNOWN_FRAME, Where.file(), given).failure();
    }
}
