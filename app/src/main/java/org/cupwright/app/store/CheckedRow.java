package org.cupwright.app.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32C;
import java.util.zip.Checksum;

/**
 * A row with a check sum of all that is in it, its number among it, so that a row that is not as it was written is told
 * from one that is.
 *
 * <p>The lower half of the sum is CRC-32C of what the row holds, its document, points or photo, so that it can be
 * checked by itself where many rows are read; the upper half is that of all other columns, by their names. Both find
 * every change of up to 32 bits in a row.
 *
 * @param columns values by the names of their columns, without the sum
 */
public record CheckedRow(SortedMap<String, Object> columns) {
    /** The column of the sum. */
    public static final String SUM = "check_sum";

    private static final Set<String> HELD = Set.of("document", "points", "content");
    /** Columns of later formats: while they hold nothing they are not in the sum, which older rows keep. */
    private static final Set<String> LATER = Set.of("kind");

    private static final int HALF = 32;
    private static final long LOWER = 0xFFFF_FFFFL;

    CheckedRow() {
        this(new TreeMap<>());
    }

    /** The row that a query of all columns is at. */
    public static CheckedRow at(ResultSet row) throws SQLException {
        ResultSetMetaData described = row.getMetaData();
        CheckedRow found = new CheckedRow();
        for (int i = 1; i <= described.getColumnCount(); i++) {
            if (!described.getColumnName(i).equals(SUM)) {
                found.with(described.getColumnName(i), row.getObject(i));
            }
        }
        return found;
    }

    CheckedRow with(String column, Object value) {
        if (value != null || !LATER.contains(column)) {
            columns.put(column, value);
        }
        return this;
    }

    public long sum() {
        CRC32C others = new CRC32C();
        long held = 0;
        for (Map.Entry<String, Object> column : columns.entrySet()) {
            byte[] value = bytes(column.getValue());
            others.update(column.getKey().getBytes(StandardCharsets.UTF_8));
            others.update(kind(column.getValue()));
            if (HELD.contains(column.getKey())) {
                held = ofHeld(value);
            } else {
                others.update(ByteBuffer.allocate(Integer.BYTES).putInt(0, value.length));
                others.update(value);
            }
        }
        return others.getValue() << HALF | held;
    }

    /** Whether what a row holds is what its sum was made of. */
    static boolean holds(byte[] held, long sum) {
        return held != null && ofHeld(held) == (sum & LOWER);
    }

    private static long ofHeld(byte[] held) {
        Checksum sum = new CRC32C();
        sum.update(held);
        return sum.getValue();
    }

    private static char kind(Object value) {
        return value instanceof String ? 't' : value instanceof byte[] ? 'b' : value instanceof Double ? 'r' : 'i';
    }

    /** Of no value none; a length goes before each, so that no two rows are told in the same way. */
    private static byte[] bytes(Object value) {
        if (value == null) {
            return new byte[0];
        }
        if (value instanceof byte[] bytes) {
            return bytes;
        }
        if (value instanceof String text) {
            return text.getBytes(StandardCharsets.UTF_8);
        }
        long bits = value instanceof Double real ? Double.doubleToLongBits(real) : ((Number) value).longValue();
        return ByteBuffer.allocate(Long.BYTES).putLong(0, bits).array();
    }
}
