package org.cupwright.app.reading;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Makes broken files of sound ones: bits turned over, pieces lost, doubled or taken from another file, numbers that
 * are none or too great, signs of other scripts, and lines, columns and tags that changed places.
 */
final class Mutator {
    /** Larger inputs say no more and take their time; our choice. */
    private static final int LARGEST = 1 << 17;

    private static final int LONGEST_PIECE = 600;
    private static final int MOST_CHANGES = 4;

    private static final List<String> NUMBERS = List.of(
            "1e999",
            "-1e999",
            "1e-999",
            "-0",
            "0",
            "NaN",
            "Infinity",
            "-Infinity",
            "2147483647",
            "2147483648",
            "-2147483649",
            "9223372036854775807",
            "9223372036854775808",
            "4294967296",
            "1.7976931348623157e308",
            "4.9e-324",
            "9".repeat(400),
            "0." + "3".repeat(2000),
            "1" + "0".repeat(1200),
            "1e2147483648",
            "0x1p3",
            "1_000",
            "1,5",
            "1.5.2",
            "+",
            "-",
            "١٢٣",
            "१२",
            "１２",
            "½",
            "10½",
            "1 000",
            "1\u00a0000");

    private static final List<String> SIGNS = List.of(
            "\u0000",
            "\u0007",
            "\u001b[2J",
            "\u007f",
            "\u0085",
            "\u2028",
            "\ufeff",
            "\u202e",
            "\u2066",
            "\u200f",
            "\u0301\u0301",
            "😀",
            "ß",
            "İ",
            "{0}",
            "{0,number,#}",
            "'",
            "''",
            "\"",
            "\\",
            "\\u0000",
            "&amp;",
            "&#0;",
            "<!DOCTYPE a [<!ENTITY b \"c\">]>",
            "<![CDATA[",
            "]]>",
            "<a>",
            "</osm>",
            "<tag k=\"golf\" v=\"green\"/>",
            "null",
            "true",
            "{}",
            "[]",
            "[[[[[[[[",
            "{\"a\":",
            ",,,,",
            ";",
            "\t",
            "\r",
            "\n",
            "\r\n",
            "\n\n",
            "#",
            "=1+1",
            "@",
            "EPSG:2000",
            "2026-02-30",
            "29.2.2025",
            "0000-01-01",
            "-999999999-01-01",
            "+999999999-12-31",
            "31/12/99",
            "99:99",
            "hole",
            "play",
            "G1");

    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9][0-9.]*(?:[eE][-+]?[0-9]+)?");
    private static final Pattern TAG = Pattern.compile("\"[^\"\\n]{0,60}\"|<[^<>\\n]{1,200}>");

    private final List<byte[]> seeds;
    private final RandomGenerator random;

    Mutator(List<byte[]> seeds, RandomGenerator random) {
        this.seeds = seeds;
        this.random = random;
    }

    /** The next broken file. */
    byte[] next() {
        byte[] bytes = seed();
        int changes = random.nextInt(3) == 0 ? 1 + random.nextInt(MOST_CHANGES) : 1;
        for (int i = 0; i < changes; i++) {
            bytes = changed(bytes);
        }
        return bytes.length > LARGEST ? Arrays.copyOf(bytes, LARGEST) : bytes;
    }

    private byte[] seed() {
        return seeds.get(random.nextInt(seeds.size())).clone();
    }

    private byte[] changed(byte[] bytes) {
        return switch (random.nextInt(14)) {
            case 0 -> bitTurned(bytes);
            case 1 -> byteExchanged(bytes);
            case 2 -> without(bytes);
            case 3 -> doubled(bytes, 1 + random.nextInt(3));
            case 4 -> spliced(bytes);
            case 5, 6, 7 -> matchExchanged(bytes, NUMBER, NUMBERS.get(random.nextInt(NUMBERS.size())));
            case 8 -> inserted(bytes, SIGNS.get(random.nextInt(SIGNS.size())));
            case 9 -> matchExchanged(bytes, TAG, "\"" + SIGNS.get(random.nextInt(SIGNS.size())) + "\"");
            case 10 -> partsSwapped(bytes, "\n");
            case 11 -> columnsSwapped(bytes);
            case 12 -> tagsSwapped(bytes);
            default -> random.nextInt(10) == 0 ? nested(bytes) : cutOff(bytes);
        };
    }

    private int place(byte[] bytes) {
        return bytes.length == 0 ? 0 : random.nextInt(bytes.length);
    }

    private byte[] bitTurned(byte[] bytes) {
        if (bytes.length > 0) {
            bytes[place(bytes)] ^= (byte) (1 << random.nextInt(Byte.SIZE));
        }
        return bytes;
    }

    private byte[] byteExchanged(byte[] bytes) {
        if (bytes.length > 0) {
            bytes[place(bytes)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private byte[] without(byte[] bytes) {
        int from = place(bytes);
        int to = Math.min(bytes.length, from + 1 + random.nextInt(LONGEST_PIECE));
        return joined(Arrays.copyOf(bytes, from), Arrays.copyOfRange(bytes, to, bytes.length));
    }

    private byte[] doubled(byte[] bytes, int times) {
        int from = place(bytes);
        int to = Math.min(bytes.length, from + 1 + random.nextInt(LONGEST_PIECE));
        byte[] piece = Arrays.copyOfRange(bytes, from, to);
        byte[] more = Arrays.copyOf(bytes, to);
        for (int i = 0; i < times; i++) {
            more = joined(more, piece);
        }
        return joined(more, Arrays.copyOfRange(bytes, to, bytes.length));
    }

    private byte[] spliced(byte[] bytes) {
        byte[] other = seed();
        return joined(Arrays.copyOf(bytes, place(bytes)), Arrays.copyOfRange(other, place(other), other.length));
    }

    private byte[] cutOff(byte[] bytes) {
        return Arrays.copyOf(bytes, place(bytes));
    }

    private byte[] nested(byte[] bytes) {
        String open = List.of("[", "{\"a\":", "<a>", "\"", "(").get(random.nextInt(5));
        return inserted(bytes, open.repeat(1 << random.nextInt(13)));
    }

    private byte[] inserted(byte[] bytes, String text) {
        int at = place(bytes);
        byte[] piece = text.getBytes(StandardCharsets.UTF_8);
        return joined(joined(Arrays.copyOf(bytes, at), piece), Arrays.copyOfRange(bytes, at, bytes.length));
    }

    /** What fits the pattern at some place or after it, by a text. */
    private byte[] matchExchanged(byte[] bytes, Pattern pattern, String by) {
        String all = text(bytes);
        Matcher found = pattern.matcher(all);
        if (!found.find(Math.min(place(bytes), all.length())) && !found.find(0)) {
            return inserted(bytes, by);
        }
        String exchanged = new String(by.getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
        return bytes(all.substring(0, found.start()) + exchanged + all.substring(found.end()));
    }

    private byte[] partsSwapped(byte[] bytes, String between) {
        return bytes(swapped(text(bytes), between));
    }

    private String swapped(String all, String between) {
        String[] parts = all.split(Pattern.quote(between), -1);
        int one = random.nextInt(parts.length);
        int other = random.nextInt(parts.length);
        String kept = parts[one];
        parts[one] = parts[other];
        parts[other] = kept;
        return String.join(between, parts);
    }

    private byte[] columnsSwapped(byte[] bytes) {
        String[] lines = text(bytes).split("\n", -1);
        int line = random.nextInt(lines.length);
        String between = lines[line].contains(";") ? ";" : lines[line].contains("\t") ? "\t" : ",";
        lines[line] = swapped(lines[line], between);
        return bytes(String.join("\n", lines));
    }

    private byte[] tagsSwapped(byte[] bytes) {
        String all = text(bytes);
        Matcher found = TAG.matcher(all);
        if (!found.find(Math.min(place(bytes), all.length()))) {
            return bytes;
        }
        int from = found.start();
        int to = found.end();
        if (!found.find(to + Math.min(random.nextInt(1000), all.length() - to))) {
            return bytes;
        }
        return bytes(all.substring(0, from)
                + found.group()
                + all.substring(to, found.start())
                + all.substring(from, to)
                + all.substring(found.end()));
    }

    /** Byte by byte, whatever they stand for. */
    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    private static byte[] joined(byte[] one, byte[] other) {
        byte[] both = Arrays.copyOf(one, one.length + other.length);
        System.arraycopy(other, 0, both, one.length, other.length);
        return both;
    }
}
