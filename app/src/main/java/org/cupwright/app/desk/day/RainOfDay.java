package org.cupwright.app.desk.day;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Set;
import org.cupwright.app.desk.log.DayLog;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.storage.DayRain;
import org.cupwright.cupchange.DayReading.WeatherForecast;
import org.cupwright.cupchange.PayloadKinds;
import org.cupwright.holelocation.SpeedPolicy;
import org.cupwright.policy.Policy;

/** Whether the forecast of a day, as it was heard last, has rain. */
final class RainOfDay {
    /** No forecast is kept that was heard longer before its day. */
    private static final int HEARD_DAYS_BEFORE = 31;

    private static final Set<String> FORECASTS = PayloadKinds.names(WeatherForecast.class);

    private RainOfDay() {}

    static DayRain foretold(FactsInEffect facts, DayLog log, Policy policy) {
        LocalDate day = log.day();
        Instant from = log.start().minus(HEARD_DAYS_BEFORE, ChronoUnit.DAYS);
        return facts.ofKinds(FORECASTS, from, log.end()).stream()
                .map(fact -> (WeatherForecast) fact.payload())
                .filter(forecast -> forecast.day().equals(day))
                .reduce((earlier, later) -> later)
                .filter(last -> last.rainMillimetres().orElse(0) >= policy.get(SpeedPolicy.RAIN_FORETOLD_MILLIMETRES))
                .map(last -> DayRain.FORETOLD)
                .orElse(DayRain.NONE);
    }
}
