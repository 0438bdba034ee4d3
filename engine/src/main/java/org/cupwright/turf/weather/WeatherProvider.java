package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where weather comes from: a station's record or a forecast that somebody took in from a file ({@link WeatherSeries}),
 * what the record has at that time of year ({@link Climate}). None of them calls a network: whoever has another source
 * writes its days into a series.
 */
public interface WeatherProvider {
    /** The weather of a day; empty when this source has none. */
    Optional<WeatherDay> find(LocalDate day);
}
