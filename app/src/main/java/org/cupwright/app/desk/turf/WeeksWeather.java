package org.cupwright.app.desk.turf;

import java.time.LocalDate;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.history.Checkpoints;
import org.cupwright.app.storage.Stores;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.weather.WeatherBasis;
import org.cupwright.turf.weather.WeatherOutlook;

/**
 * What the weather of a day and of the weeks before it rests on: of as many days as the rest of an old hole can look
 * back on.
 */
public final class WeeksWeather {
    private WeeksWeather() {}

    public static WeatherBasis of(Stores stores, CourseDay day) {
        return of(outlook(stores, day), day);
    }

    /** What the weather of some days rests on, as it is known on a day. */
    public static WeatherBasis of(Stores stores, CourseDay day, LocalDate first, LocalDate last) {
        return WeatherBasis.of(outlook(stores, day), first, last);
    }

    static WeatherBasis of(WeatherOutlook outlook, CourseDay day) {
        int days = day.policy().get(TurfPolicy.WEAR_REST_CAP_DAYS);
        return WeatherBasis.of(outlook, day.date().minusDays(days - 1L), day.date());
    }

    static WeatherOutlook outlook(Stores stores, CourseDay day) {
        return new Checkpoints<>(new FoldedWeather(), stores, day.course())
                .before(day.log().end())
                .outlook();
    }
}
