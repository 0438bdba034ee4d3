package org.cupwright.formats;

import java.util.Optional;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.locationtech.proj4j.CoordinateReferenceSystem;
import org.locationtech.proj4j.Proj4jException;
import org.locationtech.proj4j.util.CRSCache;

/**
 * A coordinate frame known by its EPSG code: degrees of longitude and latitude, or lengths east and north.
 *
 * <p>Coordinates are always given east first (longitude, latitude; easting, northing), whatever order the code's own
 * definition lists its axes in: this is how GeoJSON, OpenStreetMap and point files write them.
 */
public final class CoordinateFrame {
    /** Longitude and latitude as satellites give them. */
    public static final int WGS84 = 4326;

    private static final int UTM_NORTH = 32600;
    private static final int UTM_SOUTH = 32700;
    private static final double UTM_ZONE_DEGREES = 6;
    private static final int UTM_ZONES = 60;

    private static final int ETRS89_UTM = 25800;
    private static final int FIRST_ETRS89_ZONE = 28;
    private static final int LAST_ETRS89_ZONE = 38;

    /** Looking a code up reads the whole list of codes, so each is looked up once. */
    private static final CRSCache KNOWN = new CRSCache();

    private final int epsg;
    private final CoordinateReferenceSystem system;

    private CoordinateFrame(int epsg, CoordinateReferenceSystem system) {
        this.epsg = epsg;
        this.system = system;
    }

    /**
     * The frame of a code.
     *
     * @throws UnreadableFile if there is no such frame, or it is not one of the map (a vertical one, for example)
     */
    public static CoordinateFrame of(int epsg) {
        try {
            String name = "EPSG:" + epsg;
            CoordinateReferenceSystem system = parameters(epsg)
                    .map(common -> KNOWN.createFromParameters(name, common))
                    .orElseGet(() -> KNOWN.createFromName(name));
            if (system == null || system.getProjection() == null) {
                throw unknown(epsg).failure();
            }
            return new CoordinateFrame(epsg, system);
        } catch (Proj4jException e) {
            throw unknown(epsg).failure(e);
        }
    }

    /** What the list of codes says of degrees and of UTM zones, which most maps are in; empty for all others. */
    static Optional<String> parameters(int epsg) {
        if (epsg == WGS84) {
            return Optional.of("+proj=longlat +datum=WGS84 +no_defs");
        }
        if (isZone(epsg - ETRS89_UTM, FIRST_ETRS89_ZONE, LAST_ETRS89_ZONE)) {
            return Optional.of(utm(epsg - ETRS89_UTM, "+ellps=GRS80 +towgs84=0,0,0,0,0,0,0"));
        }
        if (isZone(epsg - UTM_NORTH, 1, UTM_ZONES)) {
            return Optional.of(utm(epsg - UTM_NORTH, "+datum=WGS84"));
        }
        return isZone(epsg - UTM_SOUTH, 1, UTM_ZONES)
                ? Optional.of(utm(epsg - UTM_SOUTH, "+south +datum=WGS84"))
                : Optional.empty();
    }

    private static boolean isZone(int number, int first, int last) {
        return number >= first && number <= last;
    }

    private static String utm(int zone, String figure) {
        return "+proj=utm +zone=" + zone + " " + figure + " +units=m +no_defs";
    }

    private static Finding unknown(int epsg) {
        return Finding.of(FindingKind.UNKNOWN_FRAME, Where.file(), "EPSG:" + epsg);
    }

    /**
     * The UTM zone (WGS84) of a place; the plain six-degree zones, without the exceptions about Norway and Svalbard.
     */
    public static CoordinateFrame utmOf(double longitudeDegrees, double latitudeDegrees) {
        int zone = (int) Math.floor((longitudeDegrees + 180) / UTM_ZONE_DEGREES) + 1;
        int inRange = Math.max(1, Math.min(UTM_ZONES, zone));
        return of((latitudeDegrees < 0 ? UTM_SOUTH : UTM_NORTH) + inRange);
    }

    public int epsg() {
        return epsg;
    }

    /** Whether its numbers are degrees of longitude and latitude. */
    public boolean isGeographic() {
        return system.isGeographic();
    }

    /** The frame's own unit of length, in metres; of a geographic frame, which has none, one metre. */
    public double unitMetres() {
        return isGeographic() ? 1 : 1 / system.getProjection().getFromMetres();
    }

    CoordinateReferenceSystem system() {
        return system;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CoordinateFrame frame && frame.epsg == epsg;
    }

    @Override
    public int hashCode() {
        return epsg;
    }

    @Override
    public String toString() {
        return "EPSG:" + epsg;
    }
}
