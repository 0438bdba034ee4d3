package org.cupwright.turf.weather;

import java.time.LocalDate;
import java.util.Optional;

/** Where weather comes from: a station's record, a forecast, what people typed in. */
public interface WeatherProvider {
    /** The weather of a day; empty when this source has none. */
    Optional<WeatherDay> find(LocalDate day);
}
