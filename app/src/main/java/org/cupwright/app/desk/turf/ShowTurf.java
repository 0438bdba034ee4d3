package org.cupwright.app.desk.turf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.CourseLatitude;
import org.cupwright.app.desk.CourseToday;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.first.FirstOfDay;
import org.cupwright.app.desk.log.OddThings;
import org.cupwright.app.session.Session;
import org.cupwright.course.Hole;
import org.cupwright.turf.signal.CutterSignals;
import org.cupwright.turf.signal.MeasureCharts;
import org.cupwright.turf.signal.TurfSignal;
import org.cupwright.turf.today.Clocks;
import org.cupwright.turf.today.RecheckList;
import org.cupwright.turf.today.RestingHole;
import org.cupwright.turf.today.TurfDay;
import org.cupwright.turf.today.VisiblePlug;
import org.cupwright.turf.today.WateringList;
import org.cupwright.turf.water.WaterBalance;
import org.cupwright.turf.water.WaterStatus;
import org.cupwright.turf.water.WeatherStation;
import org.cupwright.turf.weather.KnownWeather;
import org.cupwright.turf.weather.WeatherSource;

/** What rests, what wants water, what wants a look, and what the cutters ask for. */
public record ShowTurf(Session session) {
    public TurfReport of(DayQuestion question) {
        return session.read(stores -> {
            CourseDay day = CourseDay.of(stores, question, session);
            LocalDate today = CourseToday.of(day.course(), session.clock());
            List<OddThings.Thing> odd = OddThings.standing(stores.facts(), day.course(), day.date(), today);
            TurfDay turf = DayTurf.of(stores, day);
            return report(day, turf, FirstOfDay.of(stores, day, turf, today), odd);
        });
    }

    private static TurfReport report(CourseDay day, TurfDay turf, FirstOfDay first, List<OddThings.Thing> odd) {
        List<String> holes = day.course().holes().stream().map(Hole::id).toList();
        Clocks clocks = new Clocks(turf);
        List<RestingHole> resting = new ArrayList<>();
        List<VisiblePlug> plugs = new ArrayList<>();
        for (String hole : holes) {
            resting.addAll(clocks.restingOn(hole, day.date()));
            plugs.addAll(clocks.plugsOn(hole, day.date()));
        }
        WeatherStation site = WeatherStation.at(CourseLatitude.degrees(day.course()), day.policy());
        WateringList watering = new WateringList(turf, site);
        RecheckList recheck = new RecheckList(turf);
        List<String> order = recheck.hygieneOrder(holes);
        List<TurfSignal> signals = new ArrayList<>(CutterSignals.of(turf.state(), day.date(), day.policy()));
        signals.addAll(MeasureCharts.signals(turf.state()));
        WeatherSource weather =
                turf.outlook().find(day.date()).map(KnownWeather::source).orElse(WeatherSource.ASSUMED);
        return new TurfReport(
                day,
                turf,
                weather,
                WeeksWeather.of(turf.outlook(), day),
                resting,
                plugs,
                watering.morning(order),
                watering.afternoon(order),
                recheck.list(holes),
                water(turf, site),
                signals,
                MeasureCharts.of(turf.state()),
                first,
                odd);
    }

    /** Empty when nobody ever entered any weather: there is nothing to balance. */
    private static Optional<WaterStatus> water(TurfDay turf, WeatherStation site) {
        if (turf.outlook().find(turf.day().minusDays(1)).isEmpty()) {
            return Optional.empty();
        }
        WaterBalance balance = new WaterBalance(turf.outlook(), site, turf.policy());
        return Optional.of(balance.onMorning(
                turf.day(), past -> turf.state().course().care().irrigationOn(past)));
    }
}
