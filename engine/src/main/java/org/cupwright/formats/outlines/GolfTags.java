package org.cupwright.formats.outlines;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.message.Message;

/** The numbers of a hole's tags (OpenStreetMap wiki, "Tag:golf=hole"): par, and dist in metres unless a unit is written. */
final class GolfTags {
    private static final double YARD_METRES = 0.9144;
    private static final Pattern LENGTH = Pattern.compile("([0-9]{1,5}(?:[.,][0-9]{1,3})?)\\s*([a-z]*)\\.?");
    private static final Map<String, Double> UNITS = Map.ofEntries(
            Map.entry("", 1.0),
            Map.entry("m", 1.0),
            Map.entry("metre", 1.0),
            Map.entry("metres", 1.0),
            Map.entry("meter", 1.0),
            Map.entry("meters", 1.0),
            Map.entry("y", YARD_METRES),
            Map.entry("yd", YARD_METRES),
            Map.entry("yds", YARD_METRES),
            Map.entry("yard", YARD_METRES),
            Map.entry("yards", YARD_METRES),
            Map.entry("ft", 0.3048),
            Map.entry("feet", 0.3048));

    /** Pars and lengths outside these are slips; our choice. */
    private static final int LOWEST_PAR = 2;

    private static final int HIGHEST_PAR = 7;
    private static final double SHORTEST_METRES = 20;
    private static final double LONGEST_METRES = 1000;

    private GolfTags() {}

    static OptionalInt par(MapFeature feature, List<Finding> findings) {
        String text = feature.tag("par").orElse("");
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        if (text.matches("[0-9]")) {
            int par = Integer.parseInt(text);
            if (par >= LOWEST_PAR && par <= HIGHEST_PAR) {
                return OptionalInt.of(par);
            }
        }
        findings.add(Finding.of(FindingKind.PAR_NOT_READABLE, feature.where(), new Message.Name(text)));
        return OptionalInt.empty();
    }

    static OptionalDouble distMetres(MapFeature feature, List<Finding> findings) {
        String text = feature.tag("dist").orElse("");
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        double metres = metres(text);
        if (metres >= SHORTEST_METRES && metres <= LONGEST_METRES) {
            return OptionalDouble.of(metres);
        }
        findings.add(Finding.of(FindingKind.LENGTH_NOT_READABLE, feature.where(), new Message.Name(text)));
        return OptionalDouble.empty();
    }

    private static double metres(String text) {
        Matcher length = LENGTH.matcher(text.toLowerCase(Locale.ROOT));
        if (!length.matches()) {
            return Double.NaN;
        }
        double unitMetres = UNITS.getOrDefault(length.group(2), Double.NaN);
        return unitMetres * Double.parseDouble(length.group(1).replace(',', '.'));
    }
}
