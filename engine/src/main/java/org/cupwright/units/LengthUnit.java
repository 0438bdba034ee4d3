package org.cupwright.units;

/** A unit of length that survey files and people use. */
public enum LengthUnit {
    METRE("m", 1),
    /** The international foot, exactly 0.3048 m. */
    FOOT("ft", 0.3048),
    /** The US survey foot, exactly 1200/3937 m. */
    US_SURVEY_FOOT("usft", 1200.0 / 3937.0);

    private final String symbol;
    private final double metres;

    LengthUnit(String symbol, double metres) {
        this.symbol = symbol;
        this.metres = metres;
    }

    public String symbol() {
        return symbol;
    }

    public double toMetres(double length) {
        return length * metres;
    }

    public double fromMetres(double lengthMetres) {
        return lengthMetres / metres;
    }
}
