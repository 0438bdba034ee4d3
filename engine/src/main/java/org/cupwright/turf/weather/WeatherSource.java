package org.cupwright.turf.weather;

/** What a day's weather rests on, the surest first. */
public enum WeatherSource {
    OBSERVED,
    /** A short gap, filled between its neighbours. */
    FILLED,
    FORECAST,
    /** What the record has at this time of year. */
    CLIMATE,
    /** As the last weeks of a record that has not seen this time of year yet. */
    RECENT,
    /** Nothing is known: growth is taken to be middling. */
    ASSUMED;

    public WeatherSource weaker(WeatherSource other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
