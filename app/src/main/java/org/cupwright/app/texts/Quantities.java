package org.cupwright.app.texts;

import java.text.NumberFormat;
import java.util.Locale;
import org.cupwright.units.LengthUnit;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;

/** Lengths, areas and slopes as a reader wants to see them, with their units. */
record Quantities(UnitSystem units, Locale locale, double paceMetres, String paceWord, String pacesWord) {
    private static final double INCHES_IN_A_FOOT = 12;

    /** For the bar of a map: metres or paces, and feet that are about as long; our choice. */
    private static final int ROUND = 5;

    private static final int ROUND_FEET = 15;

    /** Below it an area is told to a tenth of a square metre: our choice. */
    private static final double SMALL_SQUARE_METRES = 9.5;

    String length(double metres) {
        return length(metres, 0);
    }

    /** With so many digits more than is usual. */
    String length(double metres, int more) {
        return switch (units) {
            case METRIC -> metric(metres, more);
            case IMPERIAL -> imperial(metres, more);
            case PACES -> Math.abs(metres) < paceMetres ? metric(metres, more) : paces(metres, more);
        };
    }

    private String metric(double metres, int more) {
        double size = Math.abs(metres);
        if (size < 0.0995) {
            return number(1000 * metres, more) + " mm";
        }
        if (size < 1.995) {
            return number(metres, 2 + more) + " m";
        }
        return number(metres, (size < 99.95 ? 1 : 0) + more) + " m";
    }

    private String imperial(double metres, int more) {
        double feet = LengthUnit.FOOT.fromMetres(metres);
        if (Math.abs(feet) < 1) {
            double inches = INCHES_IN_A_FOOT * feet;
            return number(inches, (Math.abs(inches) < 3 ? 2 : 0) + more) + " in";
        }
        return number(feet, (Math.abs(feet) < 99.95 ? 1 : 0) + more) + " ft";
    }

    private String paces(double metres, int more) {
        if (more > 0) {
            return number(Paces.fromMetres(metres, paceMetres), more) + " " + pacesWord;
        }
        return withPaces(Paces.roundedToHalf(metres, paceMetres));
    }

    String withPaces(double paces) {
        boolean one = paces > 0 && paces <= 1;
        return halves(paces) + " " + (one ? paceWord : pacesWord);
    }

    /** A number of half paces as it is said: {@code 4½}. */
    String halves(double paces) {
        long whole = (long) Math.floor(paces);
        boolean half = paces - whole >= 0.25;
        return half ? (whole == 0 ? "" : whole) + "½" : Long.toString(whole);
    }

    RoundLength roundLength() {
        return switch (units) {
            case METRIC -> new RoundLength(ROUND, number(ROUND, 0) + " m");
            case IMPERIAL -> new RoundLength(LengthUnit.FOOT.toMetres(ROUND_FEET), number(ROUND_FEET, 0) + " ft");
            case PACES -> new RoundLength(Paces.toMetres(ROUND, paceMetres), withPaces(ROUND));
        };
    }

    String area(double squareMetres) {
        if (units == UnitSystem.IMPERIAL) {
            double foot = LengthUnit.FOOT.toMetres(1);
            return number(squareMetres / (foot * foot), 0) + " ft²";
        }
        return number(squareMetres, squareMetres > 0 && squareMetres < SMALL_SQUARE_METRES ? 1 : 0) + " m²";
    }

    String slope(double percent) {
        return number(percent, 1) + " %";
    }

    String points(double points) {
        return number(points, 1);
    }

    /** With as many decimals as it needs. */
    String plain(Number value) {
        return NumberFormat.getInstance(locale).format(value);
    }

    String number(double value, int decimals) {
        NumberFormat format = NumberFormat.getInstance(locale);
        format.setMaximumFractionDigits(decimals);
        format.setMinimumFractionDigits(decimals);
        double rounded = Double.parseDouble(String.format(Locale.ROOT, "%." + decimals + "f", value));
        return format.format(rounded == 0 ? 0.0 : rounded);
    }
}
