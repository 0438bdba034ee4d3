package org.cupwright.formats;

/**
 * How much of a kind one file may hold, beside its bytes: a file from outside must not take more memory or time than
 * anything that people have. All are our choice, several times what the greatest known use needs.
 */
public final class FileBounds {
    /** Lines of a table: thirty years of eighteen holes a day are 200,000. */
    public static final int MOST_LINES = 500_000;

    /** Columns of a table: a weather service's widest have some fifty. */
    public static final int MOST_COLUMNS = 500;

    /** Signs of a name or tag: as many as a value may have in OpenStreetMap (its API, version 0.6). */
    public static final int LONGEST_NAME = 255;

    /** Corners of one shape: the edge of a large green, walked with a corner each decimetre, has 2,500. */
    public static final int MOST_CORNERS = 20_000;

    /** Values and brackets of a GeoJSON file: a million corners; a traced course has some thousand. */
    public static final int MOST_JSON_PARTS = 5_000_000;

    /** Elements of a map in XML: a county has some million. */
    public static final int MOST_XML_PARTS = 3_000_000;

    private FileBounds() {}
}
