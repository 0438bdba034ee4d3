package org.cupwright.turf.today;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.turf.TurfPolicy;
import org.cupwright.turf.state.Plug;
import org.cupwright.turf.today.WateringItem.Reason;
import org.cupwright.turf.water.WaterLoss;
import org.cupwright.turf.water.WeatherStation;
import org.cupwright.turf.weather.KnownWeather;
import org.cupwright.turf.weather.Rain;
import org.cupwright.turf.weather.WeatherSource;

/** Which plugs want water, in the morning and on a hot or windy afternoon. */
public final class WateringList {
    private final TurfDay turf;
    private final WeatherStation site;
    private final LocalDate day;

    public WateringList(TurfDay turf, WeatherStation site) {
        this.turf = turf;
        this.site = site;
        this.day = turf.day();
    }

    /**
     * The morning's list: plugs set today, and those of the last days where no water came since yesterday or nobody knows.
     *
     * @param holes in the order in which they are visited
     */
    public List<WateringItem> morning(List<String> holes) {
        List<WateringItem> items = new ArrayList<>();
        for (String hole : holes) {
            Optional<Reason> dry = dry(hole);
            for (Plug plug : young(hole)) {
                Optional<Reason> reason = plug.setOn().equals(day) ? Optional.of(Reason.NEW_PLUG) : dry;
                reason.map(why -> item(hole, plug, why)).ifPresent(items::add);
            }
        }
        return items;
    }

    /** The afternoon's list: the same plugs, when the day is hot or windy; a forecast is as good as an observation for that. */
    public List<WateringItem> afternoon(List<String> holes) {
        Optional<Reason> reason = turf.outlook().find(day).flatMap(this::harsh);
        if (reason.isEmpty()) {
            return List.of();
        }
        List<WateringItem> items = new ArrayList<>();
        for (String hole : holes) {
            young(hole).forEach(plug -> items.add(new WateringItem(hole, plug, reason.get(), false)));
        }
        return items;
    }

    private Optional<Reason> harsh(KnownWeather known) {
        double crop = turf.policy().get(TurfPolicy.CROP_COEFFICIENT);
        double loss = WaterLoss.of(known.weather(), site, crop).etcMillimetres();
        OptionalDouble wind = known.weather().windMetresPerSecond();
        if (loss >= turf.policy().get(TurfPolicy.AFTERNOON_LOSS_MILLIMETRES)) {
            return Optional.of(Reason.HOT);
        }
        boolean windy = wind.orElse(0) >= turf.policy().get(TurfPolicy.AFTERNOON_WIND_METRES_PER_SECOND);
        return windy ? Optional.of(Reason.WINDY) : Optional.empty();
    }

    /** Why water is wanted on a green; empty when enough came yesterday or today. Unknown is never taken for dry, nor for wet. */
    private Optional<Reason> dry(String hole) {
        boolean unknown = false;
        for (LocalDate when = day.minusDays(1); !when.isAfter(day); when = when.plusDays(1)) {
            Optional<Rain> rain = rainOn(when);
            OptionalDouble irrigation = turf.state().irrigationMillimetres(hole, when);
            double came = rain.map(Rain::millimetres).orElse(0.0) + irrigation.orElse(0);
            if (came >= turf.policy().get(TurfPolicy.WETTING_RAIN_MILLIMETRES)) {
                return Optional.empty();
            }
            boolean over = when.isBefore(day);
            unknown |= over && (rain.isEmpty() || irrigation.isEmpty());
        }
        return Optional.of(unknown ? Reason.WATER_UNKNOWN : Reason.NO_WATER_CAME);
    }

    /** Rain that has fallen; what a forecast promises wets nothing. */
    private Optional<Rain> rainOn(LocalDate when) {
        return turf.outlook()
                .find(when)
                .filter(known -> known.source() == WeatherSource.OBSERVED)
                .flatMap(known -> known.weather().rain());
    }

    private List<Plug> young(String hole) {
        LocalDate first = day.minusDays(turf.policy().get(TurfPolicy.WATERING_DAYS));
        return turf.state().green(hole).plugs().plugs().stream()
                .filter(plug -> !plug.setOn().isBefore(first) && !plug.setOn().isAfter(day))
                .toList();
    }

    private WateringItem item(String hole, Plug plug, Reason reason) {
        boolean done = plug.wateredOn().filter(day::equals).isPresent();
        return new WateringItem(hole, plug, reason, done);
    }
}
