package org.cupwright.app.desk.turf;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.first.FirstOfDay;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.turf.signal.IndividualsChart;
import org.cupwright.turf.signal.TurfSignal;
import org.cupwright.turf.state.Measured;
import org.cupwright.turf.today.RecheckItem;
import org.cupwright.turf.today.RestingHole;
import org.cupwright.turf.today.TurfDay;
import org.cupwright.turf.today.VisiblePlug;
import org.cupwright.turf.today.WateringItem;
import org.cupwright.turf.water.WaterStatus;
import org.cupwright.turf.weather.WeatherBasis;
import org.cupwright.turf.weather.WeatherSource;

/**
 * The turf of a course on a day.
 *
 * @param day the day
 * @param turf what the lists were computed from
 * @param weather what the day's weather rests on
 * @param basis what the weather rests on of the days that the rest of old holes looks back on, this one the last
 * @param wearRest old holes whose surroundings rest, in round order
 * @param plugs plugs that are visible or may be, in round order
 * @param morning plugs that want water in the morning
 * @param afternoon plugs that want water on a hot or windy afternoon too
 * @param recheck plugs that want a look, diseased greens last
 * @param water the water in the ground, irrigation of all greens
 * @param signals what cutters and measures ask for
 * @param charts charts of what was measured
 * @param first what has to be known before anybody goes out
 * @param odd odd things that were entered and that nobody has marked as seen, the urgent first
 */
public record TurfReport(
        CourseDay day,
        TurfDay turf,
        WeatherSource weather,
        WeatherBasis basis,
        List<RestingHole> wearRest,
        List<VisiblePlug> plugs,
        List<WateringItem> morning,
        List<WateringItem> afternoon,
        List<RecheckItem> recheck,
        Optional<WaterStatus> water,
        List<TurfSignal> signals,
        Map<Measured.What, IndividualsChart> charts,
        FirstOfDay first,
        List<OddThings.Thing> odd) {
    /** Growth potential of the day, 0 to 1. */
    public double growth() {
        return turf.growth().on(day.date());
    }

    public boolean frost() {
        return turf.state().course().frost();
    }
}
